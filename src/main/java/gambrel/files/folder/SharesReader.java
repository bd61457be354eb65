package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.SpreadsheetDamage;
import gambrel.files.folder.ShopFolder.Table;
import gambrel.trade.measure.Exact;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads {@code shares.csv}. */
final class SharesReader {
  /** {@code 1/2} or {@code 1 of 2}. */
  private static final Pattern RATIO =
      Pattern.compile("(?i)(\\d{1,12})\\s*(?:/|\\sof\\s)\\s*(\\d{1,12})");

  private SharesReader() {}

  /** The bodies with their shares; several rows of one customer add up. */
  static SortedMap<String, Body> apply(
      ShopFolder folder, SortedMap<String, Body> bodies, IdIndex customers) {
    var ids = new IdIndex(bodies.keySet());
    var shares = new TreeMap<String, Map<String, BigFraction>>();
    folder.each(
        Table.of("shares.csv", "body customer share", ""),
        row -> {
          String body = row.needKnown("body", ids);
          row.setBody(body);
          row.needText("customer");
          var share = row.need("share", SharesReader::share);
          shares
              .computeIfAbsent(body, id -> new TreeMap<>())
              .merge(row.knownOrKept("customer", customers), share, BigFraction::add);
        });
    var owned = new TreeMap<>(bodies);
    shares.forEach(
        (id, ofBody) -> owned.computeIfPresent(id, (k, body) -> body.withShares(ofBody)));
    return owned;
  }

  /** A share above zero: {@code 1/2}, {@code 0.25}, {@code 50%}, {@code 1 of 2}. */
  static BigFraction share(CellTypes types, String text) {
    var ratio = RATIO.matcher(text);
    var share =
        ratio.matches()
            ? BadCell.unless(
                "NOT_SHARE", () -> BigFraction.parse(ratio.group(1) + '/' + ratio.group(2)))
            : decimalShare(types, text);
    if (share.signum() <= 0) {
      throw new BadCell("NOT_SHARE");
    }
    return share;
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
