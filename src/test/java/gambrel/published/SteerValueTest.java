package gambrel.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.figures.BodyValue;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.ItemValues;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.money.Bid;
import gambrel.insight.month.money.OwnStock;
import gambrel.night.RefusedException;
import gambrel.scenes.Scene;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Register;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a body's cuts are worth on its cold weight, held against published sums. */
class SteerValueTest {
  private static final String STEER = "beef_us_1000lb_steer_value";
  private static final String LOIN = "lamb_loin_butcher_test";
  private static final Currency DOLLAR = Currency.getInstance("USD");
  private static final LocalDate DAY = LocalDate.of(2026, 3, 31);

  @TempDir Path folder;

  private Scene shop(String species, String cost) {
    return new Scene(folder)
        .set("unit=lb", "currency=USD", "limit.cutting_loss_pct=100", "bins=partly")
        .file(
            "bodies.csv",
            "body,species,killed,customer,cost",
            "B1," + species + ",2026-03-02,shop," + cost)
        .file("cuts.csv", "species,item,parent,name,kind")
        .file("values.csv", "item,value,from,to");
  }

  private static Night night(Scene scene) throws RefusedException {
    var inputs = scene.read();
    return new Reckoner(inputs.shop(), inputs.exports())
        .at(OffsetDateTime.parse("2026-04-15T00:00:00Z"));
  }

  private static ItemValues values(Night night) {
    return new ItemValues(night.shop().values(), DAY);
  }

  private static Map<String, String> stage(String name) {
    return Published.table(STEER, "stage", name).get(0);
  }

  private Night steer() throws RefusedException {
    var live = stage("live");
    var cost =
        new BigDecimal(live.get("weight_lb"))
            .multiply(new BigDecimal(live.get("cents_a_lb")).movePointLeft(2));
    var scene = shop("beef", cost.toPlainString());
    scene.add("values.csv", "mince," + cents("salable").movePointLeft(2) + ",,");
    scene.weigh("02T10:00 B1 cold carcase " + stage("carcass").get("weight_lb"));
    scene.weigh("05T10:00 B1 pack mince " + stage("salable").get("weight_lb"));
    return night(scene);
  }

  /**
   * The same, three steers alike, weighed hot: without work the most to bid for a pound of hot
   * weight is the worth of its salable meat, 40040 cents on 620 lb. Printed are 64.5 cents. With 31
   * dollars of work for each it is 5 cents less.
   */
  @Test
  void theMostToBidIsTheWorthOfTheMeatLessTheWorkOnIt() throws RefusedException {
    assertEquals(new BigDecimal("64.58"), bid(""));
    assertEquals(new BigDecimal("59.58"), bid("31.00"));
  }

  private BigDecimal bid(String work) throws RefusedException {
    var scene = shop("beef", "400");
    scene.file("charges.csv", "charge,description,basis,price");
    if (!work.isEmpty()) {
      scene.add("charges.csv", "cut,Cutting,head," + work);
    }
    scene.add("values.csv", "mince," + cents("salable").movePointLeft(2) + ",,");
    for (int i = 1; i <= 3; i++) {
      if (i > 1) {
        scene.add("bodies.csv", "B" + i + ",beef,2026-03-02,shop,400");
      }
      var carcass = stage("carcass").get("weight_lb");
      scene.weigh("02T10:0" + i + " B" + i + " hot carcase " + carcass);
      scene.weigh("03T10:0" + i + " B" + i + " cold carcase " + carcass);
      scene.weigh("05T10:0" + i + " B" + i + " pack mince " + stage("salable").get("weight_lb"));
    }
    var records = MonthRecords.of(night(scene), new Register(List.of()), YearMonth.from(DAY));
    var bid =
        Bid.figures(records).stream()
            .filter(figure -> figure.name() == FigureName.BID_OF_HOT)
            .findFirst();
    return Exact.round(bid.orElseThrow().value().orElseThrow().multiply(100), 2);
  }

  private static BigDecimal cents(String stage) {
    return new BigDecimal(stage(stage).get("cents_a_lb"));
  }

  /**
   * "The Missing $1.60", US Department of Agriculture (beef_us_1000lb_steer_value.txt): 440 lb of
   * salable meat at about 91 cents, from a carcass of 620 lb that is worth 64.5 cents a pound. Half
   * a cent on the meat is 440/620 of that on the carcass.
   */
  @Test
  void salableMeatIsWorthWhatTheCarcassIsOnItsWeight() throws RefusedException {
    var night = steer();
    var worth = BodyValue.on(BodyBalance::cold, bodies(night), values(night)).get(0);
    var cents = Exact.round(worth.rate().multiply(100), 2);
    assertEquals(new BigDecimal("64.58"), cents, "40040 cents on 620 lb");
    var left = new BigDecimal("0.5").multiply(new BigDecimal("440"));
    assertTrue(
        cents.subtract(cents("carcass")).abs().multiply(new BigDecimal("620")).compareTo(left) < 0);
  }

  /** The same: no value is added yet, so nothing but rounding is left over the 400 dollars. */
  @Test
  void nothingIsLeftOverWhatTheSteerCost() throws RefusedException {
    var night = steer();
    var margin = OwnStock.of(bodies(night), values(night), DOLLAR).get(0).margin().orElseThrow();
    assertEquals(new Money(40), margin, "400.40 less 400.00");
  }

  /** The card of a lamb loin (lamb_loin_butcher_test.txt): its parts are 6.65 dollars a pound. */
  @Test
  void partsOfALoinAreWorthThePrintedPriceOfThePound() throws RefusedException {
    var rows = Published.table(LOIN);
    var scene = shop("lamb", "");
    for (var row : rows) {
      String item = "card-" + Published.item(row.get("part"));
      if (!row.get("printed_dollars").isEmpty() && !row.get("part").equals("Total")) {
        scene.add("cuts.csv", "lamb," + item + ",carcase," + item + ",meat");
        scene.add("values.csv", item + ',' + row.get("dollars_a_lb") + ",,");
        scene.weigh("05T10:00 B1 pack " + item + ' ' + pounds(row));
      }
    }
    var total = rows.get(rows.size() - 1);
    scene.weigh("02T10:00 B1 cold carcase " + pounds(total));
    var night = night(scene);
    var worth = BodyValue.on(BodyBalance::cold, bodies(night), values(night)).get(0);
    Published.assertWithinLastDigit(
        total.get("dollars_a_lb"), Exact.round(worth.rate(), 4).toPlainString(), "a pound");
    assertTrue(
        Published.difference(
                    total.get("printed_dollars"), Exact.round(worth.money(), 2).toPlainString())
                .compareTo(new BigDecimal("0.03"))
            <= 0,
        "6 lb at a price rounded to a cent");
  }

  private static BigDecimal pounds(Map<String, String> row) {
    return new BigDecimal(row.get("weight_lb"))
        .add(new BigDecimal(row.get("weight_oz")).divide(new BigDecimal(16)));
  }

  private static List<MonthBody> bodies(Night night) {
    return night.bodies().values().stream().map(MonthBody::of).toList();
  }
}
