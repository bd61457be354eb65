package gambrel.trade.shop;

import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Place;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.Set;

/**
 * A row of the shop folder that cannot be read, and what it names legibly. It could concern the
 * bodies that all of these fit; without any of them every body.
 *
 * @param place file and line
 * @param column the column of the cell that cannot be read; empty if it is the row as a whole
 * @param cell the text of that cell
 * @param ofMoney whether it is a charge or a payment, which change no figure of a statement
 * @param from the moment from which the row has an effect, if it is legible
 * @param body the body that it is about; it may be left out itself
 * @param customer the customer that it names
 * @param species the species that it names
 * @param item the item that it names
 * @param rows the rows of the exports that it corrects
 */
public record UnreadRow(
    Place place,
    String column,
    String cell,
    boolean ofMoney,
    Optional<OffsetDateTime> from,
    Optional<String> body,
    Optional<String> customer,
    Optional<Species> species,
    Optional<String> item,
    Optional<NamedRows> rows) {

  /**
   * The rows that a correction names, and the body that it may give them.
   *
   * @param scale the scale; any if it is not legible
   * @param ticket a ticket, a run, or one row as {@code FILE:LINE}
   * @param date only rows of this date in the shop's zone
   * @param bodies the bodies that its value may mean
   */
  public record NamedRows(
      Optional<String> scale, String ticket, Optional<LocalDate> date, Set<String> bodies) {
    /** Copies the bodies. */
    public NamedRows {
      bodies = Set.copyOf(bodies);
    }
  }
}
