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
import java.util.Optional;

/**
 * Fills blank cells of a row from the bench book. If several entries cover the time, the one that
 * began last counts; of those that began together, the last in the file.
 */
final class BenchLookup {
  private final Map<String, Scale> scales = new HashMap<>();

  /** The entries in the order of their file. */
  BenchLookup(List<BenchEntry> entries) {
    var byScale = new HashMap<String, List<BenchEntry>>();
    entries.forEach(e -> byScale.computeIfAbsent(e.scale(), s -> new ArrayList<>()).add(e));
    byScale.forEach((scale, list) -> scales.put(scale, new Scale(list)));
  }

  /** The entries of one scale, sorted for a binary search. */
  private static final class Scale {
    private final List<BenchEntry> entries;

    /** For each entry, the latest end of the entries up to it. */
    private final List<OffsetDateTime> ends = new ArrayList<>();

    private Scale(List<BenchEntry> listed) {
      entries =
          listed.stream()
              .sorted(Comparator.comparing(BenchEntry::from, OffsetDateTime.timeLineOrder()))
              .toList();
      for (var entry : entries) {
        var before = ends.isEmpty() ? entry.to() : ends.get(ends.size() - 1);
        ends.add(before.isAfter(entry.to()) ? before : entry.to());
      }
    }

    private Optional<BenchEntry> at(OffsetDateTime time) {
      int low = 0;
      int high = entries.size();
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (entries.get(middle).from().isAfter(time)) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      for (int i = low - 1; i >= 0 && !ends.get(i).isBefore(time); i--) {
        if (!entries.get(i).to().isBefore(time)) {
          return Optional.of(entries.get(i));
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
    var known = scales.get(scale);
    var found = known == null ? Optional.<BenchEntry>empty() : known.at(time);
    if (found.isEmpty()) {
      return new Filled(row, "");
    }
    var entry = found.get();
    var filled = fill(row, Field.BODY, entry.body());
    filled = fill(filled, Field.BATCH, entry.batch());
    filled = fill(filled, Field.CUSTOMER, entry.customer());
    return new Filled(filled, entry.boner());
  }

  private static ExportRow fill(ExportRow row, Field field, String value) {
    return row.get(field).isEmpty() && !value.isEmpty() ? row.with(field, value) : row;
  }
}
