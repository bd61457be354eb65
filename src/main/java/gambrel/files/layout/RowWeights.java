package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.rows.Field;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Brings the weights of one row to one unit: rows name a single unit, but a cell may carry its own.
 * Grams and kilograms meet in grams, pounds and ounces in ounces; a metric weight beside another is
 * refused, since one of the two must be a mistake.
 */
final class RowWeights {
  private static final Set<WeightUnit> METRIC = EnumSet.of(WeightUnit.KG, WeightUnit.G);
  private static final String TWO_SYSTEMS = "the row has metric weights and pounds or ounces";
  private static final String NO_UNIT = "another weight of the row has a unit, this has none";

  private final Map<Field, String> texts = new LinkedHashMap<>();
  private final Map<Field, WeightText.Amount> amounts = new EnumMap<>(Field.class);

  /** Adds a cell as it stands; one that is no weight becomes a text that is no number. */
  void add(Field field, String text, WeightText type) {
    texts.put(field, text);
    try {
      amounts.put(field, type.read(text));
    } catch (BadCell e) {
      texts.put(field, BadCell.unreadable(text, e.words()));
    }
  }

  /** Adds a weight that is known. */
  void add(Field field, WeightText.Amount amount) {
    texts.put(field, amount.value().toPlainString());
    amounts.put(field, amount);
  }

  /**
   * The cells of the weights, and of their unit where a weight carries one.
   *
   * @param ofRow the unit that the row names
   * @param ofLayout the unit of weights for which nothing else names one
   */
  Map<Field, String> cells(Optional<WeightUnit> ofRow, Optional<WeightUnit> ofLayout) {
    var cells = new EnumMap<Field, String>(Field.class);
    cells.putAll(texts);
    if (amounts.values().stream().allMatch(amount -> amount.unit().isEmpty())) {
      amounts.forEach((field, amount) -> cells.put(field, amount.value().toPlainString()));
      return cells;
    }
    var units = units(ofRow, ofLayout);
    var named = EnumSet.noneOf(WeightUnit.class);
    named.addAll(units.values());
    ofRow.ifPresent(named::add);
    if (!METRIC.containsAll(named) && named.stream().anyMatch(METRIC::contains)) {
      texts.forEach((field, text) -> cells.put(field, BadCell.unreadable(text, TWO_SYSTEMS)));
      return cells;
    }
    var common = named.size() == 1 ? named.iterator().next() : smaller(named);
    amounts.forEach((field, amount) -> cells.put(field, text(field, amount, units, common)));
    cells.put(Field.UNIT, common.id());
    return cells;
  }

  private Map<Field, WeightUnit> units(Optional<WeightUnit> ofRow, Optional<WeightUnit> ofLayout) {
    var units = new EnumMap<Field, WeightUnit>(Field.class);
    amounts.forEach(
        (field, amount) ->
            amount.unit().or(() -> ofRow).or(() -> ofLayout).ifPresent(u -> units.put(field, u)));
    return units;
  }

  private static WeightUnit smaller(Set<WeightUnit> named) {
    return METRIC.containsAll(named) ? WeightUnit.G : WeightUnit.OZ;
  }

  private String text(
      Field field, WeightText.Amount amount, Map<Field, WeightUnit> units, WeightUnit common) {
    var unit = units.get(field);
    if (unit == null) {
      return amount.value().signum() == 0 ? "0" : BadCell.unreadable(texts.get(field), NO_UNIT);
    }
    return in(amount.value(), unit, common).toPlainString();
  }

  private static BigDecimal in(BigDecimal value, WeightUnit from, WeightUnit to) {
    if (from == to) {
      return value;
    }
    return value.multiply(BigDecimal.valueOf(to == WeightUnit.G ? 1000 : 16)).stripTrailingZeros();
  }
}
