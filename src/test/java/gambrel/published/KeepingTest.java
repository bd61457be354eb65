package gambrel.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.files.folder.BuiltInTables;
import gambrel.trade.cuts.Foods;
import gambrel.trade.cuts.Foods.Food;
import gambrel.trade.cuts.Foods.Span;
import gambrel.trade.cuts.Foods.Temperature;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How food keeps and is cooked, as the cold storage chart and the temperature table print it. */
class KeepingTest {
  private static final Foods FOODS = BuiltInTables.foods();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "steaks|steaks (beef, veal, lamb, pork)",
        "chops|chops",
        "roasts|roasts",
        "mince|ground beef/veal/pork/lamb",
        "sausage|raw sausage",
        "bacon|bacon",
        "offal|variety meats",
      })
  void foodKeepsAsLongAsTheChartSays(String id, String printed) {
    var row = Published.table("fsis_storage_times", "food", printed).get(0);
    assertEquals(
        row.get("refrigerator_at_or_below_40F_4C"), text(food(id).fridgeDays(), "day"), id);
    assertEquals(
        row.get("freezer_at_or_below_0F_minus18C"), text(food(id).freezerMonths(), "month"), id);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "steaks|beef, pork, veal, lamb steaks, chops, roasts",
        "chops|beef, pork, veal, lamb steaks, chops, roasts",
        "roasts|beef, pork, veal, lamb steaks, chops, roasts",
        "mince|ground meats (beef, pork, veal, lamb)",
        "sausage|ground meats (beef, pork, veal, lamb)",
        "ham|fresh or smoked ham, uncooked",
      })
  void foodIsCookedAndRestedAsTheTableSays(String id, String printed) {
    var row = Published.table("fsis_cooking_temperatures", "food", printed).get(0);
    assertEquals(Optional.of(temperature(row)), food(id).cooked(), id);
    assertEquals(row.get("rest"), food(id).restMinutes().map(m -> m + " min").orElse(""), id);
  }

  /** The heads of the chart's columns. */
  @Test
  void aFridgeHasFourDegreesAndAFreezerMinusEighteen() {
    assertEquals(temperature("4", "40"), FOODS.fridge());
    assertEquals(temperature("-18", "0"), FOODS.freezer());
  }

  @Test
  void whatTheSourcesDoNotGiveIsEmpty() {
    assertEquals(Optional.empty(), food("ham").fridgeDays());
    for (var id : List.of("bacon", "offal")) {
      assertEquals(Optional.empty(), food(id).cooked(), id);
    }
  }

  private static Food food(String id) {
    return FOODS.all().stream().filter(food -> food.id().equals(id)).findFirst().orElseThrow();
  }

  private static String text(Optional<Span> span, String unit) {
    var s = span.orElseThrow();
    return (s.least() == s.most() ? "" + s.most() : s.least() + "-" + s.most())
        + " "
        + unit
        + (s.most() == 1 ? "" : "s");
  }

  private static Temperature temperature(Map<String, String> row) {
    return temperature(row.get("min_C"), row.get("min_F"));
  }

  private static Temperature temperature(String celsius, String fahrenheit) {
    return new Temperature(new BigDecimal(celsius), new BigDecimal(fahrenheit));
  }
}
