package gambrel.trade.shop;

import gambrel.trade.measure.Money;
import java.time.LocalDate;

/**
 * Money received.
 *
 * @param customer who paid
 * @param body for which body, or empty
 * @param date when
 * @param amount how much
 * @param note or empty
 */
public record Payment(String customer, String body, LocalDate date, Money amount, String note) {}
