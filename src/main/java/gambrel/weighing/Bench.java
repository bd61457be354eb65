package gambrel.weighing;

import gambrel.shop.BenchEntry;
import gambrel.shop.Shop;
import java.time.OffsetDateTime;
import java.util.List;

/** Fills what a scale leaves blank; of several entries that fit, the one that began last. */
final class Bench {
  private final List<BenchEntry> entries;

  Bench(Shop shop) {
    entries = shop.bench();
  }

  /**
   * A row with its blanks filled.
   *
   * @param row the row
   * @param boner who cut, or empty
   */
  record Filled(ExportRow row, String boner) {}

  Filled fill(ExportRow row, String scale, OffsetDateTime time) {
    BenchEntry entry = null;
    for (var candidate : entries) {
      boolean fits =
          candidate.scale().equals(scale)
              && !time.isBefore(candidate.from())
              && !time.isAfter(candidate.to());
      if (fits && (entry == null || !candidate.from().isBefore(entry.from()))) {
        entry = candidate;
      }
    }
    if (entry == null) {
      return new Filled(row, "");
    }
    var filled = fill(row, Field.BODY, entry.body());
    filled = fill(filled, Field.BATCH, entry.batch());
    filled = fill(filled, Field.CUSTOMER, entry.customer());
    return new Filled(filled, entry.boner());
  }

  private static ExportRow fill(ExportRow row, Field field, String value) {
    return row.get(field).isEmpty() && !value.isEmpty() ? row.with(field, value) : row;
  }
}
