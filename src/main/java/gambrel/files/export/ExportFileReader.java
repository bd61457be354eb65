package gambrel.files.export;

import gambrel.files.csv.CsvRows;
import gambrel.files.csv.Header;
import gambrel.files.csv.TextLine;
import gambrel.files.layout.Layout;
import gambrel.files.layout.Layouts;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads one export file by its layout. */
final class ExportFileReader {
  private final String path;
  private final Layout layout;
  private final Optional<Phrase> misfit;
  private final List<Notice> notices;

  /**
   * Prepares for a file.
   *
   * @param path relative to the shop folder
   * @param choice its layout
   * @param notices where it is added what is wrong with the file as a whole
   */
  ExportFileReader(String path, Layouts.Choice choice, List<Notice> notices) {
    this.path = path;
    this.layout = choice.layout();
    this.misfit = choice.fault();
    this.notices = notices;
  }

  /** The rows of the file. */
  ExportFile read(InputStream in) throws IOException {
    var counted = CountedLines.read(in, layout.text());
    counted.gaveUp().ifPresent(this::tellImpatience);
    return Header.find(counted.lines(), layout.text(), this::score)
        .map(header -> file(counted.lines(), header))
        .orElseGet(() -> new ExportFile(path, List.of()));
  }

  private void tellImpatience(int line) {
    notices.add(
        Notice.of(NoticeCode.SETTING_BAD, "IGNORE_SLOW", layout.place())
            .with("at", line)
            .with("export", path));
  }

  private long score(Header header) {
    return layout.columns().positions(header).size();
  }

  private ExportFile file(List<TextLine> lines, Header header) {
    var positions = layout.columns().positions(header);
    var fault = misfit.or(() -> fault(header, positions));
    if (fault.isPresent()) {
      int line = misfit.isPresent() ? 0 : header.row().line();
      notices.add(
          unreadable(path, line, fault.get()).advising("LAYOUT").quoting(header.row().raw()));
      return unusable(lines, header, positions);
    }
    char quote = layout.text().quote();
    int fewest = Math.max(1, layout.fewest(positions));
    int most = layout.text().header() ? header.width() : Integer.MAX_VALUE;
    var csv = new CsvRows(lines, header.delimiter(), quote, fewest, most);
    int width = layout.text().header() ? header.width() : usualWidth(csv, header.next());
    var rows = new ExportRows(path, layout, width, positions);
    return new ExportFile(path, csv.all(header.next(), rows::row));
  }

  /** Without a header, most rows say how many columns there are; of two numbers the larger. */
  private static int usualWidth(CsvRows rows, int from) {
    var counts = new TreeMap<Integer, Integer>();
    rows.all(from, row -> row.broken().isEmpty() ? row.cells().size() : 0).stream()
        .filter(width -> width > 0)
        .forEach(width -> counts.merge(width, 1, Integer::sum));
    return counts.entrySet().stream()
        .reduce((best, other) -> other.getValue() >= best.getValue() ? other : best)
        .map(Map.Entry::getKey)
        .orElse(0);
  }

  /** Every row counts as read and none can be used; a first line that is no header is a row. */
  private ExportFile unusable(List<TextLine> lines, Header header, Map<String, Integer> positions) {
    var rows = new ExportRows(path, layout, header.width(), positions);
    char quote = layout.text().quote();
    var csv = new CsvRows(lines, header.delimiter(), quote, 1, Integer.MAX_VALUE);
    var why = Optional.of(ExportReader.COLUMNS_UNKNOWN);
    var records = new ArrayList<ExportRow>();
    if (positions.isEmpty() && layout.text().header()) {
      records.add(rows.row(header.row(), why));
    }
    records.addAll(csv.all(header.next(), row -> rows.row(row, why)));
    return new ExportFile(path, records);
  }

  private Optional<Phrase> fault(Header header, Map<String, Integer> positions) {
    if (layout.text().header() && header.row().broken().isPresent()) {
      return header.row().broken().map(why -> Phrase.of("FAULT.FIRST_LINE").with("fault", why));
    }
    var twice = header.twice(layout.columns().texts());
    if (!twice.isEmpty()) {
      return Optional.of(Phrase.of("FAULT.TWICE").with("column", twice));
    }
    var lacking = layout.lacking(positions.keySet());
    if (lacking.isEmpty()) {
      return Optional.empty();
    }
    boolean named = layout.text().header();
    var lacks = Phrase.of(named ? "FAULT.LACKS" : "FAULT.LACKS_CELLS").with("expected", lacking);
    return Optional.of(
        named ? lacks.with("found", header.names()) : lacks.with("found", header.width()));
  }

  /** A file that cannot be read, for the reason that ends the sentence. */
  static Notice unreadable(String path, int line, Phrase why) {
    return Notice.of(NoticeCode.EXPORT_UNREADABLE, new Place(path, line)).with("fault", why);
  }
}
