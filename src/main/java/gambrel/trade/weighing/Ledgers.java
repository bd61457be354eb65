package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.CorrectedRows;
import gambrel.trade.rows.EqualRowCounter;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.RepeatCandidates;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowReader;
import gambrel.trade.rows.RowsAhead;
import gambrel.trade.shop.Shop;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;

/** Builds the ledger of the exports as known at one moment. */
public final class Ledgers {
  private static final Set<String> WEIGHTS = Set.of(Field.NET.id(), Field.GROSS.id());

  private final Shop shop;
  private final OffsetDateTime asOf;
  private final RowReader reader;
  private final CorrectedRows rows;
  private final ReferenceLookup directory;
  private final RowComparison comparison;
  private final LongConsumer judged;

  private Ledgers(List<ExportFile> files, Shop shop, OffsetDateTime asOf, LongConsumer judged) {
    this.shop = shop;
    this.asOf = asOf;
    this.judged = judged;
    this.reader = new RowReader(shop);
    this.rows = new CorrectedRows(files, shop, asOf, reader);
    this.directory = new ReferenceLookup(shop);
    var all = rows.files().stream().flatMap(file -> file.rows().stream()).toList();
    this.comparison =
        RowComparison.of(EqualRowCounter.number(RepeatCandidates.of(all, reader)), asOf);
  }

  /**
   * What {@code files} say by {@code asOf}.
   *
   * @param files in path order
   */
  public static Ledger of(List<ExportFile> files, Shop shop, OffsetDateTime asOf) {
    return of(files, shop, asOf, Progress.NONE);
  }

  /** As above, and reports to {@code progress} the rows whose use is decided. */
  public static Ledger of(
      List<ExportFile> files, Shop shop, OffsetDateTime asOf, Progress progress) {
    long rows = files.stream().mapToLong(file -> file.rows().size()).sum();
    return new Ledgers(files, shop, asOf, progress.begin(Progress.Stage.ROWS, rows)).build();
  }

  private Ledger build() {
    Map<Place, Notice> conflicts = new HashMap<>();
    comparison.notices().forEach(n -> conflicts.put(n.place(), n));
    var judge = new RowClassifier(shop, asOf, directory, reader, comparison, conflicts);
    var files =
        new ArrayList<>(
            rows.files().parallelStream().map(file -> judge(judge, file, Set.of())).toList());
    var weighings = weighings(files);
    var beyond = beyond(weighings);
    if (!beyond.isEmpty()) {
      // Which rail weighings are too many is known only when all are; their files are judged again.
      var concerned = beyond.stream().map(Place::file).collect(Collectors.toSet());
      for (int i = 0; i < files.size(); i++) {
        var file = rows.files().get(i);
        if (concerned.contains(file.path())) {
          files.set(i, judge.judge(file.path(), file.rows(), beyond));
        }
      }
      weighings = weighings(files);
    }
    return new Ledger(
        weighings,
        files.stream().map(RowClassifier.JudgedFile::count).toList(),
        files.stream()
            .flatMap(file -> file.setAside().stream())
            .sorted(Comparator.comparing(SetAside::notice, Notice.ORDER))
            .toList(),
        notices(files),
        rows.corrections());
  }

  private RowClassifier.JudgedFile judge(
      RowClassifier judge, CorrectedRows.OfFile file, Set<Place> beyond) {
    var done = judge.judge(file.path(), file.rows(), beyond);
    judged.accept(file.rows().size());
    return done;
  }

  private static Weighings weighings(List<RowClassifier.JudgedFile> files) {
    return new Weighings(
        files.stream()
            .flatMap(file -> file.weighed().stream())
            .map(DivisionGrid.Weighed::weighing)
            .toList());
  }

  private Set<Place> beyond(Weighings weighings) {
    var limit = new RailLimit(shop);
    return weighings.bodies().parallelStream()
        .flatMap(body -> limit.beyond(weighings.of(body)).stream())
        .map(Weighing::place)
        .collect(Collectors.toSet());
  }

  /** All that is worth saying of rows, except why rows are set aside. */
  private List<Notice> notices(List<RowClassifier.JudgedFile> files) {
    var notices = new ArrayList<>(rows.notices());
    comparison.notices().stream()
        .filter(notice -> notice.code() != NoticeCode.TICKET_CONFLICT)
        .forEach(notices::add);
    files.forEach(file -> notices.addAll(file.jumps()));
    notices.addAll(RowsAhead.notices(files.stream().flatMap(file -> file.used().stream()), asOf));
    notices.addAll(
        DivisionGrid.notices(
            files.stream().map(RowClassifier.JudgedFile::weighed), typedWeights()));
    notices.addAll(directory.notices());
    return notices;
  }

  /** The rows whose weight a correction gives. */
  private Set<Place> typedWeights() {
    return rows.corrections().stream()
        .filter(c -> WEIGHTS.contains(c.correction().field()))
        .map(c -> c.row().place())
        .collect(Collectors.toSet());
  }
}
