package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.shop.Shop;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;

/**
 * Builds the ledger of the exports as known at one moment. The files are gone through up to three
 * times, since their rows do not all fit in memory: to find what is alike, to compare that, to judge
 * every row.
 */
public final class Ledgers {
  /** So many weighings are some 80 MB; most shops never have as many. */
  public static final int KEPT = 250_000;

  /** Those that go through every file. */
  private static final int PASSES = 2;

  private static final Set<String> WEIGHTS = Set.of(Field.NET.id(), Field.GROSS.id());

  private final List<ExportFile> files;
  private final Shop shop;
  private final OffsetDateTime asOf;
  private final int kept;
  private final RowReader reader;
  private final Rows rows;
  private final Directory directory;
  private final LongConsumer passed;

  private Ledgers(
      List<ExportFile> files, Shop shop, OffsetDateTime asOf, int kept, LongConsumer passed) {
    this.files = files;
    this.shop = shop;
    this.asOf = asOf;
    this.kept = kept;
    this.reader = new RowReader(shop);
    this.rows = new Rows(shop, asOf, reader);
    this.directory = new Directory(shop);
    this.passed = passed;
  }

  /**
   * What {@code files} say by {@code asOf}.
   *
   * @param files in path order
   */
  public static Ledger of(List<ExportFile> files, Shop shop, OffsetDateTime asOf) {
    return of(files, shop, asOf, KEPT);
  }

  /**
   * The same, packed beyond another number of weighings.
   *
   * @param kept so many weighings are kept as they are; more are packed
   */
  public static Ledger of(List<ExportFile> files, Shop shop, OffsetDateTime asOf, int kept) {
    return of(files, shop, asOf, kept, Progress.NONE);
  }

  /**
   * As above, and reports rows to {@code progress} as they are gone through, each of them twice;
   * what few files are read for beside that is not counted.
   */
  public static Ledger of(
      List<ExportFile> files, Shop shop, OffsetDateTime asOf, int kept, Progress progress) {
    long rows = files.stream().mapToLong(ExportFile::count).sum();
    var passed = progress.begin(Progress.Stage.ROWS, PASSES * rows);
    return new Ledgers(files, shop, asOf, kept, passed).build();
  }

  private Ledger build() {
    var comparison = Comparison.of(Occurrences.number(suspects()), asOf);
    Map<Place, Notice> conflicts = new HashMap<>();
    comparison.notices().forEach(n -> conflicts.put(n.place(), n));
    var judge =
        new FileJudge(shop, asOf, directory, reader, comparison, conflicts, typedWeights());
    var judged = new LinkedHashMap<String, JudgedFile>();
    var weighings = judge(judge, judged);
    var setAside = new ArrayList<SetAside>();
    judged.values().forEach(file -> setAside.addAll(file.setAside()));
    setAside.sort(Comparator.comparing(SetAside::notice, Notice.ORDER));
    return new Ledger(
        weighings,
        judged.values().stream().map(JudgedFile::count).toList(),
        setAside,
        notices(comparison, judged.values()),
        rows.corrections());
  }

  /** A file in the first pass. */
  private record FirstLook(List<ExportRow> rows, List<ReadRow> read, Suspects.Look look) {}

  /** The rows that have to be compared, in file and line order. */
  private List<KeyedRow> suspects() {
    var suspects = new Suspects(reader);
    FilePasses.each(
        files,
        file -> {
          var own = file.rows();
          var read = rows.of(own);
          return new FirstLook(own, read, suspects.look(file.path(), read));
        },
        first -> {
          rows.look(first.rows(), first.read());
          suspects.add(first.look());
        },
        passed);
    rows.decide();
    suspects.decide();
    var found = new ArrayList<KeyedRow>();
    FilePasses.each(
        files.stream().filter(suspects::isIn).toList(),
        file -> suspects.of(rows.of(file.rows())).stream().map(reader::keyed).toList(),
        found::addAll);
    return found;
  }

  private Set<Place> typedWeights() {
    return rows.corrections().stream()
        .filter(c -> WEIGHTS.contains(c.correction().field()))
        .map(c -> c.row().place())
        .collect(Collectors.toSet());
  }

  private Weighings judge(FileJudge judge, Map<String, JudgedFile> judged) {
    var store = new WeighingStore(kept);
    FilePasses.each(
        files,
        file -> judge.judge(file.path(), rows.of(file.rows()), Set.of()),
        file -> {
          file.weighings().forEach(store::add);
          judged.put(file.count().file(), file.withoutWeighings());
        },
        passed);
    var weighings = store.weighings();
    var beyond = beyond(weighings);
    if (beyond.isEmpty()) {
      return weighings;
    }
    // Which rail weighings are too many is known only now; few nights have any.
    var concerned = beyond.stream().map(Place::file).collect(Collectors.toSet());
    FilePasses.each(
        files.stream().filter(file -> concerned.contains(file.path())).toList(),
        file -> judge.judge(file.path(), rows.of(file.rows()), beyond),
        file -> judged.put(file.count().file(), file.withoutWeighings()));
    return weighings.without(beyond);
  }

  private Set<Place> beyond(Weighings weighings) {
    var limit = new RailLimit(shop);
    return weighings.bodies().parallelStream()
        .flatMap(body -> limit.beyond(weighings.of(body)).stream())
        .map(Weighing::place)
        .collect(Collectors.toSet());
  }

  /** All that is worth saying of rows, but for those that wait. */
  private List<Notice> notices(Comparison comparison, Collection<JudgedFile> judged) {
    var notices = new ArrayList<>(rows.notices());
    comparison.notices().stream()
        .filter(notice -> notice.code() != NoticeCode.TICKET_CONFLICT)
        .forEach(notices::add);
    judged.forEach(file -> notices.addAll(file.jumps()));
    notices.addAll(
        RowsAhead.notices(judged.stream().flatMap(file -> file.ahead().stream()).toList()));
    notices.addAll(DivisionGrid.notices(judged.stream().map(JudgedFile::grid).toList()));
    notices.addAll(directory.notices());
    return notices;
  }
}
