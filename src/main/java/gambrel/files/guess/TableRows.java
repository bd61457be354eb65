package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.guess.GuessTable.Row;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Sorts the lines below the header of a table into rows and others, such as totals. A row fills
 * most of the columns that most lines fill, each with a cell of the kind that most lines have
 * there.
 */
final class TableRows {
  private final int width;

  /** The lines with as many cells as the table has columns. */
  private final List<CsvRow> whole;

  /** The columns that most lines fill. */
  private final List<Integer> filled;

  /** Those in which most cells have figures. */
  private final List<Integer> figures;

  /** Those in which most cells have letters. */
  private final List<Integer> letters;

  private final List<Row> lines;

  /** Sorts lines of a table with so many columns. */
  TableRows(List<Row> lines, int width) {
    this.lines = lines;
    this.width = width;
    this.whole = lines.stream().map(Row::csv).filter(this::isWhole).toList();
    this.filled =
        IntStream.range(0, width).filter(i -> cells(i).size() * 2 > whole.size()).boxed().toList();
    this.figures = filled.stream().filter(i -> isOfMost(i, TableRows::hasFigures)).toList();
    this.letters = filled.stream().filter(i -> isOfMost(i, TableRows::hasLetters)).toList();
  }

  private boolean isWhole(CsvRow line) {
    return line.cells().size() == width && !TableForm.isRule(line.raw());
  }

  private List<String> cells(int column) {
    return whole.stream().map(row -> row.cell(column)).filter(cell -> !cell.isEmpty()).toList();
  }

  private boolean isOfMost(int column, Predicate<String> kind) {
    return cells(column).stream().filter(kind).count() * 2 > cells(column).size();
  }

  private static boolean hasFigures(String text) {
    return text.chars().anyMatch(Character::isDigit);
  }

  private static boolean hasLetters(String text) {
    return text.chars().anyMatch(Character::isLetter);
  }

  List<Row> rows() {
    return lines.stream().filter(line -> isRow(line.csv())).toList();
  }

  /** The lines that are no rows and not so much like rows that they must not be passed over. */
  List<CsvRow> others() {
    return lines.stream().map(Row::csv).filter(line -> !isRow(line) && !isLikeARow(line)).toList();
  }

  private boolean isRow(CsvRow line) {
    return isWhole(line) && line.broken().isEmpty() && (isLikeARow(line) || cancels(line));
  }

  /** Whether a line must not be passed over: it has many of the cells of a row. */
  boolean isLikeARow(CsvRow line) {
    long fitting = filled.stream().filter(i -> fits(line, i)).count();
    return line.broken().isPresent()
        || filled.isEmpty()
        || hasFigures(line.raw()) && fitting * 2 > filled.size();
  }

  private boolean fits(CsvRow line, int column) {
    String cell = line.cell(column);
    return !cell.isEmpty()
        && (hasFigures(cell) || !figures.contains(column))
        && (!hasLetters(cell) || letters.contains(column));
  }

  /**
   * Whether a line with few cells is a row that cancels another one: it says so, names the number
   * of another row, or has the number that is missing between two.
   */
  private boolean cancels(CsvRow line) {
    return filled.contains(0) && fits(line, 0) && GuessWords.mentionsVoid(line.raw())
        || filled.stream().anyMatch(i -> fits(line, i) && isOneOf(i, line));
  }

  /** Whether a line has a number in a column of numbers of rows, and names another one. */
  private boolean isOneOf(int numbers, CsvRow line) {
    var others = cells(numbers).stream().filter(cell -> !cell.equals(line.cell(numbers))).toList();
    boolean isCounting = GuessFields.isCounting(cells(numbers));
    boolean names =
        IntStream.range(numbers + 1, width)
            .anyMatch(
                i ->
                    ProposedStatus.ticket(line.cell(i)).filter(others::contains).isPresent()
                        || !filled.contains(i) && others.contains(line.cell(i)));
    return (isCounting || numbers == 0) && names || isCounting && isBetween(line, numbers);
  }

  private boolean isBetween(CsvRow line, int numbers) {
    var rows = whole.stream().map(row -> number(row.cell(numbers))).toList();
    int at = whole.indexOf(line);
    return at > 0
        && at < rows.size() - 1
        && rows.get(at - 1) + 1 == rows.get(at)
        && rows.get(at) + 1 == rows.get(at + 1);
  }

  private static long number(String cell) {
    String digits = cell.replaceAll("\\D", "");
    return digits.isEmpty() || digits.length() > 9 ? 0 : Long.parseLong(digits);
  }
}
