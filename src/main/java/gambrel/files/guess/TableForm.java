package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.TextForm;
import gambrel.files.guess.ExportSample.SampleFile;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * How lines are parted into cells. The delimiter is the one by which most lines of a file have the
 * same number of cells.
 *
 * @param delimiter the character between cells
 * @param quote the character that encloses cells
 * @param least the number of cells of most lines
 * @param width the number of columns, which is more where last cells are printed as blanks; 0 if no
 *     delimiter parts the lines
 */
record TableForm(char delimiter, char quote, int least, int width) {
  /** Of two with as many lines the first is taken: a comma may also be a decimal mark. */
  private static final List<Character> DELIMITERS =
      List.of(';', '\t', '|', ',', '~', '^', TextForm.BLANKS, TextForm.ANY_BLANKS);

  private static final Pattern PRINTED = Pattern.compile("\\S+(?:\\h\\S+)*");
  private static final Pattern FIGURE = Pattern.compile("[+-]?\\d+|[+-]?\\d.*\\d.*|[](].*\\d.*");
  private static final Pattern RULE = Pattern.compile("[^\\p{L}\\d]+");

  /**
   * The form of a file.
   *
   * @param known the form by a layout, if one is saved
   */
  static TableForm of(SampleFile file, Optional<TextForm> known) {
    char quote = known.map(TextForm::quote).orElseGet(() -> quote(file));
    var best = new TableForm(',', quote, 0, 0);
    long most = 0;
    boolean named = false;
    for (char candidate : known.map(TextForm::delimiters).orElse(DELIMITERS)) {
      if (named && candidate == TextForm.ANY_BLANKS) {
        break;
      }
      var rows = new TableForm(candidate, quote, 0, 0).rows(file);
      int usual = CsvRows.usualWidth(rows.stream().map(row -> row.cells().size()).toList(), 2);
      long fitting = rows.stream().filter(row -> row.cells().size() == usual).count();
      // A blank stands within cells, too.
      boolean blank = candidate < ' ' && candidate != '\t';
      boolean enough = blank ? usual > 3 && fitting > 2 : usual > 1;
      // A decimal comma parts as many; of columns set by blanks some are only one blank apart.
      int names = candidate == TextForm.BLANKS && enough ? names(file, rows, usual) : 0;
      boolean asGood =
          usual > best.width
              && fitting >= most
              && (names > 0
                  || candidate == TextForm.ANY_BLANKS && best.delimiter == TextForm.BLANKS);
      if (enough && (fitting > most || asGood) && (best.width < 3 || usual * 2 > best.width)) {
        most = fitting;
        named = names > 0;
        best = new TableForm(candidate, quote, usual, Math.max(usual, names));
      }
    }
    return best;
  }

  /**
   * The rows of a file; those whose last cells are printed as blanks get them back, and blanks that
   * part cells are blanks in the text of a row.
   */
  List<CsvRow> rows(SampleFile file) {
    char part = delimiter < ' ' ? ' ' : delimiter;
    return new CsvRows(file.lines(), delimiter, quote, 1, Integer.MAX_VALUE)
        .all(0).stream()
            .map(row -> row.cells().size() < least ? row : row.padded(width))
            .map(
                row ->
                    new CsvRow(
                        row.line(), row.raw().replace(delimiter, part), row.cells(), row.broken()))
            .toList();
  }

  /** Whether a line only rules off others, as dashes do. */
  static boolean isRule(String line) {
    return RULE.matcher(line).matches();
  }

  /** Whether a cell is or holds a figure, as cells of rows do and names of columns do not. */
  static boolean isFigure(String cell) {
    return FIGURE.matcher(cell.strip()).matches();
  }

  /**
   * The number of names in the header of printed columns: the line above the first row, each of
   * whose names stands over a cell, but for one or two that may stand over blanks; else 0.
   */
  private static int names(SampleFile file, List<CsvRow> rows, int usual) {
    var unruled = rows.stream().filter(row -> !isRule(row.raw())).toList();
    int first = 0;
    while (first < unruled.size()
        && (unruled.get(first).cells().size() != usual
            || unruled.get(first).cells().stream().noneMatch(TableForm::isFigure))) {
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
            && header.cells().stream().noneMatch(TableForm::isFigure)
            && IntStream.range(0, usual)
                .allMatch(
                    i ->
                        names.get(i).start() < cells.get(i).end()
                            && cells.get(i).start() < names.get(i).end());
    return over ? names.size() : 0;
  }

  /** An apostrophe if it encloses most lines, else a double quote. */
  private static char quote(SampleFile file) {
    long single = file.lines().stream().filter(l -> l.text().strip().matches("'.*'")).count();
    return single * 2 > file.lines().size() ? '\'' : TextForm.DOUBLE_QUOTE;
  }
}
