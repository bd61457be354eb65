package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.Body;
import gambrel.shop.Shop;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Says of every row of a file what becomes of it; asked by several threads at once. */
final class FileJudge {
  private final OffsetDateTime asOf;
  private final Directory directory;
  private final Bench bench;
  private final Acceptance acceptance;
  private final Comparison comparison;
  private final Map<Place, Notice> conflicts;
  private final Set<Place> typed;

  /**
   * A judge.
   *
   * @param comparison of the rows that may be repeats, voids or voided
   * @param conflicts why rows wait that stand against each other
   * @param typed rows whose weight a correction gives
   */
  FileJudge(
      Shop shop,
      OffsetDateTime asOf,
      Directory directory,
      RowReader reader,
      Comparison comparison,
      Map<Place, Notice> conflicts,
      Set<Place> typed) {
    this.asOf = asOf;
    this.directory = directory;
    this.bench = new Bench(shop.bench());
    this.acceptance = new Acceptance(shop, directory, bench, reader);
    this.comparison = comparison;
    this.conflicts = conflicts;
    this.typed = typed;
  }

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
    private final Map<Fate, Integer> count = new EnumMap<>(Fate.class);
    private final List<SetAside> setAside = new ArrayList<>();
    private final List<ReadRow> met = new ArrayList<>();
    private final List<ReadRow> used = new ArrayList<>();
    private final List<DivisionGrid.Weighed> weighed = new ArrayList<>();

    private Judging(Set<Place> beyond) {
      this.beyond = beyond;
    }

    private void take(ReadRow row) {
      var fate = row.removed() ? Fate.VOID : comparison.fate(row.place());
      if (fate == Fate.SET_ASIDE) {
        setAside(row, conflicts.get(row.place()));
      } else if (fate == Fate.USED && !accept(row)) {
        fate = Fate.SET_ASIDE;
      }
      count.merge(fate, 1, Integer::sum);
      if (fate != Fate.REPEAT) {
        met.add(row);
      }
      if (fate == Fate.USED) {
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
              count.getOrDefault(Fate.USED, 0),
              count.getOrDefault(Fate.REPEAT, 0),
              count.getOrDefault(Fate.VOID, 0),
              count.getOrDefault(Fate.SET_ASIDE, 0));
      return new JudgedFile(
          rows,
          setAside,
          weighed.stream().map(DivisionGrid.Weighed::weighing).toList(),
          ClockJumps.of(met),
          RowsAhead.of(used, asOf),
          DivisionGrid.of(weighed, typed));
    }
  }

  private static Notice twice(Weighing weighing) {
    return Notice.of(NoticeCode.RAIL_TWICE, Place.NONE)
        .with("named", weighing.body())
        .with("item", weighing.item())
        .with("step", weighing.step().id());
  }
}
