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
  private static final String BATCHES = "batches.csv";
  private static final String SHARES = "shares.csv";
  private static final Set<String> HOLD_WHAT_GOES_OUT =
      Set.of("charges.csv", "payments.csv", BATCHES);
  private static final Set<String> HOLD_ISSUED =
      Set.of("customers.csv", "bodies.csv", SHARES, "corrections.csv");

  /** Copies the names. */
  public UnreadRow {
    names = Map.copyOf(names);
  }

  /** Whether a row of this file holds the statements that it could concern. */
  public static boolean holds(String file) {
    return HOLD_WHAT_GOES_OUT.contains(file) || HOLD_ISSUED.contains(file);
  }

  /** Whether it holds only what would go out: what it says stands rightly on issued statements. */
  public boolean holdsWhatGoesOut() {
    return HOLD_WHAT_GOES_OUT.contains(place.file());
  }

  /** Whether it is about a batch. */
  public boolean ofBatch() {
    return place.file().equals(BATCHES);
  }

  /** Whether it says who owns a body. */
  public boolean ofShares() {
    return place.file().equals(SHARES);
  }

  /** What it names in a column. */
  public Optional<String> named(String column) {
    return Optional.ofNullable(names.get(column));
  }
}
