package gambrel.trade.weighing;

import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.BenchEntry;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Fills blank cells of a row from the bench book. If several entries cover the time, the one that
 * began last counts; of those that began together, the last in the file.
 */
final class BenchLookup {
  private final Map<String, Scale> scales = new HashMap<>();

  /** The entries in the order of their file. */
  BenchLookup(List<BenchEntry> entries) {
    entries.stream()
        .collect(Collectors.groupingBy(BenchEntry::scale))
        .forEach((scale, ofScale) -> scales.put(scale, new Scale(ofScale)));
  }

  /** The entries of one scale. */
  private static final class Scale {
    private final List<BenchEntry> entries;

    /** For each entry, the latest end of the entries up to it. */
    private final List<OffsetDateTime> ends = new ArrayList<>();

    /** For each beginning, the position of the last entry that begins then. */
    private final NavigableMap<OffsetDateTime, Integer> last =
        new TreeMap<>(OffsetDateTime.timeLineOrder());

    private Scale(List<BenchEntry> listed) {
      entries =
          listed.stream()
              .sorted(Comparator.comparing(BenchEntry::from, last.comparator()))
              .toList();
      for (var entry : entries) {
        var before = ends.isEmpty() ? entry.to() : ends.get(ends.size() - 1);
        last.put(entry.from(), ends.size());
        ends.add(before.isAfter(entry.to()) ? before : entry.to());
      }
    }

    private Optional<BenchEntry> at(OffsetDateTime time) {
      var begun = last.floorEntry(time);
      for (int i = begun == null ? -1 : begun.getValue(); i >= 0; i--) {
        if (!entries.get(i).to().isBefore(time)) {
          return Optional.of(entries.get(i));
        }
        if (ends.get(i).isBefore(time)) {
          return Optional.empty();
        }
      }
      return Optional.empty();
    }
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
        .flatMap(entries -> entries.at(time))
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
