package gambrel.trade.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.RowCells;
import gambrel.trade.shop.BenchEntry;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BenchLookupTest {
  private static final OffsetDateTime START = OffsetDateTime.parse("2026-03-02T06:00+10:00");
  private static final ExportRow BLANK =
      RowCells.row(new Place("exports/a.csv", 2), Map.of(), Optional.empty(), "");

  private static OffsetDateTime minute(int minutes) {
    return START.plusMinutes(minutes);
  }

  private static List<BenchEntry> entries(SplittableRandom dice) {
    var entries = new ArrayList<BenchEntry>();
    for (int i = 0; i < 30; i++) {
      int from = dice.nextInt(100);
      String scale = dice.nextBoolean() ? "bench" : "block";
      entries.add(
          new BenchEntry(
              scale, minute(from), minute(from + dice.nextInt(20)), "", "", "", "b" + i));
    }
    return entries;
  }

  /** Of those that fit the one that began last, of these the last in the file. */
  private static String byHand(List<BenchEntry> entries, OffsetDateTime time) {
    BenchEntry found = null;
    for (var entry : entries) {
      boolean fits =
          entry.scale().equals("bench")
              && !time.isBefore(entry.from())
              && !time.isAfter(entry.to());
      if (fits && (found == null || !entry.from().isBefore(found.from()))) {
        found = entry;
      }
    }
    return found == null ? "" : found.boner();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void isReadAtTheEntryThatBeganLastOfThoseThatFit(long seed) {
    var entries = entries(new SplittableRandom(seed));
    var bench = new BenchLookup(entries);
    for (int minute = -5; minute < 130; minute++) {
      var time = minute(minute);
      assertEquals(byHand(entries, time), bench.fill(BLANK, "bench", time).boner(), "at " + time);
    }
  }
}
