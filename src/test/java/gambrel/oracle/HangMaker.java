package gambrel.oracle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;

/** A body on the rail: hot, cold and aged weighings of the carcase, its sides or its quarters. */
final class HangMaker {
  private static final List<String> HOT_FORMS = List.of("carcase", "sides", "handed sides");
  private static final List<String> COLD_FORMS =
      List.of("same", "same", "sides", "quarters", "handed sides", "handed quarters", "both");

  /** The day of the last weighing on the rail. */
  LocalDate lastDay;

  private final Weigher weigher;
  private final BodyMaker body;
  private final Dice dice;
  private final ShopPlan plan;
  private BigDecimal weight;

  HangMaker(Weigher weigher, BodyMaker body, BigDecimal weight) {
    this.weigher = weigher;
    this.body = body;
    this.weight = weight;
    plan = weigher.plan();
    dice = plan.dice;
    lastDay = body.killed;
  }

  /** Hangs it and returns what it weighs when it comes off. */
  BigDecimal run() {
    if (dice.chance(5)) {
      return weight;
    }
    var form = dice.pick(HOT_FORMS);
    weigher.goTo(body.killed, 8);
    if (plan.takes("hot") || dice.chance(10)) {
      parts("hot", form);
      surplus("hot", form);
    }
    killDay();
    if (plan.takes("cold")) {
      weight = weight.multiply(dice.thousandths(970, 990));
      lastDay = body.killed.plusDays(dice.between(1, 2));
      weigher.goTo(lastDay, 7);
      var next = dice.pick(COLD_FORMS);
      form = next.equals("same") ? form : next;
      parts("cold", form);
      surplus("cold", form);
    }
    if (dice.chance(plan.takes("aged") ? 90 : 30)) {
      age(form);
    }
    return weight;
  }

  private void killDay() {
    if (dice.chance(15)) {
      // Weighed on the way and packed later: it moves no mass.
      var trim = weigher.part(weight, 5, 20);
      weigher.weigh(plan.benchScale, body.keyed(), "tub", "trim", trim);
    }
    if (dice.chance(50)) {
      var item = dice.pick(List.of("liver", "heart", "kidney"));
      weigher.weigh(plan.packScale, body.keyed(), "pack", item, weigher.part(weight, 8, 20));
    }
    if (dice.chance(20)) {
      var trim = weigher.part(weight, 2, 12);
      weight = weight.subtract(trim);
      var step = dice.pick(List.of("bin", "bin", "pack"));
      weigher.weigh(plan.benchScale, body.keyed(), step, "kidney-fat", trim);
    }
  }

  private void age(String form) {
    if (dice.chance(25)) {
      weigher.goTo(lastDay.plusDays(1), 9);
      var trim = weigher.part(weight, 2, 10);
      weight = weight.subtract(trim);
      weigher.weigh(plan.benchScale, body.keyed(), "bin", "fat", trim);
    }
    boolean cut = form.endsWith("quarters") && dice.chance(60);
    if (cut) {
      cutMeanwhile();
    }
    for (int day = dice.between(1, 2); day > 0; day--) {
      weight = weight.multiply(dice.thousandths(960, 995));
      lastDay = lastDay.plusDays(dice.between(3, 8));
      weigher.goTo(lastDay, 7);
      if (!cut && dice.chance(60)) {
        parts("aged", form);
        surplus("aged", form);
      } else {
        some("aged", form);
      }
      if (day > 1 && dice.chance(25)) {
        some("aged", form); // some parts twice on one day
      }
    }
  }

  /** Cuts from some quarters while others age. */
  private void cutMeanwhile() {
    weigher.goTo(lastDay.plusDays(1), 13);
    for (var quarter : List.of("forequarter", "hindquarter")) {
      var cut = weigher.part(weight, 10, 60);
      weight = weight.subtract(cut);
      weigher.weigh(plan.packScale, body.keyed(), "pack", dice.pick(body.under(quarter)), cut);
    }
    if (dice.chance(50)) {
      var fat = weigher.part(weight, 2, 10);
      weight = weight.subtract(fat);
      weigher.weigh(plan.benchScale, body.keyed(), "bin", "fat", fat);
    }
  }

  /** Now and then a quarter, or one of each, of what hangs already as a greater part. */
  private void surplus(String step, String form) {
    if (form.endsWith("quarters") || form.equals("both") || !dice.chance(5)) {
      return;
    }
    var hand = form.equals("handed sides") ? "left-" : "";
    rail(step, hand + "hindquarter", weigher.part(weight, 230, 250), body.head);
    if (dice.chance(40) && !form.equals("handed sides")) {
      rail(step, "forequarter", weigher.part(weight, 230, 250), body.head);
    }
  }

  private void parts(String step, String form) {
    switch (form) {
      case "carcase" -> whole(step);
      case "sides" -> pieces(step, List.of("side", "side"), 500);
      case "handed sides" -> pieces(step, List.of("left-side", "right-side"), 500);
      case "quarters" ->
          pieces(step, List.of("forequarter", "hindquarter", "forequarter", "hindquarter"), 250);
      case "handed quarters" -> pieces(step, HANDED_QUARTERS, 250);
      default -> {
        parts(step, "sides");
        parts(step, "quarters");
      }
    }
  }

  private static final List<String> HANDED_QUARTERS =
      List.of("left-forequarter", "left-hindquarter", "right-forequarter", "right-hindquarter");

  private void some(String step, String form) {
    switch (form) {
      case "carcase" -> whole(step);
      case "handed sides" -> pieces(step, List.of("left-side"), 500);
      case "handed quarters" -> pieces(step, HANDED_QUARTERS.subList(0, dice.between(1, 3)), 250);
      case "sides" -> pieces(step, List.of("side"), 500);
      default -> pieces(step, List.of("hindquarter", "hindquarter"), 240);
    }
  }

  private void whole(String step) {
    if (body.head == 1 || dice.chance(50)) {
      rail(step, "carcase", weight, body.head);
      return;
    }
    var each = weight.divide(new BigDecimal(body.head), MathContext.DECIMAL64);
    for (int i = 0; i < body.head; i++) {
      rail(step, "carcase", each, 1);
    }
  }

  private void pieces(String step, List<String> parts, int perMille) {
    boolean together = parts.size() == 2 && parts.get(0).equals(parts.get(1)) && dice.chance(25);
    if (together) {
      rail(step, parts.get(0), weigher.part(weight, 2 * perMille, 2 * perMille), 2 * body.head);
      return;
    }
    for (var part : parts) {
      rail(step, part, weigher.part(weight, perMille - 5, perMille + 5), body.head);
    }
  }

  private void rail(String step, String part, BigDecimal of, int number) {
    if (dice.chance(2)) {
      return;
    }
    var line = weigher.weigh(plan.railScale, body.keyed(), step, part, of);
    line.set("pieces", number > 1 || dice.chance(10) ? "" + number : "");
    if (dice.chance(2)) {
      weigher.weigh(plan.railScale, body.keyed(), step, part, of).set("pieces", "");
    }
  }
}
