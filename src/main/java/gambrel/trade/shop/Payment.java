package gambrel.trade.shop;

import gambrel.trade.measure.Money;
import java.time.LocalDate;

/**
 * Money received.
 *
 * @param customer the customer who paid
 * @param body the body that was paid for, or empty
 * @param date the day of the payment
 * @param amount the amount
 * @param note a note of the shop, or empty
 */
public record Payment(String customer, String body, LocalDate date, Money amount, String note) {}
