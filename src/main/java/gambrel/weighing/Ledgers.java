package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.Body;
import gambrel.shop.Shop;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Builds the ledger of the exports as known at one moment. */
public final class Ledgers {
  private static final Set<String> WEIGHTS = Set.of(Field.NET.id(), Field.GROSS.id());

  private final Shop shop;
  private final OffsetDateTime asOf;
  private final Directory directory;
  private final Bench bench;
  private final List<Notice> notices = new ArrayList<>();
  private final List<SetAside> setAside = new ArrayList<>();
  private final List<AppliedCorrection> corrections = new ArrayList<>();

  private Ledgers(Shop shop, OffsetDateTime asOf) {
    this.shop = shop;
    this.asOf = asOf;
    this.directory = new Directory(shop);
    this.bench = new Bench(shop.bench());
  }

  /**
   * What {@code files} say by {@code asOf}.
   *
   * @param files in path order
   */
  public static Ledger of(List<ExportFile> files, Shop shop, OffsetDateTime asOf) {
    return new Ledgers(shop, asOf).build(files);
  }

  private Ledger build(List<ExportFile> files) {
    var reader = new RowReader(shop);
    var rows = correctedRows(files, reader);
    var comparison = Comparison.of(rows, asOf);
    for (var notice : comparison.notices()) {
      if (notice.code() != NoticeCode.TICKET_CONFLICT) {
        notices.add(notice);
      }
    }
    Map<Place, Notice> conflicts = new HashMap<>();
    comparison.notices().forEach(n -> conflicts.put(n.place(), n));
    var judged = judge(rows, comparison, conflicts, reader);
    var standing = withinRailLimit(judged);
    remark(judged);
    setAside.sort(Comparator.comparing(SetAside::notice, Notice.ORDER));
    notices.addAll(directory.notices());
    return new Ledger(standing, counts(files, judged), setAside, notices, corrections);
  }

  /** A row, what became of it, and the weighing that it is if it has taken effect. */
  private static final class Judged {
    private final ReadRow row;
    private Fate fate;
    private Weighing weighing;

    private Judged(ReadRow row, Fate fate) {
      this.row = row;
      this.fate = fate;
    }
  }

  private List<Judged> judge(
      List<ReadRow> rows, Comparison comparison, Map<Place, Notice> conflicts, RowReader reader) {
    var acceptance = new Acceptance(shop, directory, bench, reader);
    var judged = new ArrayList<Judged>(rows.size());
    for (var row : rows) {
      var one = new Judged(row, comparison.fate(row));
      if (one.fate == Fate.SET_ASIDE) {
        setAside(row, conflicts.get(row.place()));
      } else if (one.fate == Fate.USED) {
        accept(one, acceptance);
      }
      judged.add(one);
    }
    return judged;
  }

  /** What is worth saying of rows that are in order. */
  private void remark(List<Judged> judged) {
    notices.addAll(ClockJumps.of(rows(judged, fate -> fate != Fate.REPEAT)));
    notices.addAll(RowsAhead.of(rows(judged, fate -> fate == Fate.USED), asOf));
    var weighed =
        judged.stream()
            .filter(j -> j.weighing != null)
            .map(j -> new DivisionGrid.Weighed(j.weighing, j.row))
            .toList();
    var typed =
        corrections.stream()
            .filter(c -> WEIGHTS.contains(c.correction().field()))
            .map(c -> c.row().place())
            .collect(Collectors.toSet());
    notices.addAll(DivisionGrid.of(weighed, typed));
  }

  private static List<ReadRow> rows(List<Judged> judged, Predicate<Fate> wanted) {
    return judged.stream().filter(j -> wanted.test(j.fate)).map(j -> j.row).toList();
  }

  private List<ReadRow> correctedRows(List<ExportFile> files, RowReader reader) {
    var overlay = new Overlay(shop, asOf);
    var corrected =
        files.stream().flatMap(file -> file.rows().stream()).map(overlay::apply).toList();
    corrections.addAll(overlay.applied());
    notices.addAll(overlay.unused());
    var clocks =
        ClockChanges.of(
            corrected.stream().map(Overlay.Corrected::row).toList(),
            new Times(shop.settings().zone()));
    notices.addAll(clocks.notices());
    return Occurrences.number(
        corrected.stream()
            .map(c -> reader.read(c.row(), clocks.time(c.row()), c.removed()))
            .toList());
  }

  /** A row that dates after the clock, or cancels from then on, is read but has no effect yet. */
  private void accept(Judged judged, Acceptance acceptance) {
    var row = judged.row;
    if (row.status().isVoid()) {
      return;
    }
    try {
      var weighing = acceptance.accept(row);
      if (row.effective(asOf)) {
        judged.weighing = weighing;
      }
    } catch (Refusal refusal) {
      setAside(row, row.notice(refusal.code(), refusal.getMessage()).advising(refusal.advice()));
      judged.fate = Fate.SET_ASIDE;
    }
  }

  private void setAside(ReadRow row, Notice notice) {
    var date = row.time().map(OffsetDateTime::toLocalDate).orElse(LocalDate.EPOCH);
    // A body that the bench book fills in is named as much as one that was keyed.
    var filled = row.time().map(t -> bench.fill(row.row(), row.scale(), t).row()).orElse(row.row());
    var bodies = directory.candidates(filled.get(Field.BODY), date).stream().map(Body::id);
    setAside.add(new SetAside(notice, bodies.toList(), row.effective(asOf)));
  }

  private List<Weighing> withinRailLimit(List<Judged> judged) {
    var weighings = new ArrayList<Weighing>();
    judged.stream().filter(j -> j.weighing != null).forEach(j -> weighings.add(j.weighing));
    weighings.sort(Weighing.BY_TIME);
    Set<Weighing> beyond = Collections.newSetFromMap(new IdentityHashMap<>());
    beyond.addAll(new RailLimit(shop).beyond(weighings));
    if (beyond.isEmpty()) {
      return weighings;
    }
    for (var one : judged) {
      if (beyond.contains(one.weighing)) {
        setAside(one.row, one.row.notice(NoticeCode.RAIL_TWICE, twice(one.weighing)));
        one.fate = Fate.SET_ASIDE;
        one.weighing = null;
      }
    }
    weighings.removeIf(beyond::contains);
    return weighings;
  }

  private static String twice(Weighing weighing) {
    return "Body "
        + weighing.body()
        + " has no more parts \""
        + weighing.item()
        + "\" that could be weighed "
        + weighing.step().id()
        + ".";
  }

  /** Rows come file by file. */
  private static List<RowCount> counts(List<ExportFile> files, List<Judged> judged) {
    var counts = new ArrayList<RowCount>();
    int at = 0;
    for (var file : files) {
      var count = new EnumMap<Fate, Integer>(Fate.class);
      int end = at + file.rows().size();
      judged.subList(at, end).forEach(j -> count.merge(j.fate, 1, Integer::sum));
      at = end;
      counts.add(
          new RowCount(
              file.path(),
              count.getOrDefault(Fate.USED, 0),
              count.getOrDefault(Fate.REPEAT, 0),
              count.getOrDefault(Fate.VOID, 0),
              count.getOrDefault(Fate.SET_ASIDE, 0)));
    }
    return counts;
  }
}
