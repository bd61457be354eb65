package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.Header;
import gambrel.files.csv.TextLine;
import gambrel.files.layout.LayoutColumns;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * The beginning of an unknown export as a table: the delimiter by which most lines fall into the
 * same number of cells, and the first such line as its header unless it holds figures itself.
 *
 * @param delimiter what stands between cells
 * @param skip number of lines before the table
 * @param header whether its first line names columns
 * @param columns its columns
 * @param odd lines after the header that do not look like the others
 */
record GuessTable(
    char delimiter, int skip, boolean header, List<Column> columns, List<String> odd) {
  /** Of two that do equally well the first: a comma may as well be a decimal mark. */
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
    /** How a layout names it. */
    String reference() {
      return header.isEmpty() ? Integer.toString(number) : header;
    }
  }

  /** The table that {@code lines} begin with; without columns if there is none. */
  static GuessTable of(List<TextLine> lines) {
    GuessTable best = null;
    int most = 0;
    for (char delimiter : DELIMITERS) {
      var rows = new CsvRows(lines, delimiter, 1, Integer.MAX_VALUE).all(0);
      int width = usualWidth(rows);
      int fitting = (int) rows.stream().filter(row -> row.cells().size() == width).count();
      if (width > 1 && fitting > most) {
        most = fitting;
        best = of(rows, delimiter, width);
      }
    }
    return best == null ? new GuessTable(',', 0, false, List.of(), List.of()) : best;
  }

  private static int usualWidth(List<CsvRow> rows) {
    var counts = new TreeMap<Integer, Integer>();
    rows.forEach(row -> counts.merge(row.cells().size(), 1, Integer::sum));
    return counts.entrySet().stream()
        .filter(entry -> entry.getKey() > 1)
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(1);
  }

  private static GuessTable of(List<CsvRow> rows, char delimiter, int width) {
    int first = 0;
    while (rows.get(first).cells().size() != width) {
      first++;
    }
    var top = rows.get(first);
    boolean header = top.cells().stream().noneMatch(c -> FIGURE.matcher(c.strip()).matches());
    boolean counted = isCounted(rows.subList(header ? first + 1 : first, rows.size()), width);
    var body = new ArrayList<CsvRow>();
    var odd = new ArrayList<String>();
    for (var row : rows.subList(header ? first + 1 : first, rows.size())) {
      boolean whole = row.cells().size() == width && row.broken().isEmpty();
      if (whole && !(counted && beginsWithLetter(row))) {
        body.add(row);
      } else {
        odd.add(row.raw());
      }
    }
    var columns = new ArrayList<Column>();
    for (int i = 0; i < Math.min(width, MOST_COLUMNS); i++) {
      columns.add(new Column(i + 1, header ? text(top, i, width) : "", values(body, i)));
    }
    return new GuessTable(delimiter, top.line() - 1, header, columns, odd);
  }

  /** Where rows begin with a figure, a line that begins with a word is a total or a page head. */
  private static boolean isCounted(List<CsvRow> rows, int width) {
    var whole = rows.stream().filter(row -> row.cells().size() == width).toList();
    long words = whole.stream().filter(GuessTable::beginsWithLetter).count();
    return words * 2 < whole.size();
  }

  private static boolean beginsWithLetter(CsvRow row) {
    String cell = row.cell(0);
    return !cell.isEmpty() && Character.isLetter(cell.charAt(0));
  }

  /** A header text that stands there twice, or over two lines, names nothing. */
  private static String text(CsvRow top, int at, int width) {
    String text = top.cell(at);
    for (int other = 0; other < width; other++) {
      if (other != at && Header.name(top.cell(other)).equals(Header.name(text))) {
        return "";
      }
    }
    boolean usable =
        !LayoutColumns.isNumber(text) && text.chars().noneMatch(Character::isISOControl);
    return usable ? text : "";
  }

  private static List<String> values(List<CsvRow> rows, int at) {
    return rows.stream().map(row -> row.cell(at)).filter(text -> !text.isEmpty()).toList();
  }
}
