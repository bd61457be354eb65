package gambrel.oracle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Gives tickets, spreads lines over files, exports some of them twice. */
final class ExportBook {
  private static final List<String> COLUMNS =
      List.of(
          "scale",
          "ticket",
          "time",
          "body",
          "code",
          "net",
          "gross",
          "tare",
          "unit",
          "pieces",
          "operator",
          "batch",
          "customer",
          "status");

  /** Lines by file; a line's number is its place plus two. */
  final Map<String, List<ExportLine>> files = new TreeMap<>();

  private final Dice dice;

  ExportBook(Dice dice) {
    this.dice = dice;
  }

  /** Tickets by scale in order of time; on some scales the numbers come round again. */
  void number(List<ExportLine> lines) {
    int round = dice.chance(20) ? 90 : 100_000;
    Map<String, Integer> next = new HashMap<>();
    lines.sort(Comparator.comparing(line -> line.time));
    for (var line : lines) {
      if (line.get("ticket").equals("none")) {
        line.set("ticket", "");
      } else {
        int ticket = next.merge(line.get("scale"), 1, Integer::sum);
        line.set("ticket", "" + (1 + (ticket - 1) % round));
      }
    }
  }

  void spread(List<ExportLine> lines) {
    lines.sort(Comparator.comparing(line -> line.time));
    int manner = dice.between(1, 3);
    for (var line : lines) {
      var file =
          switch (manner) {
            case 1 -> "exports/all.csv";
            case 2 -> "exports/by-scale/" + line.get("scale") + ".csv";
            default -> "exports/" + line.time.toLocalDate() + ".csv";
          };
      files.computeIfAbsent(file, f -> new ArrayList<>()).add(line);
    }
    if (dice.chance(50)) {
      exportAgain(lines);
    }
  }

  private void exportAgain(List<ExportLine> lines) {
    int from = dice.between(0, lines.size() - 1);
    int to = Math.min(lines.size(), from + dice.between(1, 30));
    var again = new ArrayList<ExportLine>();
    for (var line : lines.subList(from, to)) {
      var copy = line.copy().set("operator", "again");
      if (Num.isNumber(line.get("net")) && dice.chance(20)) {
        copy.set("net", line.get("net") + (line.get("net").contains(".") ? "0" : ".0"));
      } else if (dice.chance(4)) {
        copy.set("net", dice.between(1, 9) + "");
      }
      again.add(copy);
    }
    files.put(dice.pick(List.of("exports/again.csv", "exports/zz/again.csv")), again);
  }

  static String csv(List<ExportLine> lines, Dice dice) {
    var columns = new ArrayList<>(COLUMNS);
    columns.add(dice.between(0, columns.size()), "lane");
    var text = new StringBuilder(String.join(",", columns)).append('\n');
    for (var line : lines) {
      text.append(String.join(",", columns.stream().map(line::get).toList())).append('\n');
    }
    return text.toString();
  }
}
