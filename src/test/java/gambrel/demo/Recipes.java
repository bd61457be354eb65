package gambrel.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How the shop cuts. Shares are in ten-thousandths of the weight into the boning room and rest on
 * the published primal shares that {@code DemoShopTest} names; they need not add up.
 */
final class Recipes {
  private static final String LAMB_ENDS =
      """
      402 550 PACK 500-800 4-6
      403 950 PACK 600-900 5-7
      404 800 PACK 500-800 6-8
      408 520 PACK 700-1100 2-2
      409 280 PACK 500-900
      851 550 TRIM
      801 1000 BIN
      802 740 BIN
      804 190 BIN
      803 80 BIN
      """;

  private static final String LAMB_ROASTS =
      "401 2400 EACH 2-2 1-1\n406 1550 EACH 2-2 1-1\n410 400 EACH 2-2 1-1\n" + LAMB_ENDS;

  private static final String LAMB_CHOPS =
      "401 2400 EACH 2-2 1-1\n407 1550 PACK 700-1100 4-6\n410 400 EACH 2-2 1-1\n" + LAMB_ENDS;

  private static final String PORK_FORE =
      """
      502 1150 PACK 900-1400 4-5
      503 500 PACK 1300-2000 1-1
      505 300 PACK 800-1300
      506 750 PACK 800-1200 3-4
      507 900 PACK 1600-2600 1-1
      508 90 EACH 1-1 2-2
      509 330 EACH 2-2 2-2
      851 1150 TRIM
      801 950 BIN
      802 750 BIN
      806 480 BIN
      803 85 BIN
      """;

  private static final String PORK_FRESH =
      "501 2200 PACK 1700-2800 1-1\n504 900 PACK 800-1200 5-7\n" + PORK_FORE;

  private static final String PORK_CURED =
      "853 2200 CURE 6000-11000\n504 900 PACK 800-1200 5-7\n" + PORK_FORE;

  private static final String GOAT =
      """
      401 2400 EACH 2-2 1-1
      411 4000 PACK 900-1300
      408 620 PACK 600-1100 2-2
      851 900 TRIM
      801 1750 BIN
      802 160 BIN
      803 80 BIN
      """;

  private static final String GAME =
      """
      601 2500 PACK 1300-2200 1-1
      602 720 PACK 500-900 1-2
      603 1400 PACK 800-1200
      604 560 PACK 900-1600 2-2
      851 1700 TRIM
      801 2050 BIN
      803 260 BIN
      """;

  private static final Map<String, String> BY_STYLE =
      Map.ofEntries(
          Map.entry("boneless", BeefRecipes.BONELESS),
          Map.entry("plain", BeefRecipes.PLAIN),
          Map.entry("tbone", BeefRecipes.TBONE),
          Map.entry("mincer", BeefRecipes.MINCER),
          Map.entry("counter", BeefRecipes.COUNTER),
          Map.entry("lamb", LAMB_ROASTS),
          Map.entry("chops", LAMB_CHOPS),
          Map.entry("fresh", PORK_FRESH),
          Map.entry("cured", PORK_CURED),
          Map.entry("goat", GOAT),
          Map.entry("game", GAME));

  private Recipes() {}

  /** The parts that a body is cut into, hindquarter first. */
  static List<Part> of(Beast beast) {
    var parts = new ArrayList<Part>();
    BY_STYLE.get(beast.style()).lines().map(Part::of).forEach(parts::add);
    if (beast.is("bacon")) {
      parts.replaceAll(p -> p.code().equals("504") ? Part.of("854 900 CURE 3000-9000") : p);
    }
    if (beast.is("dog") || beast.is("bones")) {
      String code = beast.is("dog") ? "329" : "330";
      parts.replaceAll(p -> p.code().equals("801") ? p.share(p.share() - 220) : p);
      parts.add(Part.of(code + " 220 PACK 1500-2500"));
    }
    if (beast.is("trotters")) {
      parts.add(Part.of("510 170 EACH 2-2 2-2"));
    }
    return parts.stream().map(p -> fatness(p, beast)).toList();
  }

  private static Part fatness(Part part, Beast beast) {
    boolean fat = part.code().equals("802") && beast.species().equals("beef");
    return fat ? part.share(part.share() * (60 + 4 * Integer.parseInt(beast.fat())) / 100) : part;
  }
}
