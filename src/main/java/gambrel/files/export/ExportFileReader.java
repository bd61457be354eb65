package gambrel.files.export;

import gambrel.files.csv.CsvRow;
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
import gambrel.trade.rows.Field;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads one export file by its layout. */
final class ExportFileReader {
  private static final Set<String> UNDECODED = Set.of("FAULT.NUL", "FAULT.CHARSET");
  private static final Pattern NUMBER = Pattern.compile("[-+]?[.,]?\\d[\\d.,'’\\h]*");

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

  /** Reads the file. */
  Exports read(InputStream in) throws IOException {
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
    var unfit =
        counted.emptied().map(line -> Phrase.of("FAULT.NULS").with("at", line)).or(() -> misfit);
    var file =
        Header.find(lines, layout.text(), header -> layout.positions(header).size())
            .map(header -> file(counted, header, unfit))
            .orElseGet(() -> new ExportFile(path, List.of()));
    return new Exports(List.of(file), notices);
  }

  /** The file by its header; {@code unfit} says why it cannot be read, whatever its header. */
  private ExportFile file(CountedLines counted, Header header, Optional<Phrase> unfit) {
    var lines = counted.lines();
    var positions = layout.positions(header);
    var fault = unfit.or(() -> fault(header, positions));
    if (unfit.isEmpty() && layout.areCompared() && !positions.isEmpty()) {
      var comparison = layout.comparison(header);
      // Where other columns are lacking, too, the file needs a layout and no better names.
      if (comparison.resembled().containsAll(layout.lacking(positions.keySet()))) {
        var place = new Place(path, header.row().line());
        comparison.reportMistakes(
            name -> place,
            notice -> {
              boolean resembles = notice.saying().key().equals(NoticeCode.COLUMN_UNKNOWN.name());
              notices.add(resembles ? notice.advising("LAYOUT") : notice);
            });
      }
    }
    boolean named = layout.text().header();
    if (fault.isPresent()) {
      notices.add(
          unfit.map(why -> unreadable(path, 0, why)).orElseGet(() -> unlike(header, fault.get())));
      // A first line that is no header is a row.
      int first = named && positions.isEmpty() ? 1 : 0;
      var rows = csv(lines, header, 1, Integer.MAX_VALUE).all(header.next());
      return new ExportFile(path, List.of(), first + rows.size(), false);
    }
    int fewest = Math.max(1, layout.fewest(positions));
    var csv = csv(lines, header, fewest, named ? header.width() : Integer.MAX_VALUE);
    int usual = named ? header.width() : usualWidth(csv, header.next());
    int reached = positions.values().stream().mapToInt(at -> at + 1).max().orElse(0);
    int width = Math.max(usual, reached);
    var read = csv.all(header.next(), new ExportRows(path, layout, width, positions, counted)::row);
    String top = header.row().raw();
    var known =
        read.stream().filter(row -> !layout.headerRepeated() || !row.raw().equals(top)).toList();
    var rows = CancelledBefore.in(known, layout);
    var file = new ExportFile(path, rows, 0, layout.voids(Layout.Voided.OWN));
    if (!rows.isEmpty() && rows.stream().allMatch(ExportFileReader::isUndecoded)) {
      notices.add(unlike(header, rows.get(0).broken().orElseThrow()));
      return file.withoutRows();
    }
    var last = lines.get(lines.size() - 1);
    if (last.end().isEmpty() && isCut(last, csv.all(header.next()), usual, header.delimiter())) {
      var place = new Place(path, last.number());
      String raw = rows.isEmpty() ? "" : rows.get(rows.size() - 1).raw();
      notices.add(Notice.of(NoticeCode.EXPORT_UNFINISHED, "CUT", place).quoting(raw));
      return file.withoutRows();
    }
    return file;
  }

  /** Whether a row is broken by characters that are no text. */
  private static boolean isUndecoded(ExportRow row) {
    return row.broken().filter(why -> UNDECODED.contains(why.key())).isPresent();
  }

  /**
   * Whether a file without a line end after its last line ends within this line: if the line has
   * fewer cells than the header, or its last filled cell is a number with fewer decimals than all
   * other numbers of that column.
   */
  private boolean isCut(TextLine last, List<CsvRow> rows, int width, char delimiter) {
    if (last.isBlank() || rows.isEmpty()) {
      return last.isBlank() && last.text().indexOf(delimiter) >= 0;
    }
    var cells = rows.get(rows.size() - 1);
    if (cells.cells().size() < width) {
      return true;
    }
    int filled = cells.cells().size() - 1;
    while (filled > 0 && cells.isBlankFrom(filled)) {
      filled--;
    }
    int column = filled;
    int decimals = decimals(cells.cell(column));
    var others =
        rows.subList(0, rows.size() - 1).stream()
            .mapToInt(row -> decimals(row.cell(column)))
            .filter(number -> number >= 0)
            .min();
    return decimals >= 0 && others.isPresent() && decimals < others.getAsInt();
  }

  /** The decimals of the number that a cell is or begins with; -1 if it does not. */
  private int decimals(String cell) {
    var number = NUMBER.matcher(cell);
    if (!number.lookingAt()) {
      return -1;
    }
    int mark = number.group().indexOf(layout.text().decimal());
    return mark < 0
        ? 0
        : (int) number.group().chars().skip(mark).filter(Character::isDigit).count();
  }

  private CsvRows csv(List<TextLine> lines, Header header, int fewest, int most) {
    return new CsvRows(lines, header.delimiter(), layout.text().quote(), fewest, most);
  }

  private static int usualWidth(CsvRows csv, int from) {
    var widths = csv.all(from, row -> row.broken().isEmpty() ? row.cells().size() : 0);
    return CsvRows.usualWidth(widths, 1);
  }

  private Optional<Phrase> fault(Header header, Map<String, Integer> positions) {
    boolean named = layout.text().header();
    if (named && header.row().broken().isPresent()) {
      return header.row().broken().map(why -> Phrase.of("FAULT.FIRST_LINE").with("fault", why));
    }
    if (named && layout.areNumbers() && isWeight(header, positions)) {
      return Optional.of(Phrase.of("FAULT.NO_HEADER"));
    }
    var twice = layout.areCompared() ? List.<String>of() : header.twice(layout.texts());
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

  /** Whether a header has a number where the weight of a row stands. */
  private static boolean isWeight(Header header, Map<String, Integer> positions) {
    return Stream.of(Field.NET.id(), Field.GROSS.id())
        .filter(positions::containsKey)
        .anyMatch(column -> NUMBER.matcher(header.row().cell(positions.get(column))).matches());
  }

  /** A notice of a file that another layout may read. */
  private Notice unlike(Header header, Phrase why) {
    return unreadable(path, header.row().line(), why)
        .advising("LAYOUT")
        .quoting(header.row().raw());
  }

  /** A notice of a file that cannot be read; {@code why} ends the sentence about it. */
  static Notice unreadable(String path, int line, Phrase why) {
    return Notice.of(NoticeCode.EXPORT_UNREADABLE, new Place(path, line)).with("fault", why);
  }

  /** A notice of a file or folder that the machine does not let us read. */
  static Notice unopened(String path, String fault) {
    return unreadable(path, 0, Phrase.of(fault)).advising("DRIVE");
  }
}
