package gambrel.trade.weighing;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.ClockChecks;
import gambrel.trade.rows.CorrectedRows;
import gambrel.trade.rows.CorrectedRows.AppliedCorrection;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.rows.RowDisposition;
import gambrel.trade.shop.Shop;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the exports say, as known at one moment.
 *
 * @param weighings the weighings that have taken effect
 * @param rows the number of rows of each file by disposition, in path order
 * @param setAside rows that wait for a person, in file and line order
 * @param notices all notices about rows but those of {@code setAside}
 * @param corrections the corrections that were applied, row by row
 * @param named what the rows are about that a correction names which cannot be read, by its place
 */
public record Ledger(
    Weighings weighings,
    List<RowCount> rows,
    List<SetAside> setAside,
    List<Notice> notices,
    List<AppliedCorrection> corrections,
    Map<Place, NamedBodies> named) {
  /**
   * What the rows of the exports are about that a correction names.
   *
   * @param bodies the bodies that they may name
   * @param batches the batches that they name
   * @param unnamed whether there are such rows and they name neither
   */
  public record NamedBodies(Set<String> bodies, Set<String> batches, boolean unnamed) {
    /** Copies the sets. */
    public NamedBodies {
      bodies = Set.copyOf(bodies);
      batches = Set.copyOf(batches);
    }
  }

  private static final Set<String> WEIGHTS = Set.of(Field.NET.id(), Field.GROSS.id());

  /** Copies the lists. */
  public Ledger {
    rows = List.copyOf(rows);
    setAside = List.copyOf(setAside);
    notices = List.copyOf(notices);
    corrections = List.copyOf(corrections);
    named = Map.copyOf(named);
  }

  /**
   * The ledger of {@code files} at {@code asOf}.
   *
   * @param files in path order
   * @param done receives 1 for each row that is classified, from several threads
   */
  public static Ledger of(
      List<ExportFile> files, Shop shop, OffsetDateTime asOf, LongConsumer done) {
    var corrected = CorrectedRows.of(files, shop, asOf);
    var comparison = RowComparison.of(corrected.rows(), asOf);
    var references = new ReferenceLookup(shop);
    var factory = new WeighingFactory(shop, references, new BenchLookup(shop.bench()));
    var classifier = RowClassifier.of(factory, comparison, asOf, corrected.rows());
    var rows = classifier.classify(done);
    var byFile = Groups.inOrder(rows.stream(), row -> row.row().place().file());

    var notices = new ArrayList<>(corrected.notices());
    var settled =
        files.stream()
            .filter(ExportFile::voidsOwn)
            .map(ExportFile::path)
            .collect(Collectors.toSet());
    comparison.notices().stream()
        .filter(n -> n.code() != NoticeCode.VOID_ALONE || !settled.contains(n.place().file()))
        .forEach(notices::add);
    byFile.forEach(
        (file, of) ->
            notices.addAll(
                ClockChecks.jumpsBack(read(of, r -> r.disposition() != RowDisposition.REPEAT))));
    notices.addAll(
        ClockChecks.datedAhead(read(rows, r -> r.disposition() == RowDisposition.USED), asOf));
    notices.addAll(DivisionCheck.notices(byFile.values(), typedWeights(corrected)));
    notices.addAll(references.notices());
    return new Ledger(
        new Weighings(rows.stream().flatMap(row -> row.weighing().stream()).toList()),
        files.stream().map(f -> RowCount.of(f, byFile.getOrDefault(f.path(), List.of()))).toList(),
        rows.stream()
            .flatMap(row -> row.setAside().stream())
            .sorted(Comparator.comparing(SetAside::notice, Notice.ORDER))
            .toList(),
        notices,
        corrected.corrections(),
        named(shop, classifier));
  }

  private static Map<Place, NamedBodies> named(Shop shop, RowClassifier classifier) {
    var named = new HashMap<Place, NamedBodies>();
    shop.unread().stream()
        .filter(row -> row.named("ticket").isPresent())
        .forEach(row -> named.put(row.place(), classifier.named(row)));
    return named;
  }

  private static Stream<ReadRow> read(List<ClassifiedRow> rows, Predicate<ClassifiedRow> which) {
    return rows.stream().filter(which).map(ClassifiedRow::row);
  }

  /** The rows whose weight a correction gives. */
  private static Set<Place> typedWeights(CorrectedRows rows) {
    return rows.corrections().stream()
        .filter(c -> WEIGHTS.contains(c.correction().field()))
        .map(c -> c.row().place())
        .collect(Collectors.toSet());
  }
}
