package gambrel.demo;

import java.util.Map;
import java.util.TreeMap;

/** What the shop makes of trim, legs and bellies. */
enum Product {
  /** Ground on the day, nothing in it. */
  MINCE("M", "851", 1_600, 0, 982, 994, 850, 1_150, ""),
  /** Filled on the day. */
  SAUSAGES(
      "S", "852", 1_600, 0, 970, 988, 500, 620, "rice flour; water; salt; spices; sulphites (223)"),
  /** Two weeks in brine and smoke; weighed brine is partly lost again. */
  HAM("H", "853", 2_400, 14, 948, 965, 1_900, 3_200, "water; salt; sugar; preservative 250"),
  /** A week in dry cure and smoke. */
  BACON("K", "854", 1_600, 8, 944, 968, 480, 760, "salt; sugar; preservative 250");

  final String letter;
  final String tub;
  final int tare;
  final int days;
  final int leastOut;
  final int mostOut;
  final int low;
  final int high;
  final String declared;

  /**
   * @param days until it is packed
   * @param leastOut of what went in, in thousandths
   * @param low grams of a pack
   */
  Product(
      String letter,
      String tub,
      int tare,
      int days,
      int leastOut,
      int mostOut,
      int low,
      int high,
      String declared) {
    this.letter = letter;
    this.tub = tub;
    this.tare = tare;
    this.days = days;
    this.leastOut = leastOut;
    this.mostOut = mostOut;
    this.low = low;
    this.high = high;
    this.declared = declared;
  }

  /** The code of its packs. */
  String pack(String species) {
    return switch (this) {
      case MINCE -> "701";
      case SAUSAGES -> species.equals("pork") ? "712" : "711";
      case HAM -> "721";
      case BACON -> "722";
    };
  }

  /** Its name on a page. */
  String named(String species) {
    String kind = species.equals("pork") ? "Pork" : "Beef";
    return switch (this) {
      case MINCE -> kind + " mince";
      case SAUSAGES -> kind + " sausages";
      case HAM -> "Smoked ham";
      case BACON -> "Smoked bacon";
    };
  }

  /** Code and thousandths of the meat of what is weighed in. */
  Map<String, Integer> added(Beast beast) {
    return switch (this) {
      case SAUSAGES -> new TreeMap<>(Map.of("861", 65, "862", 90));
      case HAM -> beast.is("brine") ? Map.of("863", 110) : Map.of();
      default -> Map.of();
    };
  }
}
