package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.trade.notice.Phrase;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * How an export writes numbers. Marks that were not declared are never guessed at: {@code 1,250} is
 * no number where the comma is not known to be one or the other.
 */
public final class Numerals {
  /** A number with a point and nothing between its thousands. */
  static final Numerals PLAIN = new Numerals('.', Optional.empty());

  /** All blanks of typography are one, as all apostrophes are. */
  private static final String BLANKS = "[ \u00A0\u2009\u202F]";

  private static final String APOSTROPHES = "['\u2019]";
  private static final int MOST_DIGITS = 12;

  private final char decimal;
  private final Optional<Pattern> grouped;
  private final Pattern plain;

  /**
   * Numbers with these marks.
   *
   * @param decimal before the decimals
   * @param thousands between groups of three digits, if the export writes them
   */
  public Numerals(char decimal, Optional<Character> thousands) {
    this.decimal = decimal;
    String fraction = "(?:" + Pattern.quote(Character.toString(decimal)) + "(\\d*))?";
    this.plain = Pattern.compile("([+-]?)\\s*(?=.*\\d)(\\d*)" + fraction);
    this.grouped =
        thousands.map(
            mark ->
                Pattern.compile("([+-]?)\\s*(\\d{1,3}(?:" + group(mark) + "\\d{3})+)" + fraction));
  }

  private static String group(char mark) {
    return switch (mark) {
      case ' ' -> BLANKS;
      case '\'' -> APOSTROPHES;
      default -> Pattern.quote(Character.toString(mark));
    };
  }

  /**
   * The number that a text denotes.
   *
   * @throws BadCell if it is none
   */
  BigDecimal read(String text) {
    var digits = plain.matcher(text);
    if (!digits.matches()) {
      digits =
          grouped
              .map(pattern -> pattern.matcher(text))
              .filter(matcher -> matcher.matches())
              .orElseThrow(
                  () -> new BadCell(Phrase.of("CELL.NO_NUMBER").with("mark", "" + decimal)));
    }
    String whole = digits.group(2).replaceAll("\\D", "");
    String fraction = digits.group(3) == null ? "" : digits.group(3);
    if (whole.length() > MOST_DIGITS || fraction.length() > MOST_DIGITS) {
      throw new BadCell("DIGITS");
    }
    return new BigDecimal(digits.group(1) + '0' + whole + '.' + fraction + '0')
        .setScale(fraction.length());
  }
}
