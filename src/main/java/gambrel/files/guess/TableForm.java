package gambrel.files.guess;

import gambrel.files.csv.CsvRow;
import gambrel.files.csv.CsvRows;
import gambrel.files.csv.Header;
import gambrel.files.csv.TextForm;
import gambrel.files.guess.ExportSample.SampleFile;
import gambrel.files.layout.Layout;
import java.util.Collections;
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
      List.of(
          ';',
          '\t',
          '|',
          ',',
          '~',
          '^',
          TextForm.BLANKS,
          TextForm.ANY_BLANKS,
          TextForm.DIGIT_BLANKS);

  /** The fewest figures of a cell that holds several cells: a date and a time are two. */
  private static final int PACKED = 3;

  private static final Pattern BLANKS = Pattern.compile("\\h+");
  private static final Pattern PRINTED = Pattern.compile("\\S+(?:\\h\\S+)*");
  private static final Pattern FIGURE = Pattern.compile("[+-]?\\d+|[+-]?\\d.*\\d.*|[](].*\\d.*");
  private static final Pattern RULE = Pattern.compile("[^\\p{L}\\d]+");

  /**
   * The form of files, of which the first decides.
   *
   * @param layout how they are read, if that is saved
   */
  static TableForm of(List<SampleFile> files, Optional<Layout> layout) {
    var file = files.get(0);
    var known = layout.map(Layout::text);
    char quote = known.map(TextForm::quote).orElseGet(() -> quote(file));
    var best = new TableForm(',', quote, 0, 0);
    long most = 0;
    long gaps = 0;
    boolean named = false;
    boolean packed = false;
    for (char candidate : known.map(TextForm::delimiters).orElse(DELIMITERS)) {
      if (named && candidate == TextForm.ANY_BLANKS) {
        break;
      }
      boolean isOfBlanks = best.delimiter == TextForm.BLANKS;
      if (candidate == TextForm.DIGIT_BLANKS && known.isEmpty() && !(isOfBlanks && packed)) {
        break;
      }
      var rows = new TableForm(candidate, quote, 0, 0).rows(file);
      int usual = CsvRows.usualWidth(rows.stream().map(row -> row.cells().size()).toList(), 2);
      long whole = rows.stream().filter(row -> row.cells().size() == usual).count();
      // A blank stands within cells, too.
      boolean blank = TextForm.isOfBlanks(candidate);
      boolean enough = blank ? usual > 3 && whole > 2 : usual > 1;
      long marked = blank && enough ? marked(rows, usual) : 0;
      long fitting = whole + marked;
      // A decimal comma parts as many; of columns set by blanks some are only one blank apart.
      int names = candidate == TextForm.BLANKS && enough ? names(file, rows, usual) : 0;
      // One blank parts the words of a name where not all rows have as many of them.
      long missing = gaps(rows, usual);
      boolean finer = blank && isOfBlanks && missing <= gaps;
      boolean asGood =
          usual > best.width
              && (fitting >= most && (names > 0 || finer)
                  || finer
                      && packed
                      && fitting * GuessNumbers.SOME >= most * (GuessNumbers.SOME - 1));
      if (enough && (fitting > most || asGood) && (best.width < 3 || usual * 2 > best.width)) {
        most = fitting;
        gaps = missing;
        named = names > 0;
        packed = isPacked(rows, usual);
        best = new TableForm(candidate, quote, usual, Math.max(usual, names));
      }
    }
    return best.reaching(files, layout);
  }

  /** The form with the columns behind those of most lines: of marks, or as a layout reads them. */
  private TableForm reaching(List<SampleFile> files, Optional<Layout> layout) {
    var plain = new TableForm(delimiter, quote, 0, 0);
    boolean marked =
        TextForm.isOfBlanks(delimiter)
            && files.stream().anyMatch(file -> marked(plain.rows(file), least) > 0);
    var header = new Header(delimiter, Collections.nCopies(width, ""), null, 0);
    int reached =
        layout.stream()
            .flatMap(of -> of.positions(header).values().stream())
            .mapToInt(at -> at + 1)
            .max()
            .orElse(0);
    int marks = marked ? least + 1 : 0;
    return new TableForm(delimiter, quote, least, Math.max(width, Math.max(marks, reached)));
  }

  /**
   * The number of rows with one cell more at their end, a mark such as scales print behind the few
   * weighings that are not like the others; 0 if they are not few.
   */
  private static long marked(List<CsvRow> rows, int usual) {
    var all = rows.stream().map(row -> new GuessTable.Row("", row)).toList();
    var like = new TableRows(all, usual);
    long marked =
        rows.stream()
            .filter(row -> row.cells().size() == usual + 1 && like.isLikeARow(row))
            .map(row -> row.cell(usual))
            .filter(TableForm::isMark)
            .count();
    return marked * 2 < rows.size() ? marked : 0;
  }

  /** Whether a text is a status, names a ticket that it cancels, or is a letter or sign or two. */
  private static boolean isMark(String word) {
    return GuessWords.isDoubtful(word)
        || GuessWords.mentionsVoid(word)
        || GuessWords.isStatus(word)
        || word.matches("\\D{1,2}");
  }

  /** The number of blank cells within the rows that are whole. */
  private static long gaps(List<CsvRow> rows, int usual) {
    return rows.stream()
        .filter(row -> row.cells().size() == usual)
        .flatMap(row -> row.cells().stream())
        .filter(String::isBlank)
        .count();
  }

  /** Whether a cell of most rows holds several cells that one blank parts. */
  private static boolean isPacked(List<CsvRow> rows, int usual) {
    return IntStream.range(0, usual)
        .anyMatch(
            i -> rows.stream().filter(row -> isPacked(row.cell(i))).count() * 2 > rows.size());
  }

  private static boolean isPacked(String cell) {
    return BLANKS.splitAsStream(cell).filter(text -> text.matches(".*\\d.*")).count() >= PACKED;
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
