package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.Header;
import gambrel.files.csv.TextForm;
import gambrel.files.csv.TextLine;
import gambrel.files.export.CountedLines;
import gambrel.files.guess.ExportSample.SampleFile;
import gambrel.files.layout.Layout;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The exports of a folder as a table. The first line with as many cells as it has columns is its
 * header unless it holds figures.
 *
 * @param form how its lines are parted into cells
 * @param skip number of lines before the table
 * @param header whether this line names columns
 * @param repeated whether it stands again between rows
 * @param columns its columns
 * @param heads what lines above the rows, and the names of the files, give all rows below them
 * @param rows its rows
 * @param ignored the lines that are no rows
 * @param unlike files whose first line is another
 */
record GuessTable(
    TableForm form,
    int skip,
    boolean header,
    boolean repeated,
    List<Column> columns,
    List<Column> heads,
    List<Row> rows,
    List<Ignored> ignored,
    List<String> unlike) {
  private static final int MOST_COLUMNS = 60;

  /** A label before a value. */
  private static final Pattern IN_CELL = Pattern.compile("(\\p{L}{1,12})[:=].+");

  /** A label alone. */
  private static final Pattern BEFORE = Pattern.compile("(\\p{L}{1,12})[:=]");

  /**
   * A line that is no row.
   *
   * @param raw the line
   * @param expression a regular expression that finds it at its beginning, and no row
   */
  record Ignored(String raw, String expression) {}

  /**
   * One column, or what a line above the rows or the name of the file gives.
   *
   * @param number from 1
   * @param header its text in the header, or the first word of the lines above the rows, or empty
   * @param label what stands before its value in every row, such as {@code N:}, or empty
   * @param unit the unit in the line below the header, or empty
   * @param cells its cells, row by row
   * @param above the expression of the lines that give it; {@link #NAME} for the name of the file;
   *     empty if it is a column
   */
  record Column(
      int number, String header, String label, String unit, List<String> cells, String above) {
    static final String NAME = "name";

    /** The words that say what it is: its header, else its label. */
    String title() {
      return header.isEmpty() ? label : header;
    }

    /** The line of a layout that makes it a field. */
    String line(String field) {
      return above.isEmpty()
          ? "column."
              + field
              + '='
              + (header.isEmpty() ? "" + number : header.replace("\\", "\\\\"))
          : isName() ? "constant." + field + '=' + NAME : "above." + field + '=' + above;
    }

    /** Whether the name of the file gives it. */
    boolean isName() {
      return above.equals(NAME);
    }

    /** Its name or number in a sentence. */
    String name() {
      String place = "column " + number + (label.isEmpty() ? "" : " (" + label + ')');
      return header.isEmpty() ? place : '"' + header + '"';
    }

    /** Its cells that hold figures, if others are few, such as dashes for no weight. */
    List<String> figures() {
      var figures = values().stream().filter(value -> value.matches(".*\\d.*")).toList();
      return figures.size() * 4 > values().size() * 3 ? figures : values();
    }

    /** Its cells that are not blank. */
    List<String> values() {
      return cells.stream().filter(cell -> !cell.isEmpty()).toList();
    }
  }

  /** A row and its file. */
  record Row(String file, CsvRow csv) {}

  /**
   * The table of some files; without columns if there is none.
   *
   * @param layout how they are read, if that is saved
   */
  static GuessTable of(List<SampleFile> exports, Optional<Layout> layout) {
    var known = layout.map(Layout::text);
    var files =
        exports.stream()
            .map(file -> known.map(form -> counted(file, form)).orElse(file))
            .filter(file -> !file.lines().stream().allMatch(TextLine::isBlank))
            .toList();
    var form =
        files.isEmpty()
            ? new TableForm(',', TextForm.DOUBLE_QUOTE, 0, 0)
            : TableForm.of(files, layout);
    if (form.width() == 0) {
      return new GuessTable(
          form, 0, false, false, List.of(), List.of(), List.of(), List.of(), List.of());
    }
    var first = form.rows(files.get(0));
    int at = known.isPresent() ? 0 : top(first, form.width());
    var top = first.get(at);
    boolean header =
        known
            .map(TextForm::header)
            .orElseGet(() -> top.cells().stream().noneMatch(TableForm::isFigure));
    if (!header) {
      var below = first.stream().skip(at).map(row -> new Row("", row)).toList();
      var like = new TableRows(below, form.width());
      while (at > 0 && like.isLikeARow(first.get(at - 1))) {
        at--;
      }
    }
    // A file without the lines above may come later: where no header tells, nothing is skipped.
    int start = header ? at + 1 : 0;
    int skip = header ? first.get(at).line() - 1 : 0;
    var found = new ArrayList<Row>();
    var unlike = new ArrayList<String>();
    var before = new HashSet<String>();
    for (var file : files) {
      var all = form.rows(file);
      if (all.size() < start || header && !all.get(start - 1).cells().equals(top.cells())) {
        unlike.add(file.path());
      } else {
        // Rows with which it goes on from another file tell nothing, and go back in all that
        // counts.
        all.stream()
            .skip(start)
            .dropWhile(row -> before.contains(row.raw()))
            .forEach(row -> found.add(new Row(file.path(), row)));
        all.forEach(row -> before.add(row.raw()));
      }
    }
    boolean repeated = header && found.removeIf(row -> row.csv().cells().equals(top.cells()));
    var sorted = new TableRows(found, form.width());
    var rows = sorted.rows();
    var lines = rows.stream().map(row -> row.csv().raw()).collect(Collectors.toList());
    if (header) {
      lines.add(top.raw());
    }
    var others = sorted.others();
    var ignored =
        others.stream()
            .map(CsvRow::raw)
            .flatMap(raw -> expression(raw, lines).stream().map(e -> new Ignored(raw, e)))
            .toList();
    return new GuessTable(
        form,
        skip,
        header,
        repeated,
        IntStream.range(0, Math.min(form.width(), MOST_COLUMNS))
            .mapToObj(
                i ->
                    new Column(
                        i + 1,
                        header ? name(top, i) : "",
                        header ? "" : label(rows, i),
                        others.stream()
                            .filter(row -> row.cells().stream().noneMatch(TableForm::isFigure))
                            .map(row -> row.cell(i))
                            .filter(GuessWords::isUnit)
                            .findFirst()
                            .orElse(""),
                        rows.stream().map(row -> row.csv().cell(i)).toList(),
                        ""))
            .toList(),
        new LinesAbove(exports, rows).heads(header ? top.raw() : ""),
        rows,
        ignored,
        unlike);
  }

  private static SampleFile counted(SampleFile file, TextForm form) {
    return new SampleFile(file.path(), CountedLines.of(file.lines(), form).lines());
  }

  /** Its columns as the header of a file. */
  Header top() {
    var names = columns.stream().map(Column::header).toList();
    // No column is beyond them, as one may be behind the first line of a file.
    return new Header(',', names, null, 0);
  }

  /**
   * An expression for lines that are no rows: their beginning up to a word that no line of the
   * table has, else all such words, else the whole line; empty if it would find such a line.
   */
  private static Optional<String> expression(String raw, List<String> table) {
    var words = List.of(raw.replaceFirst("^[^\\p{L}]+", "").split("[^\\p{L}]+"));
    var own =
        words.stream()
            .filter(word -> table.stream().noneMatch(line -> line.contains(word)))
            .toList();
    String expression =
        own.isEmpty()
            ? LinesAbove.whole(raw)
            : own.get(0).equals(words.get(0))
                ? LinesAbove.expression(raw)
                : ".*" + String.join(".*", own);
    var pattern = Pattern.compile("^\\s*(" + expression + ')');
    return Optional.of(expression)
        .filter(e -> table.stream().noneMatch(line -> pattern.matcher(line).find()));
  }

  /**
   * The index of the first line of the table. A line of which most cells are blank is a title, such
   * as spreadsheets write.
   */
  private static int top(List<CsvRow> all, int width) {
    var fitting = all.stream().filter(row -> row.cells().size() == width).toList();
    var unruled = fitting.stream().filter(row -> !TableForm.isRule(row.raw())).toList();
    var whole = unruled.isEmpty() ? fitting : unruled;
    var counts = whole.stream().map(GuessTable::texts).sorted().toList();
    long usual = counts.get(counts.size() / 2);
    return all.indexOf(whole.stream().filter(r -> texts(r) * 2 > usual).findFirst().get());
  }

  private static long texts(CsvRow row) {
    return row.cells().stream().filter(cell -> !cell.isBlank()).count();
  }

  /** The label of a column: at the beginning of its cells, or alone in the column before it. */
  private static String label(List<Row> rows, int column) {
    String own = label(rows, column, IN_CELL);
    return own.isEmpty() && column > 0 ? label(rows, column - 1, BEFORE) : own;
  }

  /** The label that all cells of a column have in a form; empty if they have none or several. */
  private static String label(List<Row> rows, int column, Pattern form) {
    var labels =
        rows.stream()
            .map(row -> form.matcher(row.csv().cell(column)))
            .map(cell -> cell.matches() ? cell.group(1) + ':' : "")
            .distinct()
            .limit(2)
            .toList();
    return labels.size() == 1 ? labels.get(0) : "";
  }

  /** The header text of a column; empty if it runs over lines or another column has it, too. */
  private static String name(CsvRow top, int at) {
    String text = top.cell(at);
    boolean twice =
        IntStream.range(0, top.cells().size())
            .filter(other -> other != at)
            .anyMatch(other -> Header.name(top.cell(other)).equals(Header.name(text)));
    boolean usable = !Layout.isNumber(text) && text.chars().noneMatch(Character::isISOControl);
    return usable && !twice ? text : "";
  }
}
