package gambrel.oracle;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** Puts weights on scales: export lines in one of the forms a row may have. */
final class Weigher {
  final List<ExportLine> lines = new ArrayList<>();
  final CodeBook codes;

  private final ShopPlan plan;
  private final Dice dice;
  private LocalDateTime clock;

  Weigher(ShopPlan plan) {
    this.plan = plan;
    dice = plan.dice;
    codes = new CodeBook(dice);
  }

  /** Goes to a time of day; every weighing moves the clock on a little. */
  void goTo(LocalDate day, int hour) {
    clock = day.atTime(hour, dice.between(0, 59));
  }

  LocalDateTime clock() {
    return clock;
  }

  /** Weighs something of a body and returns the line for whatever else is to be keyed. */
  ExportLine weigh(SimScale scale, String body, String step, String item, BigDecimal weight) {
    if (dice.chance(95)) {
      clock = clock.plusSeconds(dice.between(5, 200));
    }
    var line = new ExportLine(scale.id(), clock).set("body", body);
    line.set("code", codes.code(step, item));
    if (dice.chance(15)) {
      line.set("pieces", "" + dice.between(1, 4));
    }
    put(line, scale, weight.max(BigDecimal.ZERO));
    lines.add(line);
    return line;
  }

  void test(SimScale scale, BigDecimal nominal, boolean good) {
    clock = clock.plusSeconds(dice.between(5, 200));
    var line = new ExportLine(scale.id(), clock).set("code", codes.test(nominal.toPlainString()));
    var shown = scale.read(nominal);
    var off = scale.division().multiply(new BigDecimal(good ? 0 : dice.between(1, 10)));
    line.set("net", shown.add(off).toPlainString());
    lines.add(line);
  }

  private void put(ExportLine line, SimScale scale, BigDecimal weight) {
    var net = scale.read(weight);
    var tare = scale.division().multiply(new BigDecimal(dice.between(1, 40)));
    int form = dice.between(1, 100);
    var factor = BigDecimal.ONE;
    if (form > 90) {
      line.set("unit", scale.unit().equals("kg") ? "g" : "oz");
      factor = scale.unit().equals("kg") ? new BigDecimal(1000) : new BigDecimal(16);
    } else if (form > 85) {
      line.set("unit", scale.unit());
    }
    if (form % 10 == 0 && codes.isTared(line.get("code"))) {
      set(line, "gross", net.add(scale.read(new BigDecimal("1.6"))), factor);
    } else if (form % 10 == 1) {
      set(line, "gross", net.add(tare), factor);
      set(line, "tare", tare, factor);
    } else {
      if (form % 10 == 2) {
        set(line, "gross", net.add(tare), factor);
        set(line, "tare", tare, factor);
      }
      set(line, "net", net, factor);
    }
  }

  private static void set(ExportLine line, String column, BigDecimal value, BigDecimal factor) {
    line.set(column, value.multiply(factor).toPlainString());
  }

  /** A share of a weight of the shop's. */
  BigDecimal part(BigDecimal weight, int from, int to) {
    return weight.multiply(dice.thousandths(from, to));
  }

  ShopPlan plan() {
    return plan;
  }
}
