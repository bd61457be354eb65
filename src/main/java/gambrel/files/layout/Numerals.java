package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.DecimalText;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads numbers with the decimal and thousands marks of one export. Other marks are refused: {@code
 * 1,250} is no number unless the layout says what its comma is.
 */
public final class Numerals {
  private final char decimal;
  private final Pattern form;

  /**
   * Numbers with these marks.
   *
   * @param decimal the mark before the decimals
   * @param thousands the mark between groups of three digits, if the export writes one
   */
  public Numerals(char decimal, Optional<Character> thousands) {
    this.decimal = decimal;
    String grouped = thousands.map(mark -> "\\d{1,3}(?:" + group(mark) + "\\d{3})+|").orElse("");
    this.form =
        Pattern.compile(
            "([+-]?)\\s*(?=.*\\d)(" + grouped + "\\d*)(?:" + quoted(decimal) + "(\\d*))?");
  }

  /** A blank is any blank of typography, an apostrophe any apostrophe. */
  private static String group(char mark) {
    return switch (mark) {
      case ' ' -> "[ \u00A0\u2009\u202F]";
      case '\'' -> "['\u2019]";
      default -> quoted(mark);
    };
  }

  private static String quoted(char mark) {
    return Pattern.quote(Character.toString(mark));
  }

  /**
   * The number that a text is.
   *
   * @throws BadCell if it is none, or has more than 12 digits before or after the decimal mark
   */
  BigDecimal read(String text) {
    var parts = form.matcher(text);
    if (!parts.matches()) {
      throw new BadCell(Phrase.of("CELL.NO_NUMBER").with("mark", "" + decimal));
    }
    String whole = parts.group(1) + parts.group(2).replaceAll("\\D", "");
    return DecimalText.of(parts.group(3) == null ? whole : whole + '.' + parts.group(3))
        .orElseThrow(() -> new BadCell("DIGITS"));
  }
}
