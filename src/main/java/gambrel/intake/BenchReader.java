package gambrel.intake;

import gambrel.notice.NoticeCode;
import gambrel.shop.BenchEntry;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code bench.csv}. */
final class BenchReader {
  private static final Columns COLUMNS =
      Columns.of("bench.csv", "scale", "from", "to").and("body", "batch", "customer", "boner");

  private BenchReader() {}

  /**
   * The entries in file order. A body or customer that is not known is kept: the rows that it would
   * fill must not pass for rows of nobody.
   */
  static List<BenchEntry> read(ShopFolder folder, Ids ids) {
    var entries = new ArrayList<BenchEntry>();
    folder.each(
        COLUMNS,
        row -> {
          row.needText("scale");
          String scale = row.known("scale", ids.scales()).orElseThrow();
          var from = row.need("from", Formats::moment);
          var to = row.need("to", Formats::lastMoment);
          if (to.isBefore(from)) {
            throw row.refuse(NoticeCode.SHOP_ROW_BAD, "TO_BEFORE_FROM");
          }
          entries.add(
              new BenchEntry(
                  scale,
                  from,
                  to,
                  ids.isTag(row.text("body"))
                      ? row.text("body")
                      : row.knownOrKept("body", ids.bodies()),
                  row.get("batch", Formats::id).orElse(""),
                  row.knownOrKept("customer", ids.customers()),
                  row.text("boner")));
        });
    return entries;
  }
}
