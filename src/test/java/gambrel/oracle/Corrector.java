package gambrel.oracle;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/** Corrections over rows that are already laid out in files. */
final class Corrector {
  final StringBuilder csv = new StringBuilder("scale,ticket,date,field,value,by,on,reason\n");

  private final ShopPlan plan;
  private final Dice dice;
  private final ExportBook book;
  private int seconds;

  Corrector(ShopPlan plan, ExportBook book) {
    this.plan = plan;
    this.book = book;
    dice = plan.dice;
  }

  void correct(List<String> bodies) {
    for (int i = dice.between(0, 4); i > 0; i--) {
      var file = dice.pick(new ArrayList<>(book.files.keySet()));
      var lines = book.files.get(file);
      int at = dice.between(0, lines.size() - 1);
      var line = lines.get(at);
      if (!line.get("time").equals("yesterday") && line.get("status").isEmpty()) {
        one(line, file, at + 2, bodies);
      }
    }
    if (dice.chance(25)) {
      run(bodies);
    }
  }

  private void one(ExportLine line, String file, int number, List<String> bodies) {
    boolean place = line.get("ticket").isEmpty() || dice.chance(35);
    var ticket = place ? file + ":" + number : line.get("ticket");
    var day = dice.chance(50) ? plan.date(line.time.toLocalDate()) : "";
    switch (dice.between(1, 5)) {
      case 1 -> add(line, ticket, day, "status", "void");
      case 2 -> add(line, ticket, day, "body", dice.pick(bodies));
      case 3 -> {
        add(line, ticket, day, "net", dice.between(1, 30) + ".5");
        add(line, ticket, day, "gross", "");
      }
      case 4 -> add(line, ticket, day, "customer", dice.pick(plan.customers));
      default -> add(line, ticket, day, "pieces", "" + dice.between(1, 6));
    }
  }

  private void run(List<String> bodies) {
    var lines = book.files.values().iterator().next();
    var line = dice.pick(lines);
    if (line.get("ticket").isEmpty() || line.get("body").isEmpty()) {
      return;
    }
    long first = Long.parseLong(line.get("ticket"));
    long last = first + dice.between(1, 3);
    add(line, first + "-" + last, plan.date(line.time.toLocalDate()), "body", dice.pick(bodies));
  }

  /** Each has its own second, so that the latest is never in doubt. */
  private void add(ExportLine line, String ticket, String day, String field, String value) {
    LocalDateTime on = line.time.plusDays(dice.between(0, 3)).plusHours(4).plusSeconds(++seconds);
    csv.append(
        String.join(
            ",", line.get("scale"), ticket, day, field, value, "AB", Spoiler.iso(on), "mistake"));
    csv.append('\n');
  }
}
