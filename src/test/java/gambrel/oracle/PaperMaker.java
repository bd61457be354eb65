package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Who owns the bodies and what they are charged. */
final class PaperMaker {
  final StringBuilder bodies =
      new StringBuilder("body,species,class,killed,live_weight,customer,head,tags,mark,outcome\n");
  final StringBuilder shares = new StringBuilder("body,customer,share\n");
  final StringBuilder charges =
      new StringBuilder(
          "charge,description,basis,price,minimum,free,species,class,item,body,"
              + "hot_from,hot_to,tax_percent,from,to\n");
  final StringBuilder payments = new StringBuilder("customer,body,date,amount,note\n");

  private static final Map<String, String> PRICES =
      Map.of(
          "head", "85.00", "live", "0.1125", "hot", "0.35", "cold", "0.40", "boning", "1.105",
          "tub", "2.20", "packed", "0.333", "pack", "0.25", "day", "1.5", "share", "12.75");

  private final ShopPlan plan;
  private final Dice dice;

  PaperMaker(ShopPlan plan) {
    this.plan = plan;
    dice = plan.dice;
  }

  void add(BodyMaker body) {
    var killed = dice.chance(97) ? plan.date(body.killed) : "";
    boolean shared = plan.customers.size() > 2 && dice.chance(40);
    var owner = dice.chance(15) ? "" : dice.chance(5) ? "shop" : dice.pick(plan.customers);
    bodies.append(
        String.join(
            ",",
            body.id,
            body.species,
            dice.chance(50) ? "steer" : "",
            killed,
            dice.chance(90) ? body.live.toPlainString() : "",
            owner,
            body.head == 1 && dice.chance(70) ? "" : "" + body.head,
            String.join(" ", body.tags),
            "",
            body.outcome));
    bodies.append('\n');
    if (shared) {
      share(body.id);
    }
    if (dice.chance(20)) {
      pay(body, owner.isEmpty() ? dice.pick(plan.customers) : owner);
    }
  }

  private void share(String body) {
    var parts =
        dice.pick(
            List.of(
                List.of("1/2", "1/2"),
                List.of("1/3", "1/3", "1/3"),
                List.of("1 of 2", "25%", "0.25"),
                List.of("60%", "40%"),
                List.of("0.7", "30%"),
                List.of("2/3", "1/3"),
                List.of("1/2", "1/4")));
    var owners = new ArrayList<>(plan.customers);
    if (dice.chance(20)) {
      owners.set(dice.between(0, 1), "shop");
    }
    if (dice.chance(40) || !parts.equals(List.of("1/2", "1/4"))) {
      for (int i = 0; i < parts.size(); i++) {
        shares.append(String.join(",", body, owners.get(i), parts.get(i))).append('\n');
      }
    }
  }

  private void pay(BodyMaker body, String owner) {
    var date = plan.date(body.killed.plusDays(dice.between(0, 20)));
    var amount = plan.currency.equals("JPY") ? "50" : "50.25";
    payments.append(String.join(",", owner, body.id, date, amount, "")).append('\n');
    if (dice.chance(30)) {
      payments.append(String.join(",", owner, "", date, "10", "not for one body")).append('\n');
    }
  }

  void charge(List<String> ids) {
    var bases = new ArrayList<>(new java.util.TreeSet<>(PRICES.keySet()));
    for (int i = dice.between(0, 6); i > 0; i--) {
      var basis = dice.pick(bases);
      var item = List.of("hot", "cold", "boning").contains(basis) ? "side" : "mince";
      boolean items = dice.chance(15) && !List.of("head", "live", "day", "share").contains(basis);
      boolean band = dice.chance(15);
      boolean dated = dice.chance(20);
      charges.append(
          String.join(
              ",",
              "K" + i,
              "Charge " + i,
              basis,
              (dice.chance(15) ? "-" : "") + PRICES.get(basis),
              dice.chance(20) ? "" + dice.between(1, 60) : "",
              dice.chance(15) ? "" + dice.between(1, 20) : "",
              dice.chance(20) ? dice.pick(plan.species) : "",
              dice.chance(8) ? "steer" : "",
              items ? item : "",
              dice.chance(8) ? dice.pick(ids) : "",
              band && dice.chance(70) ? "" + dice.between(10, 100) : "",
              band ? "" + dice.between(101, 400) : "",
              dice.chance(50) ? dice.pick(List.of("10", "20", "5.5")) : "",
              dated ? plan.date(plan.firstDay.plusDays(dice.between(0, 8))) : "",
              dated ? plan.date(plan.firstDay.plusDays(dice.between(9, 20))) : ""));
      charges.append('\n');
    }
  }

  /** What a price list and payments have besides: weight bands, one-offs, hides, deposits. */
  void bill(List<String> ids, Dice more) {
    var limit = more.pick(List.of("25", "60", "180.5"));
    var tax = more.pick(List.of("", "0", "10.0", "20", "5.5"));
    price("W,Small,head,42.50,,,,,,,," + limit + "," + tax + ",,");
    price("W,Large,head,85.00,,,,,,," + limit + ",," + tax + ",,");
    price("O,+Vacuum packs,pack,0.45,12,3,,,,%s,,,%s,,".formatted(more.pick(ids), tax));
    price("Z,Labels,pack,%s,,,,,,,,,%s,,".formatted(more.pick(List.of("0", "0.0004")), tax));
    price("Z,Label,head,0.01,,,,,,,,,%s,,".formatted(tax));
    price("D,Hanging,day,2.75,%d,7,,,,,,,%s,,".formatted(more.between(1, 4), tax));
    if (more.chance(50)) {
      var hide = more.pick(List.of("-12.335", "-64.5", "-250"));
      price("H,Hide,head,%s,,,%s,,,,,,%s,,".formatted(hide, more.pick(plan.species), tax));
    }
    for (int i = more.between(1, 5); i > 0; i--) {
      var body = more.chance(60) ? more.pick(ids) : "";
      var date = plan.date(plan.firstDay.plusDays(more.between(-3, 25)));
      var amount = more.pick(List.of("15", "40", "150", "400", "-20"));
      payments.append(String.join(",", more.pick(plan.customers), body, date, amount, ""));
      payments.append('\n');
    }
  }

  private void price(String line) {
    charges.append(line).append('\n');
  }
}
