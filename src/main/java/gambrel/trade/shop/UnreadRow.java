package gambrel.trade.shop;

import gambrel.trade.notice.Place;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A row of the shop folder that cannot be read.
 *
 * @param place file and line
 * @param column the column of the cell that cannot be read; empty if it is the row as a whole
 * @param cell the text of that cell
 * @param from the moment from which the row has an effect, if it is legible
 * @param names what it names legibly, by column; nothing if it has more cells than the header
 */
public record UnreadRow(
    Place place,
    String column,
    String cell,
    Optional<OffsetDateTime> from,
    Map<String, String> names) {
  private static final Set<String> OF_MONEY = Set.of("charges.csv", "payments.csv");
  private static final Set<String> OF_FIGURES =
      Set.of("customers.csv", "bodies.csv", "shares.csv", "corrections.csv");

  /** Copies the names. */
  public UnreadRow {
    names = Map.copyOf(names);
  }

  /** Whether a row of this file holds the statements that it could concern. */
  public static boolean holds(String file) {
    return OF_MONEY.contains(file) || OF_FIGURES.contains(file);
  }

  /** Whether it is a charge or a payment, which changes no figure of a statement. */
  public boolean ofMoney() {
    return OF_MONEY.contains(place.file());
  }

  /** What it names in a column. */
  public Optional<String> named(String column) {
    return Optional.ofNullable(names.get(column));
  }
}
