package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import gambrel.files.csv.TextForm;
import gambrel.trade.measure.FileWord;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import java.nio.charset.Charset;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.temporal.TemporalQuery;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;

/** The kinds of value in a layout. Each method throws a {@link BadCell} for any other text. */
public final class LayoutTypes {
  /** Words for characters that are hard to write in a properties file. */
  private static final Map<String, Character> WORDS =
      Map.ofEntries(
          Map.entry("tab", '\t'),
          Map.entry("comma", ','),
          Map.entry("semicolon", ';'),
          Map.entry("pipe", '|'),
          Map.entry("point", '.'),
          Map.entry("space", ' '),
          Map.entry("apostrophe", '\''),
          Map.entry("blanks", TextForm.BLANKS),
          Map.entry("any-blanks", TextForm.ANY_BLANKS),
          Map.entry("digit-blanks", TextForm.DIGIT_BLANKS),
          Map.entry("none", TextForm.NO_QUOTE));

  /** A longer expression could nest deeper than the machine's stack. */
  private static final int LONGEST_EXPRESSION = 500;

  private static final LocalDateTime SAMPLE = LocalDateTime.of(2026, 11, 23, 21, 5);

  private LayoutTypes() {}

  /** A character as a layout writes it: by a word if it cannot be seen or is easily mistaken. */
  public static String word(char mark) {
    return WORDS.entrySet().stream()
        .filter(word -> word.getValue() == mark && (mark <= ' ' || mark == '\''))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("" + mark);
  }

  /** The character between cells. */
  static char delimiter(String text) {
    return mark(text, c -> c != TextForm.NO_QUOTE && "\"\n\r".indexOf(c) < 0, "NOT_DELIMITER");
  }

  /** The character that encloses cells. */
  static char quote(String text) {
    return mark(text, c -> !Character.isWhitespace(c), "NOT_QUOTE");
  }

  /** The decimal mark. */
  static char decimal(String text) {
    return mark(text, c -> c == '.' || c == ',', "NOT_DECIMAL_MARK");
  }

  /** The mark between thousands. */
  static char thousands(String text) {
    return mark(text, c -> c != TextForm.NO_QUOTE, "NOT_MARK");
  }

  private static char mark(String text, IntPredicate fits, String misfit) {
    var word = WORDS.get(text.toLowerCase(Locale.ROOT));
    if (word == null && text.length() != 1) {
      throw new BadCell("NOT_CHARACTER");
    }
    char c = word == null ? text.charAt(0) : word;
    if (Character.isLetterOrDigit(c) || !fits.test(c)) {
      throw new BadCell(misfit);
    }
    return c;
  }

  /** What weights below zero mean; there is one word for it. */
  static String negative(String text) {
    return BadCell.unless("NOT_NEGATIVE", text, "void"::equalsIgnoreCase);
  }

  /** What a void row cancels: {@code before}, {@code last} or {@code own}. */
  static Layout.Voided voided(String text) {
    return FileWord.find(Layout.Voided.class, text).orElseThrow(() -> new BadCell("NOT_VOID"));
  }

  /** A calendar with years of its own; there is one word. */
  static String calendar(String text) {
    return BadCell.unless("NOT_CALENDAR", text, "thai"::equalsIgnoreCase);
  }

  /** A character set. */
  static Charset charset(String text) {
    return BadCell.unless("NOT_CHARSET", () -> Charset.forName(text));
  }

  /** A regular expression. */
  static Pattern expression(String text) {
    if (text.length() > LONGEST_EXPRESSION) {
      throw new BadCell(Phrase.of("CELL.TOO_LONG").with("most", LONGEST_EXPRESSION));
    }
    return BadCell.unless("NOT_EXPRESSION", () -> Pattern.compile(text));
  }

  /** A unit of weight; empty for pounds and ounces together. */
  static Optional<WeightUnit> unit(String text) {
    if (text.equalsIgnoreCase("lb-oz")) {
      return Optional.empty();
    }
    return Optional.of(WeightUnit.of(text).orElseThrow(() -> new BadCell("NOT_LAYOUT_UNIT")));
  }

  /** A kind of pattern in a layout. */
  enum PatternType {
    /** Date and time, maybe with an offset. */
    TIME("NOT_TIME_PATTERN", LocalDateTime::from, SAMPLE),
    /** A date. */
    DATE("NOT_WHOLE_DATE_PATTERN", LocalDate::from, SAMPLE.toLocalDate()),
    /** A clock time. */
    CLOCK("NOT_CLOCK_PATTERN", LocalTime::from, SAMPLE.toLocalTime());

    private final String misfit;
    private final TemporalQuery<?> query;
    private final Object sample;

    PatternType(String misfit, TemporalQuery<?> query, Object sample) {
      this.misfit = misfit;
      this.query = query;
      this.sample = sample;
    }

    /** A pattern. What it prints must read back as the same time. */
    TimePattern pattern(String pattern, Locale locale) {
      if (TimePattern.isWord(pattern)) {
        return TimePattern.of(pattern, locale);
      }
      try {
        var own = Dates.formatter(pattern, locale);
        String text = own.format(SAMPLE.atOffset(ZoneOffset.UTC));
        if (own.parse(text, query).equals(sample)) {
          return TimePattern.of(pattern, locale);
        }
      } catch (IllegalArgumentException | DateTimeException e) {
        // Refused below, as a pattern that leaves a part of the time out.
      }
      throw new BadCell(misfit);
    }
  }

  /** Columns with commas or blanks between them. */
  static List<String> columns(String text) {
    return List.of(text.split("[,;\\s]+")).stream().map(LayoutTypes::column).distinct().toList();
  }

  /** A column that a layout may name. */
  static String column(String text) {
    String id = text.toLowerCase(Locale.ROOT);
    if (!Layout.ALL.contains(id)) {
      throw new BadCell(Phrase.of("CELL.NO_COLUMN").with("named", text));
    }
    return id;
  }
}
