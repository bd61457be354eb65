package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.ClockJumps;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.rows.RowReader;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Shop;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Says of every row of a file what becomes of it; asked by several threads at once. */
final class RowClassifier {
  private final OffsetDateTime asOf;
  private final ReferenceLookup directory;
  private final BenchLookup bench;
  private final WeighingFactory acceptance;
  private final RowComparison comparison;
  private final Map<Place, Notice> conflicts;

  /**
   * A judge.
   *
   * @param comparison of the rows that may be repeats, voids or voided
   * @param conflicts why rows wait that stand against each other
   */
  RowClassifier(
      Shop shop,
      OffsetDateTime asOf,
      ReferenceLookup directory,
      RowReader reader,
      RowComparison comparison,
      Map<Place, Notice> conflicts) {
    this.asOf = asOf;
    this.directory = directory;
    this.bench = new BenchLookup(shop.bench());
    this.acceptance = new WeighingFactory(shop, directory, bench, reader);
    this.comparison = comparison;
    this.conflicts = conflicts;
  }

  /**
   * What became of the rows of one file; every list is in line order.
   *
   * @param count how many rows have each disposition
   * @param setAside rows that wait for a person
   * @param used rows that are read and understood, in effect or not yet
   * @param weighed those that are in effect, with their weighings
   * @param jumps where a clock went back
   */
  record JudgedFile(
      RowCount count,
      List<SetAside> setAside,
      List<ReadRow> used,
      List<DivisionGrid.Weighed> weighed,
      List<Notice> jumps) {}

  /**
   * Judges a file.
   *
   * @param rows in line order
   * @param beyond rail weighings for which the body has no part left
   */
  JudgedFile judge(String path, List<ReadRow> rows, Set<Place> beyond) {
    var judging = new Judging(beyond);
    rows.forEach(judging::take);
    return judging.file(path);
  }

  /** One file being judged. */
  private final class Judging {
    private final Set<Place> beyond;
    private final Map<RowDisposition, Integer> count = new EnumMap<>(RowDisposition.class);
    private final List<SetAside> setAside = new ArrayList<>();
    private final List<ReadRow> met = new ArrayList<>();
    private final List<ReadRow> used = new ArrayList<>();
    private final List<DivisionGrid.Weighed> weighed = new ArrayList<>();

    private Judging(Set<Place> beyond) {
      this.beyond = beyond;
    }

    private void take(ReadRow row) {
      var fate = row.removed() ? RowDisposition.VOID : comparison.fate(row.place());
      if (fate == RowDisposition.SET_ASIDE) {
        setAside(row, conflicts.get(row.place()));
      } else if (fate == RowDisposition.USED && !accept(row)) {
        fate = RowDisposition.SET_ASIDE;
      }
      count.merge(fate, 1, Integer::sum);
      if (fate != RowDisposition.REPEAT) {
        met.add(row);
      }
      if (fate == RowDisposition.USED) {
        used.add(row);
      }
    }

    /** A row that dates after the clock, or cancels from then on, is read but has no effect yet. */
    private boolean accept(ReadRow row) {
      if (row.status().isVoid()) {
        return true;
      }
      try {
        var weighing = acceptance.accept(row);
        if (beyond.contains(row.place())) {
          throw new Refusal(twice(weighing));
        }
        if (row.effective(asOf)) {
          weighed.add(new DivisionGrid.Weighed(weighing, row));
        }
        return true;
      } catch (Refusal refusal) {
        setAside(row, row.about(refusal.notice()));
        return false;
      }
    }

    private void setAside(ReadRow row, Notice notice) {
      var date = row.time().map(OffsetDateTime::toLocalDate).orElse(LocalDate.EPOCH);
      // A body that the bench book fills in is named as much as one that was keyed.
      var filled =
          row.time().map(t -> bench.fill(row.row(), row.scale(), t).row()).orElse(row.row());
      var bodies = directory.candidates(filled.get(Field.BODY), date).stream().map(Body::id);
      setAside.add(new SetAside(notice, bodies.toList(), row.effective(asOf)));
    }

    private JudgedFile file(String path) {
      var rows =
          new RowCount(
              path,
              count.getOrDefault(RowDisposition.USED, 0),
              count.getOrDefault(RowDisposition.REPEAT, 0),
              count.getOrDefault(RowDisposition.VOID, 0),
              count.getOrDefault(RowDisposition.SET_ASIDE, 0));
      return new JudgedFile(rows, setAside, used, weighed, ClockJumps.of(met));
    }
  }

  private static Notice twice(Weighing weighing) {
    return Notice.of(NoticeCode.RAIL_TWICE, Place.NONE)
        .with("named", weighing.body())
        .with("item", weighing.item())
        .with("step", weighing.step().id());
  }
}
