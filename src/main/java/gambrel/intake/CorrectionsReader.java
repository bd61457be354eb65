package gambrel.intake;

import gambrel.notice.NoticeCode;
import gambrel.notice.Phrase;
import gambrel.shop.Correction;
import gambrel.weighing.Field;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code corrections.csv}. */
final class CorrectionsReader {
  private static final Columns COLUMNS =
      Columns.of("corrections.csv", "scale", "ticket", "field", "value", "by", "on", "reason")
          .and("date");

  private CorrectionsReader() {}

  /** The corrections in file order. */
  static List<Correction> read(ShopFolder folder, Ids ids) {
    var corrections = new ArrayList<Correction>();
    folder.each(
        COLUMNS,
        row -> {
          row.needText("scale");
          corrections.add(
              new Correction(
                  row.knownOrKept("scale", ids.scales()),
                  row.need("ticket", CorrectionsReader::ticket),
                  row.get("date", Formats::date),
                  row.need("field", CorrectionsReader::field).id(),
                  row.text("value"),
                  row.needText("by"),
                  row.need("on", Formats::moment),
                  row.needText("reason"),
                  row.place()));
        });
    return corrections;
  }

  private static String ticket(Formats formats, String text) {
    if (SpreadsheetDamage.isDate(text)) {
      throw new BadCell(NoticeCode.SPREADSHEET_DAMAGE, Phrase.of("CELL.LOST_RUN"));
    }
    return formats.id(text);
  }

  private static Field field(Formats formats, String text) {
    return Field.of(text)
        .filter(field -> field != Field.SCALE && field != Field.TICKET)
        .orElseThrow(() -> new BadCell("NOT_CORRECTABLE"));
  }
}
