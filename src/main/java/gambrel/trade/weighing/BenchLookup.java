package gambrel.trade.weighing;

import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.BenchEntry;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Fills blank cells of a row from the bench book. If several entries cover the time, the one that
 * began last counts; of those that began together, the last in the file.
 */
final class BenchLookup {
  /** For each scale, the entry that counts from a moment on, if one does. */
  private final Map<String, NavigableMap<OffsetDateTime, Optional<BenchEntry>>> scales =
      new HashMap<>();

  /** The entries in the order of their file. */
  BenchLookup(List<BenchEntry> entries) {
    entries.stream()
        .sorted(Comparator.comparing(BenchEntry::from, OffsetDateTime.timeLineOrder()))
        .forEach(this::add);
  }

  /** Adds an entry that begins after those that were added before: it counts where it covers. */
  private void add(BenchEntry entry) {
    var moments =
        scales.computeIfAbsent(
            entry.scale(), scale -> new TreeMap<>(OffsetDateTime.timeLineOrder()));
    var after = entry.to().plusNanos(1);
    moments.put(after, at(moments, after));
    moments.subMap(entry.from(), after).clear();
    moments.put(entry.from(), Optional.of(entry));
  }

  private static Optional<BenchEntry> at(
      NavigableMap<OffsetDateTime, Optional<BenchEntry>> moments, OffsetDateTime time) {
    return Optional.ofNullable(moments.floorEntry(time)).flatMap(Map.Entry::getValue);
  }

  /**
   * A row with its blank cells filled.
   *
   * @param boner the boner of the entry, or empty
   */
  record Filled(ExportRow row, String boner) {}

  /** Fills body, batch and customer; without an entry for {@code time} the row stays as it is. */
  Filled fill(ExportRow row, String scale, OffsetDateTime time) {
    return Optional.ofNullable(scales.get(scale))
        .flatMap(moments -> at(moments, time))
        .map(entry -> new Filled(fill(row, entry), entry.boner()))
        .orElseGet(() -> new Filled(row, ""));
  }

  private static ExportRow fill(ExportRow row, BenchEntry entry) {
    var filled = fill(row, Field.BODY, entry.body());
    filled = fill(filled, Field.BATCH, entry.batch());
    return fill(filled, Field.CUSTOMER, entry.customer());
  }

  private static ExportRow fill(ExportRow row, Field field, String value) {
    return row.get(field).isEmpty() && !value.isEmpty() ? row.with(field, value) : row;
  }
}
