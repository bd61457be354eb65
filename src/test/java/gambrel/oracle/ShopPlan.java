package gambrel.oracle;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What kind of shop it is: region, unit, scales, settings, customers. */
final class ShopPlan {
  /** First days near a change of the clocks, by zone. */
  private static final Map<String, List<String>> DAYS =
      Map.of(
          "Australia/Hobart", List.of("2026-03-28", "2026-06-01"),
          "Europe/London", List.of("2026-03-24", "2026-10-20"),
          "America/Chicago", List.of("2026-10-27", "2026-02-20"),
          "Pacific/Auckland", List.of("2026-07-01", "2026-09-20"));

  private static final List<String> SPECIES =
      List.of("beef", "veal", "lamb", "pork", "goat", "game");

  final Dice dice;

  /** Decides what is billed and how bills are numbered. */
  final Dice bills;

  final String region;
  final String zone;
  final String currency;
  final String unit;
  final LocalDate firstDay;
  final boolean slashes;
  final String bins;
  final String rail;
  final List<String> species;
  final List<String> customers = new ArrayList<>();
  final boolean ownCuts;
  final SimScale railScale;
  final SimScale benchScale;
  final SimScale packScale;

  /** Without a ticket counter. */
  final SimScale wrapScale;

  /** Bodies of the shop, and days over which they are killed. */
  final int bodies;

  final int spread;

  /** One shop in fifteen has many bodies. */
  ShopPlan(Dice dice, long seed) {
    this.dice = dice;
    bills = new Dice(~seed);
    region = dice.pick(List.of("au", "uk", "us"));
    zone =
        switch (region) {
          case "uk" -> "Europe/London";
          case "us" -> "America/Chicago";
          default -> dice.pick(List.of("Australia/Hobart", "Pacific/Auckland"));
        };
    currency =
        dice.chance(5) ? "JPY" : region.equals("uk") ? "GBP" : region.equals("us") ? "USD" : "AUD";
    unit = region.equals("us") && dice.chance(70) || dice.chance(10) ? "lb" : "kg";
    firstDay = LocalDate.parse(dice.pick(DAYS.get(zone)));
    slashes = dice.chance(15);
    boolean crowded = seed % 15 == 4;
    boolean busy = crowded || dice.chance(10);
    bins =
        dice.chance(crowded ? 10 : busy ? 25 : 70) ? "weighed" : dice.pick(List.of("partly", "no"));
    rail = dice.chance(70) ? "hot,cold" : dice.pick(List.of("hot", "cold", "hot,cold,aged"));
    species = new ArrayList<>(List.of(dice.pick(SPECIES), dice.pick(SPECIES)));
    if (busy) {
      species.set(1, species.get(0));
    }
    bodies = crowded ? 30 : busy ? 14 : dice.between(3, 12);
    spread = busy ? 40 : 9;
    for (int i = 1; i <= dice.between(2, 5); i++) {
      customers.add("C" + i);
    }
    ownCuts = dice.chance(20);
    railScale = scale("rail", List.of("0.5", "0.2", "0.1"), "600");
    benchScale = scale("bench", List.of("0.05", "0.02", "0.01"), "150");
    packScale = scale("pack", List.of("0.005", "0.002", "0.01"), "");
    wrapScale = scale("wrap", List.of("0.005", "0.002"), "");
  }

  private SimScale scale(String id, List<String> divisions, String capacity) {
    var own = dice.chance(85) ? unit : unit.equals("kg") ? "lb" : "kg";
    return new SimScale(
        id,
        own,
        new BigDecimal(dice.pick(divisions)),
        dice.chance(60) ? "III" : dice.chance(30) ? "II" : "",
        dice.chance(50) && own.equals("kg") ? capacity : "",
        unit);
  }

  List<SimScale> scales() {
    return List.of(railScale, benchScale, packScale, wrapScale);
  }

  /** A weight of kilograms in the shop's unit. */
  BigDecimal weight(BigDecimal kilograms) {
    return unit.equals("kg") ? kilograms : kilograms.multiply(new BigDecimal("2.2046"));
  }

  boolean takes(String step) {
    return List.of(rail.split(",")).contains(step);
  }

  /** A date as the shop writes it. */
  String date(LocalDate date) {
    return slashes
        ? String.format("%02d/%02d/%d", date.getDayOfMonth(), date.getMonthValue(), date.getYear())
        : date.toString();
  }

  /** A kind of the shop's own, and an item of its own. */
  String cuts() {
    return "species,item,parent,name,kind,count\n"
        + (species.get(0) + ",kidney,carcase,Kidney left in,meat,\n")
        + (species.get(0) + ",sunday-joint,hindquarter,Sunday joint,meat,\n");
  }

  String properties() {
    var lines = new ArrayList<>(List.of("name=Invented shop", "region=" + region, "zone=" + zone));
    lines.add("currency=" + currency);
    lines.add("unit=" + unit);
    lines.add("bins=" + bins);
    lines.add("rail=" + rail);
    if (slashes) {
      lines.add("dates=dd/MM/yyyy");
    }
    if (dice.chance(20)) {
      lines.add("rail." + species.get(0) + "=hot,cold");
    }
    if (dice.chance(30)) {
      lines.add("quiet_hours=" + dice.between(2, 20));
      lines.add("cutting_days=" + dice.between(1, 5));
      lines.add("limit.cutting_loss_pct=" + dice.pick(List.of("2.0", "1.5", "4")));
      lines.add("limit.hanging_pct_per_day=" + dice.pick(List.of("0.2", "0.5")));
    }
    if (dice.chance(30)) {
      lines.add("limit.batch_loss_pct=" + dice.pick(List.of("2.0", "5", "12.5")));
    }
    if (dice.chance(30)) {
      lines.add("limit.revisions=" + dice.between(0, 2));
    }
    if (dice.chance(40)) {
      lines.add("tax_name=Tax");
      lines.add("tax_included=" + dice.pick(List.of("yes", "no")));
    }
    if (bills.chance(40)) {
      lines.add("number_from=" + bills.pick(List.of("2", "1001", "260000")));
    }
    return String.join("\n", lines) + "\n";
  }
}
