package gambrel.files.layout;

import gambrel.trade.measure.GivenWeight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.Field;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Converts the weights of one row to one unit: a row has a single unit, but a cell may carry its
 * own. Grams and kilograms become grams, pounds and ounces become ounces. Metric weights beside
 * others are refused, since one of the two must be a mistake.
 */
final class RowWeights {
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
