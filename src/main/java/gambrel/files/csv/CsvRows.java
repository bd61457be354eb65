package gambrel.files.csv;

import gambrel.trade.notice.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Takes lines apart into records (RFC 4180). Where a quote is never closed, only the line on which
 * it opens is broken, and reading goes on with the next line. Every line that is not blank belongs
 * to exactly one record, which keeps the number of its first line and its raw text.
 */
public final class CsvRows {
  /** The most cells that a record may have. */
  static final int MOST_CELLS = 10_000;

  private static final int MOST_LINES = 200;
  private static final char REPLACED = '\uFFFD';

  private final List<TextLine> lines;
  private final char delimiter;
  private final char quote;
  private final int fewest;
  private final int most;

  /** Reads {@code lines} whose cells stand within double quotes. */
  public CsvRows(List<TextLine> lines, char delimiter, int fewest, int most) {
    this(lines, delimiter, TextForm.DOUBLE_QUOTE, fewest, most);
  }

  /**
   * Reads {@code lines}.
   *
   * @param quote encloses cells; {@link TextForm#NO_QUOTE} if nothing does
   * @param fewest the fewest cells of a record that runs over several lines; if above 1, lines that
   *     could each be a row do not make one record either
   * @param most the most cells of such a record
   */
  public CsvRows(List<TextLine> lines, char delimiter, char quote, int fewest, int most) {
    this.lines = lines;
    this.delimiter = delimiter;
    this.quote = quote;
    this.fewest = fewest;
    this.most = most;
  }

  /** All records from line index {@code from} on. */
  public List<CsvRow> all(int from) {
    return all(from, row -> row);
  }

  /** As {@link #all(int)}, but only the results of {@code use} are kept in memory. */
  public <T> List<T> all(int from, Function<CsvRow, T> use) {
    var used = new ArrayList<T>();
    for (int at = from; at < lines.size(); ) {
      if (lines.get(at).isBlank()) {
        at++;
      } else {
        var found = at(at);
        used.add(use.apply(found.row()));
        at = found.next();
      }
    }
    return used;
  }

  /** The most frequent of the widths of at least {@code least} cells, of two the larger; else 0. */
  public static int usualWidth(List<Integer> widths, int least) {
    var counts = new TreeMap<Integer, Integer>();
    widths.stream().filter(w -> w >= least).forEach(w -> counts.merge(w, 1, Integer::sum));
    return counts.entrySet().stream()
        .reduce((best, other) -> other.getValue() >= best.getValue() ? other : best)
        .map(Map.Entry::getKey)
        .orElse(0);
  }

  /** A record and the index of the line after it. */
  record Found(CsvRow row, int next) {}

  /** The record that starts at line index {@code start}, which must not be blank. */
  Found at(int start) {
    String first = lines.get(start).text();
    var scanner = new RecordScanner(delimiter, quote);
    scanner.read(first);
    String text = first;
    int end = start + 1;
    while (scanner.isOpen() && mayContinue(start, end, text.length())) {
      String more = lines.get(end - 1).end() + lines.get(end).text();
      scanner.read(more);
      text = text.concat(more);
      end++;
    }
    int number = lines.get(start).number();
    var fault = fault(scanner, start, end);
    return fault.isPresent()
        ? new Found(new CsvRow(number, first, cellsBeforeQuote(first), fault), start + 1)
        : new Found(new CsvRow(number, text, scanner.cells(), strange(text)), end);
  }

  private boolean mayContinue(int start, int next, int length) {
    return next < lines.size()
        && next - start < MOST_LINES
        && length < TextLine.LONGEST
        && !lines.get(next).overlong();
  }

  private Optional<Phrase> fault(RecordScanner scanner, int start, int end) {
    if (lines.get(start).overlong()) {
      return Optional.of(Phrase.of("FAULT.LONG_LINE").with("most", TextLine.LONGEST));
    }
    if (scanner.isWrong()) {
      return Optional.of(Phrase.of("FAULT.AFTER_QUOTE"));
    }
    if (scanner.count() > MOST_CELLS) {
      return Optional.of(Phrase.of("FAULT.MANY_CELLS").with("most", MOST_CELLS));
    }
    boolean fits = scanner.count() >= fewest && scanner.count() <= most;
    return scanner.isOpen() || end - start > 1 && (!fits || looksLikeRows(start, end))
        ? Optional.of(Phrase.of("FAULT.OPEN_QUOTE"))
        : Optional.empty();
  }

  /** Whether the first line and another one have the cells of a row if quotes do not count. */
  private boolean looksLikeRows(int start, int end) {
    return fewest > 1
        && isWhole(lines.get(start))
        && lines.subList(start + 1, end).stream().anyMatch(this::isWhole);
  }

  private boolean isWhole(TextLine line) {
    return line.text().chars().filter(c -> c == delimiter).count() >= fewest - 1;
  }

  private static Optional<Phrase> strange(String text) {
    if (text.indexOf(0) >= 0) {
      return Optional.of(Phrase.of("FAULT.NUL"));
    }
    return text.indexOf(REPLACED) >= 0 ? Optional.of(Phrase.of("FAULT.CHARSET")) : Optional.empty();
  }

  /** The cells that end before the first quote of a broken record. */
  private List<String> cellsBeforeQuote(String text) {
    int end = text.indexOf(quote);
    var scanner = new RecordScanner(delimiter, quote);
    scanner.read(end < 0 ? text : text.substring(0, end));
    return scanner.cells().subList(0, Math.min(scanner.count() - 1, MOST_CELLS));
  }
}
