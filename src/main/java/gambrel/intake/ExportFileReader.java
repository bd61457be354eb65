package gambrel.intake;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.weighing.ExportFile;
import gambrel.weighing.Field;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one export file by its layout. */
final class ExportFileReader {
  private final String path;
  private final Layout layout;
  private final List<Notice> notices;

  /**
   * Prepares for a file.
   *
   * @param path relative to the shop folder
   * @param notices where it is added what is wrong with the file as a whole
   */
  ExportFileReader(String path, Layout layout, List<Notice> notices) {
    this.path = path;
    this.layout = layout;
    this.notices = notices;
  }

  /** The rows of the file. */
  ExportFile read(InputStream in) throws IOException {
    var lines = TextLine.read(in, layout.charset());
    return Header.find(lines, layout.delimiters(), layout.columns().values())
        .map(header -> file(lines, header))
        .orElseGet(() -> new ExportFile(path, List.of()));
  }

  private ExportFile file(List<TextLine> lines, Header header) {
    var positions = layout.positions(header);
    var fault = fault(header, positions);
    var rows = new ExportRows(path, layout, header.width(), positions);
    if (fault.isEmpty()) {
      var csv = new CsvRows(lines, header.delimiter(), rows.fewest(), header.width());
      return new ExportFile(path, rows.rows(csv.all(header.next())));
    }
    notices.add(unreadable(path, header.row().line(), fault.get()).quoting(header.row().raw()));
    return unusable(lines, header, rows, positions);
  }

  /** Every row counts as read and none can be used; a first line that is no header is a row. */
  private ExportFile unusable(
      List<TextLine> lines, Header header, ExportRows rows, Map<Field, Integer> positions) {
    var csv = new CsvRows(lines, header.delimiter(), 1, Integer.MAX_VALUE);
    var records = new ArrayList<CsvRow>();
    if (positions.isEmpty()) {
      records.add(header.row());
    }
    records.addAll(csv.all(header.next()));
    var why = Optional.of(ExportReader.COLUMNS_UNKNOWN);
    return new ExportFile(path, records.stream().map(record -> rows.row(record, why)).toList());
  }

  private Optional<String> fault(Header header, Map<Field, Integer> positions) {
    if (header.row().broken().isPresent()) {
      return header.row().broken().map(why -> "its first line cannot be read: " + why);
    }
    var twice = header.twice(layout.columns().values());
    if (!twice.isEmpty()) {
      return Optional.of("the column " + String.join(", ", twice) + " stands there twice");
    }
    var lacking = layout.lacking(positions.keySet()).stream().map(layout.columns()::get).toList();
    return lacking.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "it lacks the column "
                + String.join(", ", lacking)
                + "; its first line has "
                + String.join(", ", header.names()));
  }

  /** A file that cannot be read, for the reason that ends the sentence. */
  static Notice unreadable(String path, int line, String why) {
    return Notice.of(NoticeCode.EXPORT_UNREADABLE, new Place(path, line), why);
  }
}
