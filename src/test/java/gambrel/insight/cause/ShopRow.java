package gambrel.insight.cause;

import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.RowCells;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.Optional;

/** A row of an export that may still change; weights in thousandths of the shop's unit. */
final class ShopRow {
  /** What a scale prints of a weighing. */
  enum Print {
    /** The net weight alone. */
    NET,
    /** The gross weight alone; the reader takes the code's tare off. */
    GROSS,
    /** Gross, tare and net. */
    ALL
  }

  final String scale;
  final String code;
  final Print print;
  LocalDateTime time;
  String body;
  String batch = "";
  long net;
  long tare;
  int ticket;

  ShopRow(String scale, LocalDateTime time, String body, String code, long net) {
    this(scale, time, body, code, net, Print.NET, 0);
  }

  ShopRow(
      String scale,
      LocalDateTime time,
      String body,
      String code,
      long net,
      Print print,
      long tare) {
    this.scale = scale;
    this.time = time;
    this.body = body;
    this.code = code;
    this.net = net;
    this.print = print;
    this.tare = tare;
  }

  ShopRow copy(int secondsLater) {
    var copy = new ShopRow(scale, time.plusSeconds(secondsLater), body, code, net, print, tare);
    copy.batch = batch;
    return copy;
  }

  boolean isRail() {
    return scale.equals("rail");
  }

  boolean isBin() {
    return code.startsWith("bin.");
  }

  /** The row as it is read from an export. */
  ExportRow exported(Place place) {
    var cells = new EnumMap<Field, String>(Field.class);
    cells.put(Field.SCALE, scale);
    cells.put(Field.TICKET, Integer.toString(ticket));
    cells.put(Field.TIME, time.toString());
    cells.put(Field.BODY, body);
    cells.put(Field.CODE, code);
    cells.put(Field.BATCH, batch);
    cells.put(Field.NET, print == Print.GROSS ? "" : decimal(net));
    cells.put(Field.GROSS, print == Print.NET ? "" : decimal(net + tare));
    cells.put(Field.TARE, print == Print.ALL ? decimal(tare) : "");
    cells.values().removeIf(String::isEmpty);
    String raw = String.join(",", cells.values());
    return RowCells.row(place, cells, Optional.empty(), raw);
  }

  private static String decimal(long thousandths) {
    return BigDecimal.valueOf(thousandths, 3).toPlainString();
  }
}
