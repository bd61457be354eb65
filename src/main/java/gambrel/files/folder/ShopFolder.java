package gambrel.files.folder;

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
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Reads the tables of a shop folder row by row.
 *
 * @param types how the shop writes its cells
 * @param notices receives a notice for all that is wrong
 * @param unread receives the rows that cannot be read
 */
record ShopFolder(Path folder, CellTypes types, List<Notice> notices, List<ShopRow> unread) {
  /** The one table that must be there. */
  private static final String BODIES = "bodies.csv";

  /** The tables of which legible cells are read even in a row that is broken as text. */
  private static final Set<String> EVEN_BROKEN = Set.of(BODIES, "customers.csv", "batches.csv");

  private static final int LONGEST_CELL = 10_000;
  private static final char REPLACED = '\uFFFD';
  private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\t\r\n]]");

  /**
   * A table of the folder.
   *
   * @param file its name
   * @param required the columns that it must have
   * @param columns all columns that it may have
   */
  record Table(String file, List<String> required, List<String> columns) {
    /** A table with these columns, their names with blanks between them. */
    static Table of(String file, String required, String optional) {
      return new Table(
          file,
          List.of(required.split(" ")),
          List.of((required + ' ' + optional).strip().split(" ")));
    }

    private NameComparison names(Header header) {
      return new NameComparison(header.names(), columns);
    }
  }

  /**
   * The results of {@code reader} for each row of a table, in file order; rows that it refuses are
   * left out with a notice. A missing or empty file has no rows; a line that begins with # and a
   * blank is a comment.
   *
   * @throws UnreadableShop if the file is there and cannot be read
   */
  <T> List<T> list(Table table, Function<ShopRow, T> reader) {
    var values = new ArrayList<T>();
    each(
        table,
        row -> {
          var value = reader.apply(row);
          if (!row.isLeftOut()) {
            values.add(value);
          }
        });
    return values;
  }

  /** As {@link #list}, by the id in the first required column, which no two rows may share. */
  <T> Map<String, T> byId(Table table, BiFunction<String, ShopRow, T> reader) {
    var values = new LinkedHashMap<String, T>();
    each(
        table,
        row -> {
          String column = table.required().get(0);
          String id = row.need(column, CellTypes::id);
          if (values.putIfAbsent(id, reader.apply(id, row)) != null) {
            throw row.leaveOut(row.cell(Notice.of(NoticeCode.ID_TWICE, row.place()), column));
          }
        });
    return values;
  }

  /**
   * Calls {@code reader} for the rows of a table, as {@link #list} does.
   *
   * @throws UnreadableShop also if {@code bodies.csv} is missing or empty
   */
  void each(Table table, Consumer<ShopRow> reader) {
    String file = table.file();
    boolean isThere = isThere(folder, file);
    var all =
        isThere
            ? lines(folder, file)
                .orElseThrow(
                    () -> new UnreadableShop(file + " was being written while it was read"))
            : List.<TextLine>of();
    var lines = all.stream().dropWhile(line -> line.isBlank() || isComment(line.text())).toList();
    var header = Header.find(lines, TextForm.PLAIN, found -> table.names(found).positions().size());
    if (file.equals(BODIES) && header.isEmpty()) {
      throw new UnreadableShop(file + (isThere ? " is empty" : " is missing"));
    }
    header.ifPresent(
        found ->
            rows(table, lines, found).forEach(row -> row.read(reader, EVEN_BROKEN.contains(file))));
  }

  /** Whether a line or its first cell begins a comment: with # and a blank. */
  private static boolean isComment(String text) {
    return text.startsWith("# ") || text.equals("#");
  }

  /** Adds a notice. */
  void add(Notice notice) {
    notices.add(notice);
  }

  /** Whether a file is there, even as a link to nothing. */
  static boolean isThere(Path folder, String file) {
    return Files.exists(folder.resolve(file), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * The lines of a file, which is UTF-8; empty if it was being written.
   *
   * @throws UnreadableShop if it cannot be read
   */
  static Optional<List<TextLine>> lines(Path folder, String file) {
    try {
      return SteadyFile.read(
          folder.resolve(file),
          Files::newInputStream,
          in -> TextLine.read(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UnreadableShop(file, Phrase.of("FAULT.UNREADABLE"));
    }
  }

  /** The index of each column; empty, with a notice, if a required one is missing. */
  private Map<String, Integer> positions(Table table, Header header) {
    var names = table.names(header);
    var place = new Place(table.file(), header.row().line());
    // A first line that names no column may hold a customer's data, and is not quoted.
    boolean named = !names.positions().isEmpty();
    if (named) {
      names.report(name -> place, notices::add);
    }
    var missing = new ArrayList<>(table.required());
    missing.removeAll(names.positions().keySet());
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

  private List<ShopRow> rows(Table table, List<TextLine> lines, Header header) {
    var positions = positions(table, header);
    if (positions.isEmpty()) {
      return List.of();
    }
    var cells = types.forDelimiter(header.delimiter());
    return new CsvRows(lines, header.delimiter(), 1, header.width())
        .all(header.next()).stream()
            .filter(row -> !isComment(row.cell(0)))
            .filter(row -> row.broken().isPresent() || !row.isBlankFrom(0))
            .map(
                row -> {
                  boolean overfull = !row.isBlankFrom(header.width());
                  var broken = row.broken().map(ShopFolder::ofTable);
                  var checked = row.brokenBy(broken.or(() -> fault(row, overfull)));
                  var place = new Place(table.file(), row.line());
                  return new ShopRow(this, place, checked, overfull, positions, cells);
                })
            .toList();
  }

  /** A table has no other character set than UTF-8, which a fault of one has to say. */
  private static Phrase ofTable(Phrase fault) {
    return fault.key().equals("FAULT.CHARSET") ? Phrase.of("FAULT.NOT_UTF8") : fault;
  }

  private static Optional<Phrase> fault(CsvRow row, boolean overfull) {
    if (overfull) {
      return Optional.of(Phrase.of("FAULT.MORE_CELLS"));
    }
    if (row.cells().stream().anyMatch(cell -> cell.length() > LONGEST_CELL)) {
      return Optional.of(Phrase.of("FAULT.LONG").with("most", LONGEST_CELL));
    }
    return row.cells().stream().allMatch(ShopFolder::isLegible)
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
