package gambrel.files.folder;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.Header;
import gambrel.files.csv.SteadyFile;
import gambrel.files.csv.TextForm;
import gambrel.files.csv.TextLine;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Reads the tables of a shop folder row by row. */
final class ShopFolder {
  private static final int LONGEST_CELL = 10_000;
  private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\t\r\n]]");

  private final Path folder;
  private final CellTypes types;
  private final List<Notice> notices;

  /**
   * The tables of a folder.
   *
   * @param types how the shop writes its cells
   * @param notices receives a notice for all that is wrong
   */
  ShopFolder(Path folder, CellTypes types, List<Notice> notices) {
    this.folder = folder;
    this.types = types;
    this.notices = notices;
  }

  /**
   * The results of {@code reader} for each row of a file, in file order; rows that it refuses are
   * left out with a notice. A missing or empty file has no rows.
   *
   * @throws UnreadableShop if the file is there and cannot be read
   */
  <T> List<T> list(FileColumns columns, Function<ShopRow, T> reader) {
    var values = new ArrayList<T>();
    each(columns, row -> values.add(reader.apply(row)));
    return values;
  }

  /** As {@link #list}, by the id in the first required column, which no two rows may share. */
  <T> SortedMap<String, T> byId(FileColumns columns, BiFunction<String, ShopRow, T> reader) {
    var values = new TreeMap<String, T>();
    each(columns, row -> add(values, columns, row, reader));
    return values;
  }

  /**
   * As {@link #byId} for a file that a shop must have.
   *
   * @throws UnreadableShop also if the file or a required column is missing
   */
  <T> SortedMap<String, T> byIdVital(FileColumns columns, BiFunction<String, ShopRow, T> reader) {
    String file = columns.file();
    if (!Files.exists(folder.resolve(file))) {
      throw new UnreadableShop(file + " is missing");
    }
    var header =
        header(columns, lines(file)).orElseThrow(() -> new UnreadableShop(file + " is empty"));
    if (!missing(columns, header).isEmpty()) {
      throw new UnreadableShop(file, complaint(columns, header));
    }
    return byId(columns, reader);
  }

  private static <T> void add(
      Map<String, T> values,
      FileColumns columns,
      ShopRow row,
      BiFunction<String, ShopRow, T> reader) {
    String id = row.newId(columns.required().get(0), values.keySet());
    values.put(id, reader.apply(id, row));
  }

  /** Calls {@code reader} for the rows of a file, as {@link #list} does. */
  void each(FileColumns columns, Consumer<ShopRow> reader) {
    eachEvenBroken(columns, row -> reader.accept(row.checked()));
  }

  /**
   * As {@link #each}, but also calls {@code reader} for rows that are broken as text; it must check
   * them itself.
   */
  void eachEvenBroken(FileColumns columns, Consumer<ShopRow> reader) {
    if (Files.exists(folder.resolve(columns.file()))) {
      var lines = lines(columns.file());
      header(columns, lines)
          .filter(header -> isComplete(columns, header))
          .ifPresent(header -> rows(columns, lines, header, reader));
    }
  }

  private static Optional<Header> header(FileColumns columns, List<TextLine> lines) {
    return Header.find(lines, TextForm.PLAIN, header -> header.count(columns.all()));
  }

  private List<TextLine> lines(String file) {
    try {
      return SteadyFile.read(
              folder.resolve(file),
              Files::newInputStream,
              in -> TextLine.read(in, StandardCharsets.UTF_8))
          .orElseThrow(() -> new UnreadableShop(file + " was being written while it was read"));
    } catch (IOException e) {
      throw new UnreadableShop(file + " cannot be read");
    }
  }

  private boolean isComplete(FileColumns columns, Header header) {
    var place = new Place(columns.file(), header.row().line());
    if (!missing(columns, header).isEmpty()) {
      notices.add(
          Notice.of(NoticeCode.COLUMN_MISSING, place)
              .with("fault", complaint(columns, header))
              .quoting(header.row().raw()));
      return false;
    }
    for (var twice : header.twice(columns.all())) {
      notices.add(Notice.of(NoticeCode.SHOP_ROW_BAD, "COLUMN_TWICE", place).with("column", twice));
    }
    return true;
  }

  private static List<String> missing(FileColumns columns, Header header) {
    return columns.required().stream().filter(c -> !header.names().contains(c)).toList();
  }

  /** Quotes the first line only if it is a header: else it may hold a customer's data. */
  private static Phrase complaint(FileColumns columns, Header header) {
    boolean named = header.names().stream().anyMatch(columns.all()::contains);
    return Phrase.of(named ? "LACKS.NAMED" : "LACKS.UNNAMED")
        .with("expected", missing(columns, header))
        .with("found", named ? header.names() : List.of());
  }

  private void rows(
      FileColumns columns, List<TextLine> lines, Header header, Consumer<ShopRow> reader) {
    var cells = types.forDelimiter(header.delimiter());
    var positions = header.positions();
    for (var csv : new CsvRows(lines, header.delimiter(), 1, header.width()).all(header.next())) {
      if (csv.broken().isPresent() || !csv.isBlankFrom(0)) {
        var place = new Place(columns.file(), csv.line());
        var checked = csv.brokenBy(csv.broken().or(() -> fault(csv, header.width())));
        try {
          reader.accept(new ShopRow(place, checked, positions, cells, notices::add));
        } catch (ShopRow.RowRefused e) {
          notices.add(e.notice);
        }
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
}
