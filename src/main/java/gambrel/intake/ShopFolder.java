package gambrel.intake;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Phrase;
import gambrel.notice.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** The tables of a shop folder, row by row. */
final class ShopFolder {
  private static final List<Character> DELIMITERS = TextForm.USUAL_DELIMITERS;

  private static final int LONGEST_CELL = 10_000;
  private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\t\r\n]]");

  private final Path folder;
  private final Formats formats;
  private final List<Notice> notices;

  /**
   * A folder to read.
   *
   * @param formats how the shop writes its cells
   * @param notices where everything that is wrong is added
   */
  ShopFolder(Path folder, Formats formats, List<Notice> notices) {
    this.folder = folder;
    this.formats = formats;
    this.notices = notices;
  }

  /**
   * Gives every row of a file to {@code reader}; rows that it refuses are left out with a notice. A
   * missing or empty file has no rows.
   *
   * @throws UnreadableShop if the file is there and cannot be read
   */
  void each(Columns columns, Consumer<Row> reader) {
    eachEvenBroken(columns, row -> readWhole(row, reader));
  }

  /**
   * As {@link #each}, but {@code reader} is also given rows that are broken as text and has to
   * {@link Row#check} them itself.
   */
  void eachEvenBroken(Columns columns, Consumer<Row> reader) {
    if (Files.exists(folder.resolve(columns.file()))) {
      var lines = lines(columns.file());
      Header.find(lines, DELIMITERS, columns.all())
          .filter(header -> isComplete(columns, header))
          .ifPresent(header -> rows(columns, lines, header, reader));
    }
  }

  /**
   * As {@link #each} for a file without which there is no shop.
   *
   * @throws UnreadableShop also if the file or a required column is missing
   */
  void eachVital(Columns columns, Consumer<Row> reader) {
    if (!Files.exists(folder.resolve(columns.file()))) {
      throw new UnreadableShop(columns.file() + " is missing");
    }
    var lines = lines(columns.file());
    var header =
        Header.find(lines, DELIMITERS, columns.all())
            .orElseThrow(() -> new UnreadableShop(columns.file() + " is empty"));
    if (!isComplete(columns, header)) {
      throw new UnreadableShop(columns.file(), complaint(columns, header));
    }
    rows(columns, lines, header, row -> readWhole(row, reader));
  }

  private static void readWhole(Row row, Consumer<Row> reader) {
    row.check();
    reader.accept(row);
  }

  private List<TextLine> lines(String file) {
    try {
      return SteadyFile.of(folder.resolve(file))
          .read(in -> TextLine.read(in, StandardCharsets.UTF_8))
          .orElseThrow(() -> new UnreadableShop(file + " was being written while it was read"));
    } catch (IOException e) {
      throw new UnreadableShop(file + " cannot be read");
    }
  }

  private boolean isComplete(Columns columns, Header header) {
    var place = new Place(columns.file(), header.row().line());
    if (!missing(columns, header).isEmpty()) {
      notices.add(
          Notice.of(NoticeCode.COLUMN_MISSING, place)
              .with("fault", complaint(columns, header))
              .quoting(header.row().raw()));
      return false;
    }
    for (var twice : header.twice(columns.all())) {
      notices.add(
          Notice.of(NoticeCode.SHOP_ROW_BAD, "COLUMN_TWICE", place).with("column", twice));
    }
    return true;
  }

  private static List<String> missing(Columns columns, Header header) {
    return columns.required().stream().filter(c -> !header.names().contains(c)).toList();
  }

  /** A first line that is no header may be about a customer: it is not repeated. */
  private static Phrase complaint(Columns columns, Header header) {
    boolean named = header.names().stream().anyMatch(columns.all()::contains);
    return Phrase.of(named ? "LACKS.NAMED" : "LACKS.UNNAMED")
        .with("expected", missing(columns, header))
        .with("found", named ? header.names() : List.of());
  }

  private void rows(Columns columns, List<TextLine> lines, Header header, Consumer<Row> reader) {
    var cells = formats.forDelimiter(header.delimiter());
    var positions = header.positions();
    for (var csv : new CsvRows(lines, header.delimiter(), 1, header.width()).all(header.next())) {
      if (csv.broken().isPresent() || !csv.isBlankFrom(0)) {
        var place = new Place(columns.file(), csv.line());
        var checked = csv.brokenBy(csv.broken().or(() -> fault(csv, header.width())));
        offer(new Row(place, checked, positions, cells, notices::add), reader);
      }
    }
  }

  private static Optional<Phrase> fault(CsvRow csv, int width) {
    if (!csv.isBlankFrom(width)) {
      return Optional.of(Phrase.of("FAULT.MORE_CELLS"));
    }
    if (csv.cells().stream().anyMatch(cell -> cell.length() > LONGEST_CELL)) {
      return Optional.of(Phrase.of("FAULT.LONG").with("most", LONGEST_CELL));
    }
    return csv.cells().stream().anyMatch(cell -> CONTROL.matcher(cell).find())
        ? Optional.of(Phrase.of("FAULT.CONTROL"))
        : Optional.empty();
  }

  private void offer(Row row, Consumer<Row> reader) {
    try {
      reader.accept(row);
    } catch (RowRefused e) {
      notices.add(e.notice());
    }
  }
}
