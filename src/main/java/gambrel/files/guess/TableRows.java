package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.guess.GuessTable.Row;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Sorts the lines below the header of a table into rows and others, such as totals. */
final class TableRows {
  private final int width;

  /** Whether most rows begin with a number, so that a line that begins with a word is another. */
  private final boolean counted;

  /** The columns that nearly every row fills. */
  private final int[] filled;

  /** The first cells of the rows, which may be tickets. */
  private final Set<String> firsts;

  private final List<Row> rows;
  private final List<CsvRow> others;

  /** Sorts lines of a table with so many columns. */
  TableRows(List<Row> lines, int width) {
    this.width = width;
    var whole = lines.stream().map(Row::csv).filter(this::isWhole).toList();
    long words = whole.stream().filter(TableRows::beginsWithLetter).count();
    this.counted = words * 2 < whole.size();
    var usual = whole.stream().filter(row -> !counted || !beginsWithLetter(row)).toList();
    this.filled = IntStream.range(0, width).filter(i -> isFilled(usual, i)).toArray();
    this.firsts = usual.stream().map(row -> row.cell(0)).collect(Collectors.toSet());
    this.rows = lines.stream().filter(line -> isRow(line.csv())).toList();
    this.others = lines.stream().map(Row::csv).filter(line -> !isRow(line)).toList();
  }

  List<Row> rows() {
    return rows;
  }

  /** The lines that are no rows and not so much like rows that they must not be passed over. */
  List<CsvRow> others() {
    return others.stream().filter(line -> !isLikeARow(line)).toList();
  }

  private boolean isRow(CsvRow line) {
    return isWhole(line)
        && line.broken().isEmpty()
        && (present(line) * 2 > filled.length || cancels(line))
        && !(counted && beginsWithLetter(line) && present(line) < filled.length);
  }

  private boolean isWhole(CsvRow line) {
    return line.cells().size() == width && !TableForm.isRule(line.raw());
  }

  private static boolean isFilled(List<CsvRow> rows, int column) {
    long blank = rows.stream().filter(row -> row.cell(column).isEmpty()).count();
    return blank * 3 < rows.size();
  }

  private long present(CsvRow line) {
    return IntStream.of(filled).filter(i -> !line.cell(i).isEmpty()).count();
  }

  private static boolean beginsWithLetter(CsvRow line) {
    return Character.isLetter(first(line));
  }

  private static char first(CsvRow line) {
    return line.cell(0).isEmpty() ? ' ' : line.cell(0).charAt(0);
  }

  /** Whether a line with few cells is a row that cancels another one, or may name its ticket. */
  private boolean cancels(CsvRow line) {
    boolean names =
        line.cells().stream()
            .skip(1)
            .anyMatch(cell -> ProposedStatus.ticket(cell).filter(firsts::contains).isPresent());
    return (names || GuessWords.mentionsVoid(line.raw()))
        && !line.cell(0).isEmpty()
        && !beginsWithLetter(line);
  }

  private boolean isLikeARow(CsvRow line) {
    if (line.broken().isPresent() || rows.isEmpty()) {
      return true;
    }
    if (TableForm.isRule(line.raw())) {
      return false;
    }
    if (line.cells().size() == width) {
      return present(line) * 3 >= filled.length * 2L;
    }
    return isAlike(line, rows.get(0).csv(), width);
  }

  /** Whether a line has many of the cells of a row, and begins as the row does. */
  static boolean isAlike(CsvRow line, CsvRow row, int width) {
    boolean digits = Character.isDigit(first(line));
    return line.cells().size() * 2 > width
        && digits == Character.isDigit(first(row))
        && (digits || first(line) == first(row));
  }
}
