package gambrel.files.layout;

import gambrel.files.barcode.InStorePlan;
import gambrel.files.csv.BadCell;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.Field;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes fields of cells as a layout says: foreign values, numbers, units, times, barcodes. A column
 * outweighs the barcode, the barcode a constant.
 *
 * @param values own values by column and foreign value
 * @param constants what stands for blank cells, by column
 * @param numerals how numbers are written
 * @param weights how weights are written
 * @param unit of weights for which nothing else names one
 * @param time how times are written
 * @param inStore how the shop lays out its in-store numbers
 * @param thisYear decides the century of a barcode's two-digit year
 * @param identity columns that make a weighing where there is no ticket; none if it is empty
 */
record LayoutTranslation(
    Map<String, Map<String, String>> values,
    Map<String, String> constants,
    Numerals numerals,
    WeightText weights,
    Optional<WeightUnit> unit,
    LayoutTime time,
    Optional<InStorePlan> inStore,
    int thisYear,
    List<String> identity)
    implements RowTranslation {
  private static final List<Field> WEIGHTS = List.of(Field.NET, Field.GROSS, Field.TARE);

  @Override
  public Result translate(Map<String, String> cells) {
    var raw = new HashMap<>(cells);
    raw.replaceAll(this::own);
    raw.values().removeIf(String::isEmpty);
    values.forEach((column, own) -> fillBlank(raw, column, own.getOrDefault("", "")));
    var barcode = BarcodeFacts.read(raw.getOrDefault(LayoutColumns.BARCODE, ""), inStore, thisYear);
    fillBlank(raw, Field.BODY.id(), own(Field.BODY.id(), barcode.body()));
    fillBlank(raw, Field.CODE.id(), own(Field.CODE.id(), barcode.code()));
    fillBlank(raw, Field.PIECES.id(), barcode.pieces());
    boolean unweighed = isBlank(raw, Field.NET) && isBlank(raw, Field.GROSS);
    boolean untimed = isUntimed(raw);
    constants.forEach((column, text) -> fillBlank(raw, column, text));
    var fields = fields(raw);
    fields.putAll(weights(raw, unweighed, barcode));
    fill(fields, Field.TIME, time(raw, untimed ? barcode : BarcodeFacts.NONE));
    return new Result(fields, identity(fields, raw), broken(fields, barcode));
  }

  private String own(String column, String text) {
    return values.getOrDefault(column, Map.of()).getOrDefault(text, text);
  }

  private static void fillBlank(Map<String, String> raw, String column, String text) {
    if (!text.isEmpty()) {
      raw.putIfAbsent(column, text);
    }
  }

  private static void fill(Map<Field, String> fields, Field field, String text) {
    if (!text.isEmpty()) {
      fields.put(field, text);
    }
  }

  private static boolean isBlank(Map<String, String> raw, Field field) {
    return !raw.containsKey(field.id());
  }

  private static boolean isUntimed(Map<String, String> raw) {
    return isBlank(raw, Field.TIME) && !raw.containsKey(LayoutColumns.DATE);
  }

  private Map<Field, String> fields(Map<String, String> raw) {
    var fields = new EnumMap<Field, String>(Field.class);
    raw.forEach((column, text) -> Field.of(column).ifPresent(field -> fields.put(field, text)));
    fields.computeIfPresent(Field.PIECES, (field, text) -> number(text));
    return fields;
  }

  private String number(String text) {
    try {
      return numerals.read(text).toPlainString();
    } catch (BadCell e) {
      return BadCell.unreadable(text, e.words());
    }
  }

  private Map<Field, String> weights(
      Map<String, String> raw, boolean unweighed, BarcodeFacts barcode) {
    var row = new RowWeights();
    for (var field : WEIGHTS) {
      String text = raw.getOrDefault(field.id(), "");
      if (!text.isEmpty()) {
        row.add(field, text, weights);
      }
    }
    if (unweighed && barcode.net().isPresent()) {
      row.add(Field.NET, barcode.net().get());
    }
    var cells = row.cells(WeightUnit.of(raw.getOrDefault(Field.UNIT.id(), "")), unit);
    if (unweighed && !barcode.fault().isEmpty()) {
      cells.put(Field.NET, BadCell.unreadable("barcode", barcode.fault()));
    }
    return cells;
  }

  private String time(Map<String, String> raw, BarcodeFacts barcode) {
    String one = raw.getOrDefault(Field.TIME.id(), "");
    String date = raw.getOrDefault(LayoutColumns.DATE, "");
    String clock = raw.getOrDefault(LayoutColumns.CLOCK, "");
    if (!one.isEmpty()) {
      return time.ofOne(one);
    }
    if (date.isEmpty() && clock.isEmpty()) {
      return barcode.date().map(LayoutTime::firstOf).orElse("");
    }
    return time.ofTwo(date, clock, barcode.date());
  }

  /** A barcode that cannot be read leaves open what it would have told. */
  private static Optional<Phrase> broken(Map<Field, String> fields, BarcodeFacts barcode) {
    boolean missed =
        !fields.containsKey(Field.BODY)
            || !fields.containsKey(Field.CODE)
            || !fields.containsKey(Field.TIME);
    return barcode.fault().isEmpty() || !missed
        ? Optional.empty()
        : Optional.of(Phrase.of("FAULT.BARCODE").with("what", barcode.fault()));
  }

  private Optional<String> identity(Map<Field, String> fields, Map<String, String> raw) {
    if (identity.isEmpty()) {
      return Optional.empty();
    }
    var key = new StringBuilder(fields.getOrDefault(Field.SCALE, ""));
    for (String column : identity) {
      var field = Field.of(column);
      key.append('\n')
          .append(field.map(f -> value(f, fields)).orElse(raw.getOrDefault(column, "")));
    }
    return Optional.of(key.toString());
  }

  private static String value(Field field, Map<Field, String> fields) {
    String text = fields.getOrDefault(field, "");
    if (!WEIGHTS.contains(field) && field != Field.PIECES) {
      return text;
    }
    try {
      return Numerals.PLAIN.read(text).stripTrailingZeros().toPlainString();
    } catch (BadCell e) {
      return text;
    }
  }
}
