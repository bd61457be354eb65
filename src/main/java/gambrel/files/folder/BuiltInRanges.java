package gambrel.files.folder;

import gambrel.trade.shop.PublishedRange;
import gambrel.trade.shop.PublishedRanges;
import java.math.BigDecimal;
import java.util.HashMap;

/** Reads the built-in published ranges, each with its source. */
public final class BuiltInRanges {
  private BuiltInRanges() {}

  /** All ranges. */
  public static PublishedRanges load() {
    var ranges = new HashMap<String, PublishedRange>();
    for (var row : BuiltInTable.rows("ranges")) {
      ranges.put(
          PublishedRanges.key(row.get("species"), row.get("figure")),
          new PublishedRange(
              new BigDecimal(row.get("low")),
              new BigDecimal(row.get("high")),
              row.get("about"),
              row.get("source")));
    }
    return new PublishedRanges(ranges);
  }
}
