package gambrel.files.layout;

import gambrel.files.barcode.BarcodeContent;
import gambrel.files.barcode.InStorePlan;
import gambrel.trade.measure.GivenWeight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Makes fields of cells by a layout: foreign values, numbers, units, times, barcodes. A column goes
 * before the barcode, the barcode before a constant.
 *
 * @param omitted the text that is left out of cells, by column
 * @param voiding the texts that give a row the status void, by column
 * @param values own values by column and foreign value; where both end in {@code *} any further
 *     text is kept
 * @param constants the texts for blank cells by column
 * @param weights reads weights and numbers
 * @param unit the unit of weights for which nothing else names one
 * @param time reads times
 * @param inStore the plan of the shop's in-store numbers
 * @param thisYear decides the century of a barcode's two-digit year
 * @param identity the columns that identify a weighing in place of its ticket; may be empty
 */
record LayoutTranslation(
    Map<String, String> omitted,
    Map<String, List<String>> voiding,
    Map<String, Map<String, String>> values,
    Map<String, String> constants,
    WeightText weights,
    Optional<WeightUnit> unit,
    LayoutTime time,
    Optional<InStorePlan> inStore,
    int thisYear,
    List<String> identity) {
  private static final String ANY = "*";
  private static final String VOID = "void";

  /** A status that cancels its own row, whatever the layout says of others. */
  private static final String VOID_OWN = "void:own";

  /** The row of stripped texts by column, without blank ones. */
  TranslatedRow translate(Map<String, String> cells) {
    var raw = new HashMap<>(cells);
    omitted.forEach(
        (column, text) ->
            raw.computeIfPresent(column, (c, cell) -> cell.replace(text, "").strip()));
    raw.replaceAll(this::own);
    raw.values().removeIf(String::isEmpty);
    values.forEach((column, own) -> fillBlank(raw, column, own.getOrDefault("", "")));
    String label = raw.getOrDefault(Layout.BARCODE, "");
    var barcode = BarcodeContent.read(label, inStore, thisYear);
    fillBlank(raw, Field.BODY.id(), own(Field.BODY.id(), barcode.body()));
    fillBlank(raw, Field.CODE.id(), own(Field.CODE.id(), barcode.code()));
    fillBlank(raw, Field.PIECES.id(), barcode.pieces());
    boolean unweighed = !raw.containsKey(Field.NET.id()) && !raw.containsKey(Field.GROSS.id());
    boolean untimed = !raw.containsKey(Field.TIME.id()) && !raw.containsKey(Layout.DATE);
    constants.forEach((column, text) -> fillBlank(raw, column, text));
    String ounces = raw.getOrDefault(Layout.OUNCES, "");
    if (!ounces.isEmpty()) {
      raw.compute(Field.NET.id(), (net, lb) -> (lb == null ? "0" : lb) + " lb " + ounces + " oz");
    }
    if (cells.entrySet().stream()
        .anyMatch(
            cell -> voiding.getOrDefault(cell.getKey(), List.of()).contains(cell.getValue()))) {
      raw.put(Field.STATUS.id(), VOID);
    }
    String voided = raw.getOrDefault(Layout.VOIDS, "");
    if (!voided.isEmpty() && raw.getOrDefault(Field.STATUS.id(), VOID).equalsIgnoreCase(VOID)) {
      raw.put(Field.STATUS.id(), VOID + ':' + voided);
    }
    if (raw.getOrDefault(Field.STATUS.id(), "").equalsIgnoreCase(VOID_OWN)) {
      raw.put(Field.STATUS.id(), VOID + ':' + raw.getOrDefault(Field.TICKET.id(), ""));
    }
    var row = new TranslatedRow(raw);
    row.replace(Field.PIECES, text -> weights.number(text).toPlainString());
    translateWeights(row, unweighed ? barcode.net() : Optional.empty());
    if (unweighed) {
      barcode.fault().ifPresent(why -> row.refuseBarcode(label, why));
    }
    translateTime(row, raw, untimed ? barcode.date() : Optional.empty());
    return new TranslatedRow(
        row.texts(), row.unreadable(), identity(raw), barcode.nets(), broken(row, barcode));
  }

  private String own(String column, String text) {
    var own = values.getOrDefault(column, Map.of());
    return own.containsKey(text)
        ? own.get(text)
        : own.entrySet().stream()
            .filter(value -> value.getKey().endsWith(ANY) && value.getValue().endsWith(ANY))
            .filter(value -> text.startsWith(withoutAny(value.getKey())))
            .max(Comparator.comparing(value -> value.getKey().length()))
            .map(value -> withoutAny(value.getValue()) + rest(text, value.getKey()))
            .orElse(text);
  }

  private static String withoutAny(String text) {
    return text.substring(0, text.length() - ANY.length());
  }

  /** What of a text stands where a pattern has {@code *}. */
  private static String rest(String text, String pattern) {
    return text.substring(pattern.length() - ANY.length()).strip();
  }

  private static void fillBlank(Map<String, String> raw, String column, String text) {
    if (!text.isEmpty()) {
      raw.putIfAbsent(column, text);
    }
  }

  private void translateWeights(TranslatedRow row, Optional<GivenWeight> label) {
    var ofRow = WeightUnit.of(row.text(Field.UNIT));
    var amounts = new RowWeights(row, weights);
    label.ifPresent(amounts::putNet);
    amounts.write(ofRow, unit);
  }

  private void translateTime(
      TranslatedRow row, Map<String, String> raw, Optional<LocalDate> stamped) {
    String date = raw.getOrDefault(Layout.DATE, "");
    String clock = raw.getOrDefault(Layout.CLOCK, "");
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

  private Optional<ExportRow.Identity> identity(Map<String, String> raw) {
    if (identity.isEmpty()) {
      return Optional.empty();
    }
    var fields = EnumSet.of(Field.SCALE);
    identity.stream().flatMap(column -> Field.of(column).stream()).forEach(fields::add);
    var others = identity.stream().filter(column -> Field.of(column).isEmpty());
    return Optional.of(
        new ExportRow.Identity(
            fields, others.map(column -> raw.getOrDefault(column, "")).toList()));
  }

  /**
   * Converts the weights of one row to one unit: a row has a single unit, but a cell may carry its
   * own. Grams and kilograms become grams, pounds and ounces become ounces. Metric weights beside
   * others are refused, since one of the two must be a mistake.
   */
  private static final class RowWeights {
    static final List<Field> FIELDS = List.of(Field.NET, Field.GROSS, Field.TARE);

    private static final Set<WeightUnit> METRIC = EnumSet.of(WeightUnit.KG, WeightUnit.G);

    private final TranslatedRow row;
    private final Map<Field, GivenWeight> amounts = new EnumMap<>(Field.class);

    /** Reads the weights of a row. */
    RowWeights(TranslatedRow row, WeightText type) {
      this.row = row;
      FIELDS.forEach(field -> row.read(field, text -> amounts.put(field, type.read(text))));
    }

    /** Sets the net weight to that of the barcode. */
    void putNet(GivenWeight net) {
      row.put(Field.NET, net.value().toPlainString());
      amounts.put(Field.NET, net);
    }

    /**
     * Writes the weights into the row, and their unit if a weight carries one.
     *
     * @param ofRow the unit that the row names
     * @param ofLayout the unit of weights for which nothing else names one
     */
    void write(Optional<WeightUnit> ofRow, Optional<WeightUnit> ofLayout) {
      if (amounts.values().stream().allMatch(amount -> amount.unit().isEmpty())) {
        amounts.forEach((field, amount) -> row.put(field, amount.value().toPlainString()));
        return;
      }
      var units = new EnumMap<Field, WeightUnit>(Field.class);
      amounts.forEach(
          (field, amount) ->
              amount.unit().or(() -> ofRow).or(() -> ofLayout).ifPresent(u -> units.put(field, u)));
      var named = EnumSet.noneOf(WeightUnit.class);
      named.addAll(units.values());
      ofRow.ifPresent(named::add);
      if (!METRIC.containsAll(named) && named.stream().anyMatch(METRIC::contains)) {
        amounts.keySet().forEach(field -> row.refuse(field, Phrase.of("CELL.TWO_SYSTEMS")));
        return;
      }
      var common =
          named.size() == 1
              ? named.iterator().next()
              : METRIC.containsAll(named) ? WeightUnit.G : WeightUnit.OZ;
      amounts.forEach(
          (field, amount) -> write(field, amount, Optional.ofNullable(units.get(field)), common));
      row.put(Field.UNIT, common.id());
    }

    private void write(
        Field field, GivenWeight amount, Optional<WeightUnit> unit, WeightUnit common) {
      if (unit.isPresent()) {
        row.put(field, in(amount.value(), unit.get(), common).toPlainString());
      } else if (amount.value().signum() == 0) {
        row.put(field, "0");
      } else {
        row.refuse(field, Phrase.of("CELL.NO_UNIT"));
      }
    }

    private static BigDecimal in(BigDecimal value, WeightUnit from, WeightUnit to) {
      return from == to
          ? value
          : value.multiply(BigDecimal.valueOf(to == WeightUnit.G ? 1000 : 16)).stripTrailingZeros();
    }
  }
}
