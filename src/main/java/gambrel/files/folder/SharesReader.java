package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.SpreadsheetDamage;
import gambrel.trade.measure.Exact;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import java.math.BigInteger;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads {@code shares.csv}. */
final class SharesReader {
  private static final FileColumns COLUMNS =
      FileColumns.of("shares.csv", "body", "customer", "share");

  /** {@code 1/2} or {@code 1 of 2}. */
  private static final Pattern RATIO =
      Pattern.compile("(?i)(\\d{1,12})\\s*(?:/|\\sof\\s)\\s*(\\d{1,12})");

  private SharesReader() {}

  /** The bodies with their shares; several rows of one customer add up. */
  static SortedMap<String, Body> apply(
      ShopFolder folder, SortedMap<String, Body> bodies, IdIndex customers) {
    var ids = new IdIndex(bodies.keySet());
    var shares = new TreeMap<String, Map<String, BigFraction>>();
    folder.each(COLUMNS, row -> read(row, ids, customers, shares));
    var owned = new TreeMap<>(bodies);
    shares.forEach(
        (id, ofBody) -> owned.computeIfPresent(id, (k, body) -> body.withShares(ofBody)));
    return owned;
  }

  private static void read(
      ShopRow row,
      IdIndex bodies,
      IdIndex customers,
      Map<String, Map<String, BigFraction>> shares) {
    String body = row.needKnown("body", bodies);
    row.setBody(body);
    row.needText("customer");
    var share = row.need("share", SharesReader::share);
    shares
        .computeIfAbsent(body, id -> new TreeMap<>())
        .merge(row.knownOrKept("customer", customers), share, BigFraction::add);
  }

  /** A share above zero: {@code 1/2}, {@code 0.25}, {@code 50%}, {@code 1 of 2}. */
  static BigFraction share(CellTypes types, String text) {
    var ratio = RATIO.matcher(text);
    var share = ratio.matches() ? ratio(ratio.group(1), ratio.group(2)) : decimalShare(types, text);
    if (share.signum() <= 0) {
      throw new BadCell("NOT_SHARE");
    }
    return share;
  }

  private static BigFraction ratio(String part, String whole) {
    return BadCell.unless(
        "NOT_SHARE", () -> BigFraction.of(new BigInteger(part), new BigInteger(whole)));
  }

  private static BigFraction decimalShare(CellTypes types, String text) {
    boolean percent = text.endsWith("%");
    String number = percent ? text.substring(0, text.length() - 1).strip() : text;
    if (SpreadsheetDamage.isDate(number)) {
      throw new BadCell(NoticeCode.SPREADSHEET_DAMAGE, Phrase.of("CELL.LOST_SHARE"));
    }
    try {
      var share = Exact.fraction(types.number(number));
      return percent ? share.divide(Exact.HUNDRED) : share;
    } catch (BadCell e) {
      throw new BadCell("NOT_SHARE");
    }
  }
}
