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
import gambrel.trade.notice.Severity;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
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
  private final Optional<Phrase> misfit;
  private final List<Notice> notices = new ArrayList<>();

  /**
   * A reader of one file.
   *
   * @param path relative to the shop folder
   */
  ExportFileReader(String path, Layouts.Choice choice) {
    this.path = path;
    this.layout = choice.layout();
    this.misfit = choice.fault();
  }

  /** A file, if it could be read, and the notices about it as a whole. */
  record Result(Optional<ExportFile> file, List<Notice> notices) {
    /** A file that could not be read. */
    static Result none(Notice why) {
      return new Result(Optional.empty(), List.of(why));
    }
  }

  /** Reads the file. */
  Result read(InputStream in) throws IOException {
    var counted = CountedLines.read(in, layout.text());
    counted
        .gaveUp()
        .ifPresent(
            line ->
                notices.add(
                    Notice.of(NoticeCode.SETTING_BAD, "IGNORE_SLOW", layout.place())
                        .with("at", line)
                        .with("export", path)
                        .as(Severity.MARK)));
    var lines = counted.lines();
    var columns = layout.columns();
    var rows =
        Header.find(lines, layout.text(), header -> columns.positions(header).size())
            .map(header -> rows(lines, header))
            .orElse(List.of());
    return new Result(Optional.of(new ExportFile(path, rows)), notices);
  }

  private List<ExportRow> rows(List<TextLine> lines, Header header) {
    var positions = layout.columns().positions(header);
    var fault = misfit.or(() -> fault(header, positions));
    if (misfit.isEmpty() && layout.columns().areCompared() && !positions.isEmpty()) {
      var place = new Place(path, header.row().line());
      layout.columns().comparison(header).reportMistakes(name -> place, notices::add);
    }
    if (fault.isPresent()) {
      int line = misfit.isPresent() ? 0 : header.row().line();
      notices.add(
          unreadable(path, line, fault.get()).advising("LAYOUT").quoting(header.row().raw()));
      return brokenRows(lines, header, positions);
    }
    boolean named = layout.text().header();
    int fewest = Math.max(1, layout.fewest(positions));
    var csv = csv(lines, header, fewest, named ? header.width() : Integer.MAX_VALUE);
    int width = named ? header.width() : usualWidth(csv, header.next());
    return csv.all(header.next(), new ExportRows(path, layout, width, positions)::row);
  }

  private CsvRows csv(List<TextLine> lines, Header header, int fewest, int most) {
    return new CsvRows(lines, header.delimiter(), layout.text().quote(), fewest, most);
  }

  private static int usualWidth(CsvRows csv, int from) {
    var widths = csv.all(from, row -> row.broken().isEmpty() ? row.cells().size() : 0);
    return CsvRows.usualWidth(widths, 1);
  }

  /** All rows as broken ones; a first line that is no header is a row. */
  private List<ExportRow> brokenRows(
      List<TextLine> lines, Header header, Map<String, Integer> positions) {
    var rows = new ExportRows(path, layout, header.width(), positions);
    var why = Optional.of(ExportReader.COLUMNS_UNKNOWN);
    var broken = new ArrayList<ExportRow>();
    if (positions.isEmpty() && layout.text().header()) {
      broken.add(rows.row(header.row(), why));
    }
    var csv = csv(lines, header, 1, Integer.MAX_VALUE);
    broken.addAll(csv.all(header.next(), row -> rows.row(row, why)));
    return broken;
  }

  private Optional<Phrase> fault(Header header, Map<String, Integer> positions) {
    boolean named = layout.text().header();
    if (named && header.row().broken().isPresent()) {
      return header.row().broken().map(why -> Phrase.of("FAULT.FIRST_LINE").with("fault", why));
    }
    var columns = layout.columns();
    var twice = columns.areCompared() ? List.<String>of() : header.twice(columns.texts());
    if (!twice.isEmpty()) {
      return Optional.of(Phrase.of("FAULT.TWICE").with("column", twice));
    }
    var lacking = layout.lacking(positions.keySet());
    if (lacking.isEmpty()) {
      return Optional.empty();
    }
    var lacks = Phrase.of(named ? "FAULT.LACKS" : "FAULT.LACKS_CELLS").with("expected", lacking);
    return Optional.of(
        named ? lacks.with("found", header.names()) : lacks.with("found", header.width()));
  }

  /** A notice of a file that cannot be read; {@code why} ends the sentence about it. */
  static Notice unreadable(String path, int line, Phrase why) {
    return Notice.of(NoticeCode.EXPORT_UNREADABLE, new Place(path, line)).with("fault", why);
  }

  /** A notice of a file or folder that cannot be read to its end. */
  static Notice unfinished(String path, String variant) {
    return Notice.of(NoticeCode.EXPORT_UNFINISHED, variant, new Place(path, 0));
  }
}
