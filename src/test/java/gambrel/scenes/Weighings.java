package gambrel.scenes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Rows of an export from short lines, and the codes that they need. */
final class Weighings {
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
  private static final Set<String> RAIL = Set.of("hot", "cold", "aged");

  /** The first line of an export. */
  static final String HEADER = String.join(",", COLUMNS);

  private final UnaryOperator<String> moments;
  private final Map<String, String> codes = new TreeMap<>();
  private int ticket;

  /** Writes moments as {@code moments} says. */
  Weighings(UnaryOperator<String> moments) {
    this.moments = moments;
  }

  /** The row of a line {@code time body step item net column=value...}. */
  String row(String line) {
    var words = line.strip().split("\\s+");
    var cells = new LinkedHashMap<String, String>();
    String step = words[2];
    String item = blank(words[3]);
    cells.put("scale", RAIL.contains(step) ? "rail" : "bench");
    cells.put("ticket", String.valueOf(++ticket));
    cells.put("time", moments.apply(words[0]));
    cells.put("body", blank(words[1]));
    cells.put("net", blank(words[4]));
    if (!step.equals("-")) {
      cells.put("code", step + "." + item);
      codes.put(step + "." + item, step + "." + item + "," + item + "," + step);
    }
    for (int i = 5; i < words.length; i++) {
      int sign = words[i].indexOf('=');
      cells.put(words[i].substring(0, sign), words[i].substring(sign + 1));
    }
    if (!COLUMNS.containsAll(cells.keySet())) {
      throw new IllegalArgumentException(line);
    }
    var row = new ArrayList<String>();
    COLUMNS.forEach(column -> row.add(cells.getOrDefault(column, "")));
    return String.join(",", row);
  }

  private static String blank(String word) {
    return word.equals("-") ? "" : word;
  }

  /** Rows of {@code codes.csv}. */
  Collection<String> codes() {
    return codes.values();
  }
}
