package gambrel.trade.rows;

import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Shop;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads the cells of corrected rows, and says by what they are compared: key and content as values.
 */
public final class RowReader {
  private static final List<Field> CONTENT =
      List.of(
          Field.TIME,
          Field.BODY,
          Field.CODE,
          Field.NET,
          Field.GROSS,
          Field.TARE,
          Field.UNIT,
          Field.PIECES,
          Field.BATCH,
          Field.CUSTOMER);

  private final Shop shop;

  public RowReader(Shop shop) {
    this.shop = shop;
  }

  ReadRow read(ExportRow row, Optional<OffsetDateTime> time, boolean removed) {
    return new ReadRow(row, time, Status.of(row.get(Field.STATUS)), removed);
  }

  /** A row with what it is compared by. */
  KeyedRow keyed(ReadRow read) {
    return new KeyedRow(read, key(read), content(read.row(), read.time()));
  }

  /** What makes two rows the same weighing. */
  String key(ReadRow read) {
    var row = read.row();
    var time = read.time();
    if (row.broken().isPresent()) {
      return "broken\n" + row.raw();
    }
    String ticket = row.get(Field.TICKET);
    if (ticket.isEmpty() && row.identity().isPresent()) {
      return EqualRowCounter.KEY + row.identity().get();
    }
    if (ticket.isEmpty()) {
      return "content\n" + row.get(Field.SCALE) + '\n' + content(row, time);
    }
    String date = time.map(t -> t.toLocalDate().toString()).orElse("? " + row.get(Field.TIME));
    return "ticket\n" + row.get(Field.SCALE) + '\n' + ticket + '\n' + date;
  }

  private String content(ExportRow row, Optional<OffsetDateTime> time) {
    var content = new StringBuilder();
    for (var field : CONTENT) {
      content.append(value(row, field, time)).append('\n');
    }
    return content.toString();
  }

  private String value(ExportRow row, Field field, Optional<OffsetDateTime> time) {
    String text = row.get(field);
    return switch (field) {
      case TIME -> time.map(RowReader::moment).orElse(text);
      case UNIT -> unit(row).map(WeightUnit::id).orElse(text.toLowerCase(Locale.ROOT));
      case NET, GROSS, TARE, PIECES -> DecimalText.canonical(text);
      default -> text;
    };
  }

  /** A cell's text never begins with a blank, so no unreadable time is taken for a moment. */
  private static String moment(OffsetDateTime time) {
    return " " + time.toEpochSecond() + '.' + time.getNano();
  }

  /** The unit of the row's weights: its own, else the layout's, the scale's, the shop's. */
  public Optional<WeightUnit> unit(ExportRow row) {
    if (!row.get(Field.UNIT).isEmpty()) {
      return WeightUnit.of(row.get(Field.UNIT));
    }
    if (row.unit().isPresent()) {
      return row.unit();
    }
    var scale = shop.scales().get(row.get(Field.SCALE));
    return Optional.of(scale == null ? shop.settings().unit() : scale.unit());
  }
}
