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

/** What was read. Where there are many files, those of long ago that need nothing are one line. */
final class FilesPart {
  private static final int FEW = 20;
  private static final int DAYS = 2;

  private final Night night;
  private final Wording wording;
  private final List<RowCount> counts;

  FilesPart(Night night, Wording wording) {
    this.night = night;
    this.wording = wording;
    this.counts = night.ledger().rows();
  }

  List<FileRow> rows() {
    if (counts.size() <= FEW) {
      return counts.stream().map(count -> row(count.file(), count)).toList();
    }
    var recent = recent();
    var rows = new ArrayList<FileRow>();
    var rest = new ArrayList<RowCount>();
    for (var count : counts) {
      if (count.setAside() > 0 || recent.contains(count.file())) {
        rows.add(row(count.file(), count));
      } else {
        rest.add(count);
      }
    }
    if (!rest.isEmpty()) {
      String files =
          wording.count("morning.files.rest", rest.size(), wording.formats().count(rest.size()));
      rows.add(row(files, sum(rest)));
    }
    return rows;
  }

  /** All files together. */
  FileRow total() {
    return row(counts.isEmpty() ? "" : wording.say("total"), sum(counts));
  }

  /** Files with a weighing of last night's day or the one before. */
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
