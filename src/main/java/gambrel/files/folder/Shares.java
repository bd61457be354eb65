package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.SpreadsheetDamage;
import gambrel.trade.measure.Exact;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import java.math.BigInteger;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** A share of a body as people write it: {@code 1/2}, {@code 0.25}, {@code 50%}, {@code 1 of 2}. */
final class Shares {
  private static final Pattern RATIO =
      Pattern.compile("(?i)(\\d{1,12})\\s*(?:/|\\sof\\s)\\s*(\\d{1,12})");
  private static final String WANTED = "NOT_SHARE";

  private Shares() {}

  /**
   * The exact share, above zero.
   *
   * @throws BadCell if it is none, or a date that a spreadsheet made of one
   */
  static BigFraction read(String text, boolean decimalComma) {
    var ratio = RATIO.matcher(text);
    if (ratio.matches()) {
      var whole = new BigInteger(ratio.group(2));
      return aboveZero(
          whole.signum() == 0
              ? BigFraction.ZERO
              : BigFraction.of(new BigInteger(ratio.group(1)), whole));
    }
    if (text.endsWith("%")) {
      String percent = text.substring(0, text.length() - 1).strip();
      return aboveZero(decimal(percent, decimalComma).divide(Exact.HUNDRED));
    }
    return aboveZero(decimal(text, decimalComma));
  }

  private static BigFraction decimal(String text, boolean decimalComma) {
    if (SpreadsheetDamage.isDate(text)) {
      throw new BadCell(NoticeCode.SPREADSHEET_DAMAGE, Phrase.of("CELL.LOST_SHARE"));
    }
    try {
      return Exact.fraction(CellTypes.number(text, decimalComma));
    } catch (BadCell e) {
      throw new BadCell(WANTED);
    }
  }

  private static BigFraction aboveZero(BigFraction share) {
    if (share.signum() <= 0) {
      throw new BadCell(WANTED);
    }
    return share;
  }
}
