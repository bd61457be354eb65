package gambrel.files.csv;

import gambrel.trade.notice.Phrase;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Splits lines into records (RFC 4180). Commons CSV splits records with quotes into cells. This
 * class finds which lines belong to a record, because Commons CSV stops at the first badly quoted
 * record and reads to the end of the file if a quote is never closed. Here only the line on which
 * such a quote opens is broken, and reading goes on with the next line. Every line that is not
 * blank belongs to exactly one record, which keeps its line number and its raw text.
 */
public final class CsvRows {
  /** The most cells that a record may have. */
  static final int MOST_CELLS = 10_000;

  /** The most lines of a record. */
  static final int MOST_LINES = 200;

  /** What stands between cells in place of a delimiter. */
  private static final Map<Character, Pattern> GAPS =
      Map.of(
          TextForm.BLANKS, Pattern.compile("\\h{2,}|\t"),
          TextForm.ANY_BLANKS, Pattern.compile("\\h+"),
          TextForm.DIGIT_BLANKS, Pattern.compile("\\h{2,}|\t|(?<=\\d)\\h(?=\\d)"));

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
    var gap = GAPS.get(delimiter);
    this.lines = gap == null ? lines : PrintedColumns.parted(lines, gap, delimiter);
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
    var spans = new ArrayList<Span>();
    for (int at = from; at < lines.size(); ) {
      if (lines.get(at).isBlank()) {
        at++;
      } else {
        spans.add(span(at));
        at = spans.get(spans.size() - 1).end();
      }
    }
    return split(spans, use);
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
    var span = span(start);
    return new Found(split(List.of(span), row -> row).get(0), span.end());
  }

  private Span span(int start) {
    var line = lines.get(start);
    String first = line.text();
    if (!line.overlong() && first.length() < MOST_CELLS && first.indexOf(quote) < 0) {
      return new Span(start, start + 1, first, strange(first), Quotes.NONE);
    }
    var scanner = new QuoteScanner();
    scanner.read(first);
    var text = new StringBuilder(first);
    int end = start + 1;
    while (scanner.state == State.QUOTED && mayContinue(start, end, text.length())) {
      text.append(lines.get(end - 1).end()).append(lines.get(end).text());
      scanner.read(lines.get(end).text());
      end++;
    }
    var fault = fault(scanner, start, end);
    return fault.isPresent()
        ? new Span(start, start + 1, first, fault, Quotes.BROKEN)
        : new Span(start, end, text.toString(), strange(text.toString()), Quotes.SOUND);
  }

  private boolean mayContinue(int start, int next, int length) {
    return next < lines.size()
        && next - start < MOST_LINES
        && length < TextLine.LONGEST
        && !lines.get(next).overlong();
  }

  private Optional<Phrase> fault(QuoteScanner scanner, int start, int end) {
    if (lines.get(start).overlong()) {
      return Optional.of(Phrase.of("FAULT.LONG_LINE").with("most", TextLine.LONGEST));
    }
    if (scanner.state == State.WRONG) {
      return Optional.of(Phrase.of("FAULT.AFTER_QUOTE"));
    }
    if (scanner.cells > MOST_CELLS) {
      return Optional.of(Phrase.of("FAULT.MANY_CELLS").with("most", MOST_CELLS));
    }
    boolean fits = scanner.cells >= fewest && scanner.cells <= most;
    return scanner.state == State.QUOTED || end - start > 1 && (!fits || looksLikeRows(start, end))
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

  private <T> List<T> split(List<Span> spans, Function<CsvRow, T> use) {
    var quoted = new StringBuilder();
    spans.stream()
        .filter(span -> span.quotes() == Quotes.SOUND)
        .forEach(span -> quoted.append(span.text()).append('\n'));
    if (quoted.isEmpty()) {
      return rows(spans, Collections.emptyIterator(), use);
    }
    try (var parser = CSVParser.parse(quoted.toString(), format())) {
      return rows(spans, parser.iterator(), use);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private <T> List<T> rows(List<Span> spans, Iterator<CSVRecord> quoted, Function<CsvRow, T> use) {
    return spans.stream()
        .map(
            span ->
                row(
                    span,
                    switch (span.quotes()) {
                      case NONE -> cells(span.text());
                      case SOUND -> quoted.next().toList();
                      case BROKEN -> beforeQuote(span.text());
                    }))
        .map(use)
        .toList();
  }

  private CSVFormat format() {
    return CSVFormat.RFC4180
        .builder()
        .setDelimiter(delimiter)
        .setQuote(quote == TextForm.NO_QUOTE ? null : Character.valueOf(quote))
        .setIgnoreEmptyLines(false)
        .get();
  }

  private CsvRow row(Span span, List<String> cells) {
    String raw = TextForm.isOfBlanks(delimiter) ? span.text().replace(delimiter, ' ') : span.text();
    return new CsvRow(lines.get(span.start()).number(), raw, cells, span.fault());
  }

  /** The cells that end before the first quote of a broken record. */
  private List<String> beforeQuote(String text) {
    int first = text.indexOf(quote);
    int end = text.lastIndexOf(delimiter, first < 0 ? text.length() : first);
    return end < 0 ? List.of() : cells(text.substring(0, end)).stream().limit(MOST_CELLS).toList();
  }

  /** The cells of a text in which quotes do not count. */
  private List<String> cells(String text) {
    var cells = new ArrayList<String>();
    int from = 0;
    for (int to = text.indexOf(delimiter); to >= 0; to = text.indexOf(delimiter, from)) {
      cells.add(text.substring(from, to));
      from = to + 1;
    }
    cells.add(text.substring(from));
    return cells;
  }

  /** How the quotes of a record are set. */
  private enum Quotes {
    NONE,
    SOUND,
    BROKEN
  }

  /** A record as a range of lines; {@code end} is excluded. */
  private record Span(int start, int end, String text, Optional<Phrase> fault, Quotes quotes) {}

  /** Where a record stands after some of its characters. */
  private enum State {
    CELL_START,
    PLAIN,
    QUOTED,
    CLOSED,
    WRONG
  }

  /** Follows the quotes of one record, to find whether the record ends with its line. */
  private final class QuoteScanner {
    private State state = State.CELL_START;
    private int cells = 1;

    /** Reads one more line of the record. */
    void read(String line) {
      for (int i = 0; i < line.length(); i++) {
        char c = line.charAt(i);
        if (state == State.QUOTED) {
          if (c == quote && i + 1 < line.length() && line.charAt(i + 1) == quote) {
            i++;
          } else if (c == quote) {
            state = State.CLOSED;
          }
        } else {
          state = outside(c);
        }
      }
    }

    private State outside(char c) {
      if (c == delimiter && state != State.WRONG) {
        cells++;
        return State.CELL_START;
      }
      return switch (state) {
        case CELL_START -> c == quote && quote != TextForm.NO_QUOTE ? State.QUOTED : State.PLAIN;
        case CLOSED -> Character.isWhitespace(c) ? State.CLOSED : State.WRONG;
        default -> state;
      };
    }
  }
}
