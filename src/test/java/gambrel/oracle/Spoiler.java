package gambrel.oracle;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/** What goes wrong in a shop: voids, mistyped rows, wrong numbers, blanks. */
final class Spoiler {
  /** Bench windows that fill what is left blank. */
  final StringBuilder bench = new StringBuilder("scale,from,to,body,batch,customer,boner\n");

  private final ShopPlan plan;
  private final Dice dice;
  private final List<ExportLine> lines;
  private final List<String> bodies;

  Spoiler(ShopPlan plan, List<ExportLine> lines, List<String> bodies) {
    this.bodies = bodies;
    this.plan = plan;
    this.lines = lines;
    dice = plan.dice;
  }

  /** Before tickets are given: rows that belong to the day. */
  void spoilDay() {
    for (int i = dice.between(0, 3); i > 0; i--) {
      addWrongRow();
    }
    if (dice.chance(40)) {
      blankForBench();
    }
    if (dice.chance(40)) {
      dice.pick(lines).set("ticket", "none");
    }
    if (dice.chance(40)) {
      var line = dice.pick(lines);
      var zoned = line.time.atZone(ZoneId.of(plan.zone));
      line.set("time", iso(line.time) + zoned.getOffset());
    }
  }

  private void addWrongRow() {
    var line = dice.pick(lines).copy();
    switch (dice.between(1, 11)) {
      case 1 -> line.set("body", "NOBODY");
      case 2 -> line.set("code", "999");
      case 3 -> line.set("scale", "unknown");
      case 4 -> line.set("customer", "NOCUST");
      case 5 -> line.set("net", "-0.5");
      case 6 -> line.set("net", "").set("gross", "");
      case 7 -> line.set("gross", "50").set("tare", "1").set("net", "30");
      case 8 -> line.set("net", "99999");
      case 9 -> line.set("net", dice.pick(List.of("0", "0.000"))).set("gross", "").set("tare", "");
      case 10 -> {
        var batches = lines.stream().filter(l -> !l.get("batch").isEmpty()).toList();
        if (!batches.isEmpty()) {
          line = dice.pick(batches).copy().set("code", "999");
          line.set("body", dice.chance(70) ? "" : line.get("body"));
        }
      }
      default -> line.set("time", "yesterday");
    }
    lines.add(line);
  }

  /** Leaves the body out of a run of rows and says in bench.csv whose they are. */
  private void blankForBench() {
    var first = dice.pick(lines);
    var body = first.get("body");
    if (!bodies.contains(body) || !plan.benchScale.id().equals(first.get("scale"))) {
      return;
    }
    var to = first.time.plusMinutes(2);
    for (var line : lines) {
      boolean within = !line.time.isBefore(first.time) && !line.time.isAfter(to);
      if (within && line.get("scale").equals(first.get("scale")) && line.get("body").equals(body)) {
        line.set("body", "");
      }
    }
    bench.append(String.join(",", first.get("scale"), iso(first.time), iso(to), body));
    bench.append(",,,\n");
  }

  static String iso(LocalDateTime time) {
    var text = time.toString();
    return text.length() == 16 ? text + ":00" : text;
  }

  /**
   * After tickets are given: a ticket that is printed again some hours later, of another weight.
   *
   * @return a time between the two, or null
   */
  LocalDateTime weighAgainLater() {
    var line = dice.pick(lines);
    var later = line.time.plusHours(dice.between(1, 3));
    if (line.get("ticket").isEmpty()
        || line.get("time").equals("yesterday")
        || !later.toLocalDate().equals(line.time.toLocalDate())) {
      return null;
    }
    lines.add(line.at(later).set("net", "3.5").set("gross", "").set("tare", ""));
    return line.time.plusMinutes(30);
  }

  /** After tickets are given: weighings that were cancelled at the scale. */
  List<ExportLine> voids() {
    var added = new ArrayList<ExportLine>();
    for (int i = dice.between(0, 4); i > 0; i--) {
      var line = dice.pick(lines);
      if (line.get("ticket").isEmpty() || line.get("time").equals("yesterday")) {
        continue;
      }
      boolean spareWeighing = dice.chance(70);
      var wrong = spareWeighing ? spare(line) : line;
      if (spareWeighing) {
        added.add(wrong);
      }
      added.add(voiding(wrong, i));
    }
    return added;
  }

  private ExportLine spare(ExportLine line) {
    var net = new BigDecimal(dice.between(1, 40)).toPlainString();
    var wrong = line.copy().set("net", net).set("gross", "").set("tare", "");
    return wrong.set("ticket", "90000" + line.get("ticket"));
  }

  private ExportLine voiding(ExportLine wrong, int number) {
    var row = wrong.at(wrong.time.plusSeconds(dice.between(0, 90)));
    if (dice.chance(50)) {
      return row.set("status", "void");
    }
    row.set("ticket", "80000" + number + wrong.get("ticket"));
    return row.set("status", "void:" + wrong.get("ticket"));
  }
}
