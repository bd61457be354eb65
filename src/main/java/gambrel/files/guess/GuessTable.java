package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.Header;
import gambrel.files.csv.TextLine;
import gambrel.files.layout.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The beginning of an unknown export as a table. Its delimiter is the one by which most lines have
 * the same number of cells; the first such line is its header unless it holds figures.
 *
 * @param delimiter the character between cells
 * @param skip number of lines before the table
 * @param header whether its first line names columns
 * @param columns its columns
 * @param odd lines after the header that are not like the others
 */
record GuessTable(
    char delimiter, int skip, boolean header, List<Column> columns, List<String> odd) {
  /** Of two with as many lines the first is taken: a comma may also be a decimal mark. */
  private static final List<Character> DELIMITERS = List.of(';', '\t', '|', ',');

  private static final int MOST_COLUMNS = 60;
  private static final Pattern FIGURE = Pattern.compile("[+-]?\\d+|[+-]?\\d.*\\d.*|[](].*\\d.*");

  /**
   * One column.
   *
   * @param number from 1
   * @param header its text in the header, or empty
   * @param values its cells that are not blank
   */
  record Column(int number, String header, List<String> values) {
    /** Its name or number in a layout. */
    String reference() {
      return header.isEmpty() ? Integer.toString(number) : header;
    }
  }

  /** The table at the beginning of {@code lines}; without columns if there is none. */
  static GuessTable of(List<TextLine> lines) {
    var best = new GuessTable(',', 0, false, List.of(), List.of());
    long most = 0;
    for (char delimiter : DELIMITERS) {
      var rows = new CsvRows(lines, delimiter, 1, Integer.MAX_VALUE).all(0);
      int width = CsvRows.usualWidth(rows.stream().map(row -> row.cells().size()).toList(), 2);
      long fitting = rows.stream().filter(row -> row.cells().size() == width).count();
      if (fitting > most) {
        most = fitting;
        best = of(rows, delimiter, width);
      }
    }
    return best;
  }

  private static GuessTable of(List<CsvRow> rows, char delimiter, int width) {
    int first = 0;
    while (rows.get(first).cells().size() != width) {
      first++;
    }
    var top = rows.get(first);
    boolean header = top.cells().stream().noneMatch(c -> FIGURE.matcher(c.strip()).matches());
    var rest = rows.subList(header ? first + 1 : first, rows.size());
    boolean counted = isCounted(rest, width);
    var body = new ArrayList<CsvRow>();
    var odd = new ArrayList<String>();
    for (var row : rest) {
      boolean whole = row.cells().size() == width && row.broken().isEmpty();
      if (whole && !(counted && beginsWithLetter(row))) {
        body.add(row);
      } else {
        odd.add(row.raw());
      }
    }
    var columns = new ArrayList<Column>();
    for (int i = 0; i < Math.min(width, MOST_COLUMNS); i++) {
      int at = i;
      var values = body.stream().map(row -> row.cell(at)).filter(text -> !text.isEmpty()).toList();
      columns.add(new Column(i + 1, header ? text(top, i, width) : "", values));
    }
    return new GuessTable(delimiter, top.line() - 1, header, columns, odd);
  }

  /** Whether most rows begin with a figure: a line that begins with a word is then no row. */
  private static boolean isCounted(List<CsvRow> rows, int width) {
    var whole = rows.stream().filter(row -> row.cells().size() == width).toList();
    long words = whole.stream().filter(GuessTable::beginsWithLetter).count();
    return words * 2 < whole.size();
  }

  private static boolean beginsWithLetter(CsvRow row) {
    String cell = row.cell(0);
    return !cell.isEmpty() && Character.isLetter(cell.charAt(0));
  }

  /** The header text of a column; empty if it runs over two lines or another column has it, too. */
  private static String text(CsvRow top, int at, int width) {
    String text = top.cell(at);
    for (int other = 0; other < width; other++) {
      if (other != at && Header.name(top.cell(other)).equals(Header.name(text))) {
        return "";
      }
    }
    boolean usable = !Layout.isNumber(text) && text.chars().noneMatch(Character::isISOControl);
    return usable ? text : "";
  }
}
