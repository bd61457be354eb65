package gambrel.scenes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * {@code month-figures.csv}: one day more on the rail. Bodies of 200 cold lose 1 a day; a unit of
 * weight is worth 10 on the rail, a day is charged 2.
 */
class FurtherDayFiguresTest extends SceneTest {
  private int bodies;

  private void hangEight(String owner) {
    for (int i = 0; i < 8; i++) {
      String body = "D" + ++bodies;
      int days = 6 + i % 4;
      scene.body(body + ",beef,2026-03-0" + (1 + i) + "," + owner);
      scene.weigh(
          """
          %1$02dT10:00 %2$s hot  carcase 205
          %3$02dT10:00 %2$s cold carcase 200
          %4$02dT08:00 %2$s aged carcase %5$d
          %4$02dT10:00 %2$s pack mince   %6$d
          """
              .formatted(1 + i, body, 2 + i, 1 + i + days, 200 - days, 198 - days));
    }
  }

  private Found found() {
    scene.file("bodies.csv", "body,species,killed,customer,live_weight,head,tags,outcome");
    scene.file("values.csv", "item,value,from,to", "carcase,10,,");
    scene.file("charges.csv", "charge,description,basis,price", "hang,Hanging,day,2");
    hangEight("ann");
    hangEight("shop");
    return scene.at(LATER);
  }

  private static String figure(Found found, String figure, String whose) {
    var row =
        found.rows("month-figures", "figure=further_day_" + figure, "whose=" + whose).stream()
            .filter(r -> r.get("month").equals("2026-03"))
            .findFirst()
            .orElseThrow();
    return String.join(
        " ",
        row.get("bodies"),
        row.get("lower"),
        row.get("value"),
        row.get("upper"),
        row.get("unit"));
  }

  @Test
  void tellsWhatCustomersLoseAndAreCharged() {
    var found = found();
    assertEquals("8 0.500 0.500 0.500 %", figure(found, "pct", "customers"));
    assertEquals("8 1.000 1.000 1.000 kg", figure(found, "weight", "customers"));
    assertEquals("8 10.00 10.00 10.00 EUR", figure(found, "value", "customers"));
    assertEquals("8 2.00 2.00 2.00 EUR", figure(found, "charge", "customers"));
  }

  /** After 7.5 days 192.5 of 200 are left; without another, 191.5: 1 / 191.5 is 0.522 %. */
  @Test
  void tellsWhatTheShopLosesAndMustAskFor() {
    var found = found();
    assertEquals("8 1.000 1.000 1.000 kg", figure(found, "weight", "own"));
    assertEquals("8 0.522 0.522 0.522 %", figure(found, "price_rise_pct", "own"));
    assertEquals("8 10.00 10.00 10.00 EUR", figure(found, "value", "own"));
  }
}
