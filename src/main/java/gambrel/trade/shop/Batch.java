package gambrel.trade.shop;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Trim of one or more bodies made into something.
 *
 * @param id its key
 * @param product what it is made into, or empty
 * @param made the day it was made
 * @param gain whether it takes up water or brine
 * @param due the day by which it is packed
 * @param added what went in, for the page, or empty
 * @param note or empty
 * @param listed whether {@code batches.csv} has it
 */
public record Batch(
    String id,
    String product,
    Optional<LocalDate> made,
    boolean gain,
    Optional<LocalDate> due,
    String added,
    String note,
    boolean listed) {
  /** A batch that is only known from the scale. */
  public static Batch unlisted(String id) {
    return new Batch(id, "", Optional.empty(), false, Optional.empty(), "", "", false);
  }
}
