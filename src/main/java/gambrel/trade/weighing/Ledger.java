package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.AppliedCorrection;
import gambrel.trade.rows.ClockChecks;
import gambrel.trade.rows.CorrectedRows;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.RowComparison;
import gambrel.trade.shop.Shop;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;

/**
 * What the exports say, as known at one moment.
 *
 * @param weighings the weighings that have taken effect
 * @param rows the number of rows of each file by disposition, in path order
 * @param setAside rows that wait for a person, in file and line order
 * @param notices all notices about rows but those of {@code setAside}
 * @param corrections the corrections that were applied, row by row
 */
public record Ledger(
    Weighings weighings,
    List<RowCount> rows,
    List<SetAside> setAside,
    List<Notice> notices,
    List<AppliedCorrection> corrections) {
  private static final Set<String> WEIGHTS = Set.of(Field.NET.id(), Field.GROSS.id());

  /** Copies the lists. */
  public Ledger {
    rows = List.copyOf(rows);
    setAside = List.copyOf(setAside);
    notices = List.copyOf(notices);
    corrections = List.copyOf(corrections);
  }

  /**
   * The ledger of {@code files} at {@code asOf}.
   *
   * @param files in path order
   */
  public static Ledger of(List<ExportFile> files, Shop shop, OffsetDateTime asOf) {
    return of(files, shop, asOf, rows -> {});
  }

  /** As above; {@code done} receives the number of rows of each file that is classified. */
  public static Ledger of(
      List<ExportFile> files, Shop shop, OffsetDateTime asOf, LongConsumer done) {
    var corrected = CorrectedRows.of(files, shop, asOf);
    var comparison = RowComparison.of(corrected.all(), asOf);
    var references = new ReferenceLookup(shop);
    var classifier = new RowClassifier(shop, asOf, references, comparison);
    var classified = corrected.files().parallelStream().map(f -> classifier.file(f, done)).toList();
    var beyond = RailLimit.beyond(shop, classified);
    var judged = classified.stream().map(file -> classifier.setAside(file, beyond)).toList();

    var notices = new ArrayList<>(corrected.notices());
    notices.addAll(comparison.unusedVoids());
    judged.forEach(file -> notices.addAll(ClockChecks.jumpsBack(file.withoutRepeats())));
    notices.addAll(ClockChecks.datedAhead(judged.stream().flatMap(ClassifiedFile::used), asOf));
    notices.addAll(DivisionCheck.notices(judged, typedWeights(corrected)));
    notices.addAll(references.notices());
    return new Ledger(
        new Weighings(judged.stream().flatMap(ClassifiedFile::weighings).toList()),
        judged.stream().map(ClassifiedFile::count).toList(),
        judged.stream()
            .flatMap(ClassifiedFile::setAside)
            .sorted(Comparator.comparing(SetAside::notice, Notice.ORDER))
            .toList(),
        notices,
        corrected.corrections());
  }

  /** The rows whose weight a correction gives. */
  private static Set<Place> typedWeights(CorrectedRows rows) {
    return rows.corrections().stream()
        .filter(c -> WEIGHTS.contains(c.correction().field()))
        .map(c -> c.row().place())
        .collect(Collectors.toSet());
  }
}
