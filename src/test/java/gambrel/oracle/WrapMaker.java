package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Exports of a scale without a ticket counter, in a folder whose layout gives an identity. */
final class WrapMaker {
  private static final String HEADER = "scale,ticket,time,body,code,net,pieces,status\n";

  private final ShopPlan plan;
  private final Dice dice;
  private final CodeBook codes;
  private int ticket;

  WrapMaker(ShopPlan plan, CodeBook codes) {
    this.plan = plan;
    this.codes = codes;
    dice = plan.dice;
  }

  void make(List<String> bodies, Map<String, String> files) {
    var identity = dice.pick(List.of("time,body,code,net", "time,body,code", "time, code, net"));
    files.put("exports/wrap/layout.properties", "identity=" + identity + "\n");
    var lines = new ArrayList<List<String>>();
    var again = new ArrayList<List<String>>();
    for (int i = dice.between(2, 6); i > 0; i--) {
      var line = line(dice.pick(bodies));
      int times = dice.chance(60) ? 1 : dice.between(2, 3);
      int other = dice.between(0, dice.chance(15) ? 4 : times);
      add(lines, line, times);
      add(again, line, other);
      if (dice.chance(12)) {
        lines.add(with(line, 6, "7"));
      } else if (times >= other && dice.chance(25)) {
        add(lines, with(line, 7, "void"), dice.between(1, 2));
      }
    }
    files.put("exports/wrap/a.csv", text(lines));
    if (dice.chance(70) && !again.isEmpty()) {
      files.put("exports/wrap/b.csv", text(again));
    }
  }

  private List<String> line(String body) {
    var time = plan.firstDay.plusDays(dice.between(2, 14)).atTime(dice.between(8, 17), 0);
    var item = dice.pick(List.of("mince", "trim", "liver"));
    var net = plan.wrapScale.read(plan.weight(dice.thousandths(400, 900))).toPlainString();
    var code = codes.code("pack", item);
    return List.of("wrap", "", Spoiler.iso(time), body, code, net, "", "");
  }

  private static void add(List<List<String>> lines, List<String> line, int times) {
    for (int i = 0; i < times; i++) {
      lines.add(line);
    }
  }

  private static List<String> with(List<String> line, int column, String value) {
    var changed = new ArrayList<>(line);
    changed.set(column, value);
    return changed;
  }

  /** Half of the time with a counter of the export's lines where a ticket would be. */
  private String text(List<List<String>> lines) {
    boolean counted = dice.chance(50);
    var text = new StringBuilder(HEADER);
    for (var line : lines) {
      var cells = counted ? with(line, 1, "" + ++ticket) : line;
      text.append(String.join(",", cells)).append('\n');
    }
    return text.toString();
  }
}
