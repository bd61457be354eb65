package gambrel.oracle;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Scale codes of a made-up shop, made as they are needed. */
final class CodeBook {
  /** Items that one code stands for, each in other species. */
  private static final List<String> SHARED = List.of("breast-and-flap|belly|brisket");

  private final Dice dice;
  private final Map<String, String> codes = new LinkedHashMap<>();
  private final Map<String, String> tares = new LinkedHashMap<>();
  private final StringBuilder csv =
      new StringBuilder("code,item,step,description,tare,tare_each,nominal\n");

  CodeBook(Dice dice) {
    this.dice = dice;
  }

  /**
   * A code for an item at a step, perhaps for items of other species too; some belong to a family
   * of codes that begin alike.
   */
  String code(String step, String item) {
    var items =
        SHARED.stream()
            .filter(shared -> List.of(shared.split("\\|")).contains(item))
            .findFirst()
            .orElse(item);
    return codes.computeIfAbsent(step + " " + items, key -> make(step, items));
  }

  private String make(String step, String item) {
    int number = 101 + codes.size();
    boolean family = dice.chance(15);
    var tare = step.equals("pack") ? "0.012" : "1.5";
    boolean tared = dice.chance(30);
    boolean each = tared && step.equals("pack");
    csv.append(family ? number + "-*" : number + "").append(',').append(item).append(',');
    csv.append(step).append(",,").append(tared ? tare : "").append(',');
    csv.append(each ? "yes" : "").append(",\n");
    var code = family ? number + "-" + dice.between(1, 9) : number + "";
    if (tared) {
      tares.put(code, tare);
    }
    return code;
  }

  /** A code for a test weight of a nominal weight. */
  String test(String nominal) {
    return codes.computeIfAbsent(
        "test " + nominal,
        key -> {
          var code = "T" + codes.size();
          csv.append(code).append(",,test,,,,").append(nominal).append('\n');
          return code;
        });
  }

  boolean isTared(String code) {
    return tares.containsKey(code);
  }

  String csv() {
    return csv.toString();
  }
}
