package gambrel.pages.owner.morning;

import gambrel.pages.views.MorningView.FileRow;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.RowCount;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The export files that were read. If there are many, the old ones without a row set aside are one
 * row together.
 */
record FilesPart(Night night, Wording wording) {
  private static final int FEW = 20;
  private static final int DAYS = 2;

  List<FileRow> rows() {
    var counts = night.ledger().rows();
    var recent = recent();
    var byShown =
        counts.stream()
            .collect(
                Collectors.partitioningBy(
                    count ->
                        counts.size() <= FEW
                            || count.setAside() > 0
                            || recent.contains(count.file())));
    var rows = new ArrayList<>(byShown.get(true).stream().map(c -> row(c.file(), c)).toList());
    var rest = byShown.get(false);
    if (!rest.isEmpty()) {
      rows.add(row(wording.counted("morning.files.rest", rest.size()), sum(rest)));
    }
    return rows;
  }

  /** All files together. */
  FileRow total() {
    var counts = night.ledger().rows();
    return row(counts.isEmpty() ? "" : wording.say("total"), sum(counts));
  }

  /** Files with a weighing of last night's day or of the two before. */
  private Set<String> recent() {
    LocalDate from = night.asOf().toLocalDate().minusDays(DAYS);
    return night.ledger().weighings().stream()
        .filter(weighing -> !weighing.date().isBefore(from))
        .map(weighing -> weighing.place().file())
        .collect(Collectors.toSet());
  }

  static RowCount sum(List<RowCount> counts) {
    return new RowCount(
        "",
        counts.stream().mapToInt(RowCount::used).sum(),
        counts.stream().mapToInt(RowCount::repeat).sum(),
        counts.stream().mapToInt(RowCount::voided).sum(),
        counts.stream().mapToInt(RowCount::setAside).sum());
  }

  private FileRow row(String file, RowCount count) {
    var formats = wording.formats();
    return new FileRow(
        file,
        formats.count(count.read()),
        formats.count(count.used()),
        formats.count(count.repeat()),
        formats.count(count.voided()),
        formats.count(count.setAside()));
  }
}
