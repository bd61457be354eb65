package gambrel.trade.shop;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Trim of one or more bodies that becomes one product.
 *
 * @param id the id that scales and files use
 * @param product the product, or empty
 * @param made the day on which it was made
 * @param gain whether it takes up water or brine
 * @param due the day by which it is packed
 * @param added the ingredients that the page names, or empty
 * @param note a note of the shop, or empty
 * @param listed whether {@code batches.csv} lists it
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
  /** A batch that only weighings name. */
  public static Batch unlisted(String id) {
    return new Batch(id, "", Optional.empty(), false, Optional.empty(), "", "", false);
  }
}
