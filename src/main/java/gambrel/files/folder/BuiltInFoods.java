package gambrel.files.folder;

import gambrel.trade.cuts.Food;
import gambrel.trade.cuts.Food.Span;
import gambrel.trade.cuts.Food.Temperature;
import gambrel.trade.cuts.Foods;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads {@code food.csv}: how food keeps and is cooked, each row with its source. The rows {@code
 * fridge} and {@code freezer} hold only the highest temperatures of these.
 */
public final class BuiltInFoods {
  private BuiltInFoods() {}

  /** All rows of the table. */
  public static Foods load() {
    var rows = new LinkedHashMap<String, CSVRecord>();
    BuiltInTable.rows("food").forEach(row -> rows.put(row.get("food"), row));
    var fridge = temperature(rows.remove("fridge")).orElseThrow();
    var freezer = temperature(rows.remove("freezer")).orElseThrow();
    return new Foods(fridge, freezer, rows.values().stream().map(BuiltInFoods::food).toList());
  }

  private static Food food(CSVRecord row) {
    return new Food(
        row.get("food"),
        BuiltInTable.cell(row, "kind", kind -> Kind.of(kind).orElseThrow()),
        Stream.of(row.get("species").split(" "))
            .map(species -> Species.of(species).orElseThrow())
            .collect(Collectors.toSet()),
        BuiltInTable.cell(row, "fridge_days", BuiltInFoods::span),
        BuiltInTable.cell(row, "freezer_months", BuiltInFoods::span),
        temperature(row),
        BuiltInTable.cell(row, "rest_minutes", Integer::valueOf));
  }

  private static Optional<Temperature> temperature(CSVRecord row) {
    return BuiltInTable.cell(
        row,
        "celsius",
        celsius -> new Temperature(new BigDecimal(celsius), new BigDecimal(row.get("fahrenheit"))));
  }

  /** {@code 3-5}, or {@code 7} where one number is published. */
  private static Span span(String text) {
    var ends = List.of(text.split("-"));
    return new Span(Integer.parseInt(ends.get(0)), Integer.parseInt(ends.get(ends.size() - 1)));
  }
}
