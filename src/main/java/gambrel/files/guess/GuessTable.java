package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.Header;
import gambrel.files.csv.TextForm;
import gambrel.files.guess.ExportSample.SampleFile;
import gambrel.files.layout.Layout;
import gambrel.trade.notice.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The exports of a folder as a table. Its delimiter is the one by which most lines of the first
 * file have the same number of cells; the first such line is its header unless it holds figures.
 *
 * @param delimiter the character between cells
 * @param quote the character that encloses cells
 * @param skip number of lines before the table
 * @param top the first line of the table
 * @param header whether this line names columns
 * @param repeated whether it stands again between rows
 * @param columns its columns
 * @param heads what lines above the rows, and the names of the files, give all rows below them
 * @param rows its rows
 * @param ignore a regular expression of the lines that are no rows, without its anchor; or empty
 * @param ignored the lines that are no rows
 * @param unlike files whose first line is another
 */
record GuessTable(
    char delimiter,
    char quote,
    int skip,
    String top,
    boolean header,
    boolean repeated,
    List<Column> columns,
    List<Column> heads,
    List<Row> rows,
    String ignore,
    List<String> ignored,
    List<String> unlike) {
  /** Of two with as many lines the first is taken: a comma may also be a decimal mark. */
  private static final List<Character> DELIMITERS =
      List.of(';', '\t', '|', ',', '~', '^', TextForm.BLANKS, ' ', TextForm.ANY_BLANKS);

  private static final int MOST_COLUMNS = 60;
  private static final Pattern PRINTED = Pattern.compile("\\S+(?:\\h\\S+)*");
  private static final Pattern FIGURE = Pattern.compile("[+-]?\\d+|[+-]?\\d.*\\d.*|[](].*\\d.*");
  private static final Pattern UNIT = Pattern.compile("(?i)[(\\[]?(kgs?|g|grams?|lbs?|oz)[)\\]]?");

  /** The characters that mean something else in a regular expression. */
  private static final String SIGNS = "\\.[]{}()*+-?^$|/#&";

  /** What may follow the beginning of a line that says something of the rows below. */
  private static final List<String> HEADS =
      List.of(
          "[^\\p{L}\\d]*([\\p{L}\\d./:_-]*)",
          ".*?[:=#]\\s*([\\p{L}\\d./:_-]*)",
          ".*\\s([\\p{L}\\d][\\p{L}\\d./:_-]*)[^\\p{L}\\d]*$");

  /** What may be a date in the name of a file. */
  private static final Pattern IN_NAME =
      Pattern.compile("(?<!\\d)(\\d{8}|\\d{6}|\\d{1,4}([-_.])\\d{1,2}\\2\\d{1,4})(?!\\d)");

  private static final String NO_LETTER_OR_DIGIT = "[^\\p{L}\\d]+$";

  /**
   * One column, or what a line above the rows or the name of the file gives.
   *
   * @param number from 1
   * @param header its text in the header, or the first word of the lines above the rows, or empty
   * @param unit the unit in the line below the header, or empty
   * @param cells its cells, row by row
   * @param above the expression of the lines that give it; {@link #NAME} for the name of the file;
   *     empty if it is a column
   */
  record Column(int number, String header, String unit, List<String> cells, String above) {
    static final String NAME = "name";

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
      return header.isEmpty() ? "column " + number : '"' + header + '"';
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

  /** The table of some files; without columns if there is none. */
  static GuessTable of(List<SampleFile> files) {
    char quote = quote(files.get(0));
    char delimiter = ',';
    int width = 0;
    int least = 0;
    long most = 0;
    boolean named = false;
    for (char candidate : DELIMITERS) {
      var rows = rows(files.get(0), candidate, quote);
      int usual = CsvRows.usualWidth(rows.stream().map(row -> row.cells().size()).toList(), 2);
      // Where rows are set out by single blanks, some of them are more than one.
      long fitting =
          rows.stream()
              .filter(row -> row.cells().size() == usual)
              .filter(row -> candidate != ' ' || !row.cells().contains(""))
              .count();
      // A blank stands within cells, too.
      boolean blank = candidate == ' ' || candidate < ' ' && candidate != '\t';
      boolean enough = blank ? usual > 3 && fitting > 2 : usual > 1;
      if (named && candidate == TextForm.ANY_BLANKS) {
        break;
      }
      // A decimal comma parts as many; of columns set by blanks some are only one blank apart.
      int names = candidate == TextForm.BLANKS && enough ? names(files.get(0), rows, usual) : 0;
      boolean asGood =
          usual > width
              && fitting >= most
              && (names > 0 || candidate == TextForm.ANY_BLANKS && delimiter == TextForm.BLANKS);
      if (enough && (fitting > most || asGood) && (width < 3 || usual * 2 > width)) {
        most = fitting;
        named = names > 0;
        delimiter = candidate;
        least = usual;
        width = Math.max(usual, names);
      }
    }
    return width == 0
        ? new GuessTable(
            ',',
            TextForm.DOUBLE_QUOTE,
            0,
            "",
            false,
            false,
            List.of(),
            List.of(),
            List.of(),
            "",
            List.of(),
            List.of())
        : new Builder(delimiter, quote, least, width).table(files);
  }

  /**
   * The number of names in the header of printed columns: the line above the first row, each of
   * whose names stands over a cell, but for one or two that may stand over blanks; else 0.
   */
  private static int names(SampleFile file, List<CsvRow> rows, int usual) {
    var unruled = rows.stream().filter(row -> !isRule(row)).toList();
    int first = 0;
    while (first < unruled.size()
        && (unruled.get(first).cells().size() != usual
            || unruled.get(first).cells().stream().noneMatch(GuessTable::isFigure))) {
      first++;
    }
    if (first == 0 || first == unruled.size()) {
      return 0;
    }
    var header = unruled.get(first - 1);
    var texts = new HashMap<Integer, String>();
    file.lines().forEach(line -> texts.put(line.number(), line.text()));
    var names = PRINTED.matcher(texts.get(header.line())).results().toList();
    var cells = PRINTED.matcher(texts.get(unruled.get(first).line())).results().toList();
    boolean over =
        names.size() >= usual
            && names.size() <= usual + 2
            && cells.size() == usual
            && header.cells().stream().noneMatch(GuessTable::isFigure)
            && IntStream.range(0, usual)
                .allMatch(
                    i ->
                        names.get(i).start() < cells.get(i).end()
                            && cells.get(i).start() < names.get(i).end());
    return over ? names.size() : 0;
  }

  /** Whether a line only rules off others, as dashes do. */
  private static boolean isRule(CsvRow row) {
    return Pattern.matches(NO_LETTER_OR_DIGIT, row.raw());
  }

  private static boolean isFigure(String cell) {
    return FIGURE.matcher(cell.strip()).matches();
  }

  private static List<CsvRow> rows(SampleFile file, char delimiter, char quote) {
    return new CsvRows(file.lines(), delimiter, quote, 1, Integer.MAX_VALUE).all(0);
  }

  /** An apostrophe if it encloses most lines, else a double quote. */
  private static char quote(SampleFile file) {
    long single = file.lines().stream().filter(l -> l.text().strip().matches("'.*'")).count();
    return single * 2 > file.lines().size() ? '\'' : TextForm.DOUBLE_QUOTE;
  }

  /** Sorts lines into rows and others. */
  private static final class Builder {
    private final char delimiter;
    private final char quote;
    private final int least;
    private final int width;
    private final List<Row> rows = new ArrayList<>();
    private final List<CsvRow> others = new ArrayList<>();
    private final List<String> unlike = new ArrayList<>();

    /** The columns that nearly every row fills. */
    private int[] filled = {};

    private Builder(char delimiter, char quote, int least, int width) {
      this.delimiter = delimiter;
      this.quote = quote;
      this.least = least;
      this.width = width;
    }

    /** The rows of a file; those whose last cells are printed as blanks get them back. */
    private List<CsvRow> read(SampleFile file) {
      return rows(file, delimiter, quote).stream()
          .map(row -> row.cells().size() < least ? row : row.padded(width))
          .toList();
    }

    private GuessTable table(List<SampleFile> files) {
      var first = read(files.get(0));
      int at = top(first);
      var top = first.get(at);
      boolean header = top.cells().stream().noneMatch(GuessTable::isFigure);
      var found = new ArrayList<Row>();
      for (var file : files) {
        var all = read(file);
        if (all.size() <= at || header && !all.get(at).cells().equals(top.cells())) {
          unlike.add(file.path());
        } else {
          all.subList(header ? at + 1 : at, all.size())
              .forEach(row -> found.add(new Row(file.path(), row)));
        }
      }
      boolean hasUnits = header && !found.isEmpty() && isUnits(found.get(0).csv());
      var units = hasUnits ? found.get(0).csv() : top;
      sort(found, header ? top.cells() : List.of(), units);
      var ignore = new TreeSet<String>();
      var ignored = new ArrayList<String>();
      for (var other : others) {
        String expression = expression(other.raw());
        boolean isUnits = hasUnits && other.cells().equals(units.cells());
        if ((isUnits || !isLikeARow(other)) && isSafe(expression, top, header)) {
          ignore.add(expression);
          ignored.add(other.raw());
        }
      }
      return new GuessTable(
          delimiter,
          quote,
          top.line() - 1,
          top.raw(),
          header,
          header && found.stream().anyMatch(row -> row.csv().cells().equals(top.cells())),
          IntStream.range(0, Math.min(width, MOST_COLUMNS))
              .mapToObj(i -> column(i, header ? text(top, i) : "", hasUnits ? units.cell(i) : ""))
              .toList(),
          heads(files, top, header),
          rows,
          String.join("|", ignore),
          ignored,
          unlike);
    }

    /**
     * The index of the first line of the table; its header may lack a last blank column. A line of
     * which most cells are blank is a title, such as spreadsheets write.
     */
    private int top(List<CsvRow> all) {
      var fitting = all.stream().filter(row -> row.cells().size() == width).toList();
      var unruled = fitting.stream().filter(row -> !isRule(row)).toList();
      var whole = unruled.isEmpty() ? fitting : unruled;
      var counts = whole.stream().map(Builder::texts).sorted().toList();
      long usual = counts.get(counts.size() / 2);
      int first = all.indexOf(whole.stream().filter(r -> texts(r) * 2 > usual).findFirst().get());
      boolean lastBlank = all.stream().allMatch(row -> row.cell(width - 1).isEmpty());
      boolean above = first > 0 && all.get(first - 1).cells().size() == width - 1;
      return lastBlank && above ? first - 1 : first;
    }

    private static long texts(CsvRow row) {
      return row.cells().stream().filter(cell -> !cell.isBlank()).count();
    }

    /** Sorts rows from other lines; a line like the header stands where files were joined. */
    private void sort(List<Row> found, List<String> header, CsvRow units) {
      var whole =
          found.stream()
              .map(Row::csv)
              .filter(row -> row.cells().size() == width && !isRule(row))
              .filter(row -> header.isEmpty() || !row.cells().equals(units.cells()))
              .filter(row -> header.isEmpty() || !row.cells().equals(header))
              .toList();
      long words = whole.stream().filter(Builder::beginsWithLetter).count();
      boolean counted = words * 2 < whole.size();
      var usual = whole.stream().filter(r -> !counted || !beginsWithLetter(r)).toList();
      filled = IntStream.range(0, width).filter(i -> isFilled(usual, i)).toArray();
      for (var row : found) {
        var csv = row.csv();
        boolean isRow =
            csv.cells().size() == width
                && csv.broken().isEmpty()
                && !isRule(csv)
                && (header.isEmpty() || !csv.cells().equals(units.cells()))
                && (present(csv) * 2 > filled.length || cancels(csv))
                && !(counted && beginsWithLetter(csv) && present(csv) < filled.length);
        if (csv.cells().equals(header)) {
          continue;
        }
        if (isRow) {
          rows.add(row);
        } else {
          others.add(csv);
        }
      }
    }

    private static boolean isFilled(List<CsvRow> rows, int column) {
      long blank = rows.stream().filter(row -> row.cell(column).isEmpty()).count();
      return blank * 3 < rows.size();
    }

    private long present(CsvRow row) {
      return IntStream.of(filled).filter(i -> !row.cell(i).isEmpty()).count();
    }

    private static boolean beginsWithLetter(CsvRow row) {
      String cell = row.cell(0);
      return !cell.isEmpty() && Character.isLetter(cell.charAt(0));
    }

    /** Whether a line with few cells is a row that cancels another one. */
    private static boolean cancels(CsvRow row) {
      return GuessWords.mentionsVoid(row.raw()) && !row.cell(0).isEmpty() && !beginsWithLetter(row);
    }

    /** Whether a line below the header holds units and no figure. */
    private boolean isUnits(CsvRow row) {
      return row.cells().size() >= width - 1
          && row.cells().stream().noneMatch(GuessTable::isFigure)
          && row.cells().stream().anyMatch(cell -> UNIT.matcher(cell.strip()).matches());
    }

    /** Whether a line that is no row looks so much like one that it must not be passed over. */
    private boolean isLikeARow(CsvRow row) {
      if (row.broken().isPresent() || rows.isEmpty()) {
        return true;
      }
      if (isRule(row)) {
        return false;
      }
      if (row.cells().size() == width) {
        return present(row) * 3 >= filled.length * 2L;
      }
      boolean digits = Character.isDigit(first(row));
      return row.cells().size() * 2 > width
          && digits == Character.isDigit(first(rows.get(0).csv()))
          && (digits || first(row) == first(rows.get(0).csv()));
    }

    private static char first(CsvRow row) {
      String cell = row.cell(0);
      return cell.isEmpty() ? ' ' : cell.charAt(0);
    }

    private boolean isSafe(String expression, CsvRow top, boolean header) {
      var pattern = Pattern.compile("^\\s*(" + expression + ')');
      return (!header || !pattern.matcher(top.raw()).find())
          && rows.stream().noneMatch(row -> pattern.matcher(row.csv().raw()).find());
    }

    /** An expression for the beginning of a line. */
    private static String expression(String raw) {
      String line = raw.strip();
      if (Pattern.matches(NO_LETTER_OR_DIGIT, line)) {
        return NO_LETTER_OR_DIGIT;
      }
      var word = Pattern.compile("^([^\\p{L}]*\\p{L}+).*", Pattern.DOTALL).matcher(line);
      String beginning = word.matches() ? word.group(1) : line;
      var text = new StringBuilder();
      boolean digits = false;
      for (char c : beginning.toCharArray()) {
        if (Character.isDigit(c)) {
          text.append(digits ? "" : "\\d+");
        } else {
          text.append(SIGNS.indexOf(c) < 0 ? "" : "\\").append(c);
        }
        digits = Character.isDigit(c);
      }
      return text.toString();
    }

    private Column column(int at, String header, String unit) {
      boolean isUnit = UNIT.matcher(unit).matches();
      return new Column(
          at + 1,
          header,
          isUnit ? unit : "",
          rows.stream().map(row -> row.csv().cell(at)).toList(),
          "");
    }

    /** What lines that are no rows, and the names of the files, may say of the rows below them. */
    private List<Column> heads(List<SampleFile> files, CsvRow top, boolean header) {
      var isRow = new HashSet<Place>();
      rows.forEach(row -> isRow.add(new Place(row.file(), row.csv().line())));
      var expressions = new LinkedHashMap<String, String>();
      for (var file : files) {
        for (var line : file.lines()) {
          boolean free = !isRow.contains(new Place(file.path(), line.number()));
          if (free
              && line.text().matches(".*\\p{L}.*")
              && !(header && line.text().equals(top.raw()))) {
            HEADS.forEach(
                rest ->
                    expressions.putIfAbsent(
                        "^\\s*" + expression(line.text()) + rest, firstWord(line.text())));
          }
        }
      }
      var heads = new ArrayList<Column>();
      expressions.forEach(
          (expression, word) ->
              given(files, Pattern.compile(expression))
                  .ifPresent(cells -> heads.add(new Column(0, word, "", cells, expression))));
      var names = rows.stream().map(row -> IN_NAME.matcher(nameOf(row.file()))).toList();
      if (!names.isEmpty() && names.stream().allMatch(Matcher::find)) {
        heads.add(new Column(0, "", "", names.stream().map(Matcher::group).toList(), Column.NAME));
      }
      return heads;
    }

    private static String nameOf(String path) {
      return path.substring(path.lastIndexOf('/') + 1);
    }

    private static String firstWord(String line) {
      return line.replaceAll("^[^\\p{L}]+|(?<=\\p{L})[^\\p{L}].*$", "");
    }

    /** By row what the nearest line above it gives; empty if a row has no such line above it. */
    private Optional<List<String>> given(List<SampleFile> files, Pattern expression) {
      var byFile = new HashMap<String, TreeMap<Integer, String>>();
      for (var file : files) {
        var given = byFile.computeIfAbsent(file.path(), path -> new TreeMap<>());
        for (var line : file.lines()) {
          var found = expression.matcher(line.text());
          if (found.find()) {
            given.put(line.number(), found.group(1));
          }
        }
      }
      var cells =
          rows.stream()
              .map(row -> byFile.get(row.file()).floorEntry(row.csv().line()))
              .map(above -> above == null ? "" : above.getValue())
              .toList();
      return Optional.of(cells).filter(all -> !all.contains(""));
    }

    /** The header text of a column; empty if it runs over lines or another column has it, too. */
    private String text(CsvRow top, int at) {
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
}
