package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.Body;
import gambrel.shop.Shop;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
  private final Map<Place, ReadRow> accepted = new HashMap<>();
  private final List<AppliedCorrection> corrections = new ArrayList<>();

  private Ledgers(Shop shop, OffsetDateTime asOf) {
    this.shop = shop;
    this.asOf = asOf;
    this.directory = new Directory(shop);
    this.bench = new Bench(shop);
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
    var weighings = new ArrayList<Weighing>();
    var acceptance = new Acceptance(shop, directory, bench, reader);
    Map<Place, Fate> fates = new HashMap<>();
    for (var row : rows) {
      var fate = comparison.fate(row);
      if (fate == Fate.SET_ASIDE) {
        setAside(row, conflicts.get(row.place()));
      } else if (fate == Fate.USED) {
        fate = accept(row, acceptance, weighings);
      }
      fates.put(row.place(), fate);
    }
    var standing = withinRailLimit(weighings, fates);
    remark(rows, standing, fates);
    setAside.sort(Comparator.comparing(SetAside::notice, Notice.ORDER));
    notices.addAll(directory.notices());
    return new Ledger(standing, counts(files, fates), setAside, notices, corrections);
  }

  /** What is worth saying of rows that are in order. */
  private void remark(List<ReadRow> rows, List<Weighing> weighings, Map<Place, Fate> fates) {
    notices.addAll(
        ClockJumps.of(rows.stream().filter(r -> fates.get(r.place()) != Fate.REPEAT).toList()));
    notices.addAll(
        RowsAhead.of(
            rows.stream().filter(r -> fates.get(r.place()) == Fate.USED).toList(), asOf));
    var weighed =
        weighings.stream().map(w -> new DivisionGrid.Weighed(w, accepted.get(w.place()))).toList();
    var typed =
        corrections.stream()
            .filter(c -> WEIGHTS.contains(c.correction().field()))
            .map(c -> c.row().place())
            .collect(Collectors.toSet());
    notices.addAll(DivisionGrid.of(weighed, typed));
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
  private Fate accept(ReadRow row, Acceptance acceptance, List<Weighing> weighings) {
    if (row.status().isVoid()) {
      return Fate.USED;
    }
    try {
      var weighing = acceptance.accept(row);
      if (row.effective(asOf)) {
        weighings.add(weighing);
        accepted.put(row.place(), row);
      }
      return Fate.USED;
    } catch (Refusal refusal) {
      setAside(row, row.notice(refusal.code(), refusal.getMessage()).advising(refusal.advice()));
      return Fate.SET_ASIDE;
    }
  }

  private void setAside(ReadRow row, Notice notice) {
    var date = row.time().map(OffsetDateTime::toLocalDate).orElse(LocalDate.EPOCH);
    // A body that the bench book fills in is named as much as one that was keyed.
    var filled = row.time().map(t -> bench.fill(row.row(), row.scale(), t).row()).orElse(row.row());
    var bodies = directory.candidates(filled.get(Field.BODY), date).stream().map(Body::id);
    setAside.add(new SetAside(notice, bodies.toList(), row.effective(asOf)));
  }

  private List<Weighing> withinRailLimit(List<Weighing> weighings, Map<Place, Fate> fates) {
    weighings.sort(Weighing.BY_TIME);
    var beyond = new RailLimit(shop).beyond(weighings);
    for (var weighing : beyond) {
      fates.put(weighing.place(), Fate.SET_ASIDE);
      var row = accepted.get(weighing.place());
      setAside(row, row.notice(NoticeCode.RAIL_TWICE, twice(weighing)));
    }
    weighings.removeIf(weighing -> fates.get(weighing.place()) == Fate.SET_ASIDE);
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

  private static List<RowCount> counts(List<ExportFile> files, Map<Place, Fate> fates) {
    var counts = new ArrayList<RowCount>();
    for (var file : files) {
      var count = new EnumMap<Fate, Integer>(Fate.class);
      file.rows().forEach(row -> count.merge(fates.get(row.place()), 1, Integer::sum));
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
