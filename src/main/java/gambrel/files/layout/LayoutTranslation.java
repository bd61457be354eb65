package gambrel.files.layout;

import gambrel.files.barcode.BarcodeContent;
import gambrel.files.barcode.InStorePlan;
import gambrel.trade.measure.GivenWeight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.Field;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Makes fields of cells by a layout: foreign values, numbers, units, times, barcodes. A column goes
 * before the barcode, the barcode before a constant.
 *
 * @param values own values by column and foreign value
 * @param constants the texts for blank cells by column
 * @param weights reads weights and numbers
 * @param unit the unit of weights for which nothing else names one
 * @param time reads times
 * @param inStore the plan of the shop's in-store numbers
 * @param thisYear decides the century of a barcode's two-digit year
 * @param identity the columns that identify a weighing in place of its ticket; may be empty
 */
record LayoutTranslation(
    Map<String, Map<String, String>> values,
    Map<String, String> constants,
    WeightText weights,
    Optional<WeightUnit> unit,
    LayoutTime time,
    Optional<InStorePlan> inStore,
    int thisYear,
    List<String> identity) {

  /** The row of stripped texts by column, without blank ones. */
  TranslatedRow translate(Map<String, String> cells) {
    var raw = new HashMap<>(cells);
    raw.replaceAll(this::own);
    raw.values().removeIf(String::isEmpty);
    values.forEach((column, own) -> fillBlank(raw, column, own.getOrDefault("", "")));
    String label = raw.getOrDefault(LayoutColumns.BARCODE, "");
    var barcode = BarcodeContent.read(label, inStore, thisYear);
    fillBlank(raw, Field.BODY.id(), own(Field.BODY.id(), barcode.body()));
    fillBlank(raw, Field.CODE.id(), own(Field.CODE.id(), barcode.code()));
    fillBlank(raw, Field.PIECES.id(), barcode.pieces());
    boolean unweighed = !raw.containsKey(Field.NET.id()) && !raw.containsKey(Field.GROSS.id());
    boolean untimed = !raw.containsKey(Field.TIME.id()) && !raw.containsKey(LayoutColumns.DATE);
    constants.forEach((column, text) -> fillBlank(raw, column, text));
    String ounces = raw.getOrDefault(LayoutColumns.OUNCES, "");
    if (!ounces.isEmpty()) {
      raw.compute(Field.NET.id(), (net, lb) -> (lb == null ? "0" : lb) + " lb " + ounces + " oz");
    }
    var row = new TranslatedRow(raw);
    row.replace(Field.PIECES, text -> weights.number(text).toPlainString());
    translateWeights(row, unweighed ? barcode.net() : Optional.empty());
    if (unweighed) {
      barcode.fault().ifPresent(why -> row.refuseBarcode(label, why));
    }
    translateTime(row, raw, untimed ? barcode.date() : Optional.empty());
    return new TranslatedRow(
        row.texts(), row.unreadable(), identity(row, raw), barcode.nets(), broken(row, barcode));
  }

  private String own(String column, String text) {
    return values.getOrDefault(column, Map.of()).getOrDefault(text, text);
  }

  private static void fillBlank(Map<String, String> raw, String column, String text) {
    if (!text.isEmpty()) {
      raw.putIfAbsent(column, text);
    }
  }

  private void translateWeights(TranslatedRow row, Optional<GivenWeight> label) {
    var ofRow = WeightUnit.of(row.compared(Field.UNIT));
    var amounts = new RowWeights(row, weights);
    label.ifPresent(amounts::putNet);
    amounts.write(ofRow, unit);
  }

  private void translateTime(
      TranslatedRow row, Map<String, String> raw, Optional<LocalDate> stamped) {
    String date = raw.getOrDefault(LayoutColumns.DATE, "");
    String clock = raw.getOrDefault(LayoutColumns.CLOCK, "");
    if (row.has(Field.TIME)) {
      row.replace(Field.TIME, time::ofOne);
    } else if (!date.isEmpty() || !clock.isEmpty()) {
      row.put(Field.TIME, (date + ' ' + clock).strip());
      row.replace(Field.TIME, both -> time.ofTwo(date, clock, stamped));
    } else {
      stamped.ifPresent(day -> row.put(Field.TIME, LayoutTime.firstOf(day)));
    }
  }

  /**
   * A barcode that cannot be read breaks a row that lacks a field which it may hold; one that
   * contradicts itself breaks any row.
   */
  private static Optional<Phrase> broken(TranslatedRow row, BarcodeContent barcode) {
    boolean complete = Stream.of(Field.BODY, Field.CODE, Field.TIME).allMatch(row::has);
    return barcode
        .fault()
        .filter(why -> !complete || why.key().equals("BARCODE.TWICE"))
        .map(why -> Phrase.of("FAULT.BARCODE").with("why", why));
  }

  private Optional<String> identity(TranslatedRow row, Map<String, String> raw) {
    if (identity.isEmpty()) {
      return Optional.empty();
    }
    var key = new StringBuilder(row.compared(Field.SCALE));
    for (String column : identity) {
      key.append('\n')
          .append(
              Field.of(column)
                  .map(field -> canonical(field, row.compared(field)))
                  .orElse(raw.getOrDefault(column, "")));
    }
    return Optional.of(key.toString());
  }

  /** The same text for equal numbers. */
  private static String canonical(Field field, String text) {
    return RowWeights.FIELDS.contains(field) || field == Field.PIECES
        ? DecimalText.canonical(text)
        : text;
  }
}
