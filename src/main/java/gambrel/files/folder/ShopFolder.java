package gambrel.files.folder;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.Header;
import gambrel.files.csv.NameComparison;
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
  private static final char REPLACED = '\uFFFD';
  private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\t\r\n]]");

  private final Path folder;
  private final CellTypes types;
  private final List<Notice> notices;
  private final List<ShopRow> unread = new ArrayList<>();

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

  /** As {@link #byId}, but cells of rows that are broken as text are read all the same. */
  <T> SortedMap<String, T> byIdEvenBroken(
      FileColumns columns, BiFunction<String, ShopRow, T> reader) {
    var values = new TreeMap<String, T>();
    eachEvenBroken(columns, row -> add(values, columns, row.evenBroken(), reader));
    return values;
  }

  /** Refuses a folder without a file, or with an empty one. */
  void need(FileColumns columns) {
    String file = columns.file();
    if (!isThere(file)) {
      throw new UnreadableShop(file + " is missing");
    }
    if (header(columns, lines(file)).isEmpty()) {
      throw new UnreadableShop(file + " is empty");
    }
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

  private void eachEvenBroken(FileColumns columns, Consumer<ShopRow> reader) {
    if (isThere(columns.file())) {
      var lines = lines(columns.file());
      header(columns, lines).ifPresent(header -> rows(columns, lines, header, reader));
    }
  }

  /** The rows that cannot be read, of the files that were read so far. */
  List<ShopRow> unread() {
    return unread;
  }

  /** Adds a row that cannot be read. */
  void addUnread(ShopRow row) {
    unread.add(row);
  }

  /** Adds a notice. */
  void add(Notice notice) {
    notices.add(notice);
  }

  /** Whether a file is there, even as a link to nothing. */
  private boolean isThere(String file) {
    return Files.exists(folder.resolve(file), NOFOLLOW_LINKS);
  }

  private static Optional<Header> header(FileColumns columns, List<TextLine> lines) {
    return Header.find(lines, TextForm.PLAIN, header -> names(columns, header).positions().size());
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

  private static NameComparison names(FileColumns columns, Header header) {
    return new NameComparison(header.names(), columns.all());
  }

  /** The index of each column; empty, with a notice, if a required one is missing. */
  private Map<String, Integer> positions(FileColumns columns, Header header) {
    var names = names(columns, header);
    var place = new Place(columns.file(), header.row().line());
    var missing =
        columns.required().stream().filter(c -> !names.positions().containsKey(c)).toList();
    // A first line that names no column may hold a customer's data, and is not quoted.
    boolean named = !names.positions().isEmpty();
    if (named) {
      names.report(name -> place, notices::add);
    }
    if (missing.isEmpty()) {
      return names.positions();
    }
    notices.add(
        Notice.of(NoticeCode.COLUMN_MISSING, named ? "NAMED" : "UNNAMED", place)
            .with("expected", missing)
            .with("found", named ? header.names() : List.of())
            .quoting(named ? header.row().raw() : ""));
    return Map.of();
  }

  private void rows(
      FileColumns columns, List<TextLine> lines, Header header, Consumer<ShopRow> reader) {
    var cells = types.forDelimiter(header.delimiter());
    var positions = positions(columns, header);
    var csv = new CsvRows(lines, header.delimiter(), 1, header.width());
    if (!positions.isEmpty()) {
      csv.all(
          header.next(),
          found -> {
            boolean overfull = !found.isBlankFrom(header.width());
            if (found.broken().isPresent() || !found.isBlankFrom(0)) {
              var checked = found.brokenBy(found.broken().or(() -> fault(found, overfull)));
              var place = new Place(columns.file(), found.line());
              read(new ShopRow(place, checked, overfull, positions, cells, this), reader);
            }
            return found.line();
          });
    }
  }

  private static void read(ShopRow row, Consumer<ShopRow> reader) {
    try {
      reader.accept(row);
    } catch (ShopRow.RowRefused e) {
      row.refused(e);
    }
  }

  private static Optional<Phrase> fault(CsvRow csv, boolean overfull) {
    if (overfull) {
      return Optional.of(Phrase.of("FAULT.MORE_CELLS"));
    }
    if (csv.cells().stream().anyMatch(cell -> cell.length() > LONGEST_CELL)) {
      return Optional.of(Phrase.of("FAULT.LONG").with("most", LONGEST_CELL));
    }
    return csv.cells().stream().allMatch(ShopFolder::isLegible)
        ? Optional.empty()
        : Optional.of(Phrase.of("FAULT.CONTROL"));
  }

  /** Whether a cell could be decoded and is not too long. */
  static boolean isLegible(String cell) {
    return cell.length() <= LONGEST_CELL
        && cell.indexOf(REPLACED) < 0
        && !CONTROL.matcher(cell).find();
  }
}
