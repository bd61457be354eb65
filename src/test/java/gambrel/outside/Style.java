package gambrel.outside;

import java.util.List;

/**
 * A way to cut a species. Shares are of the weight into the boning room, without what is lost. They
 * follow the cutting tests under references/yields (lamb of Kansas State Univ., pork of the 184 lb
 * carcass, beef of Oklahoma and of Braford steers) as far as these go, and are our own invention
 * beyond that.
 *
 * @param name the style
 * @param cuts what comes off the body, in the order in which it is weighed
 */
record Style(String name, List<Cut> cuts) {
  /**
   * One product of a style.
   *
   * @param item the item of the cut tree
   * @param step pack, tub or bin
   * @param share of the weight into the boning room
   * @param spread of the share between bodies, of the share
   * @param weighings how many tickets it makes; 0 if it goes by weight
   * @param grams of a ticket if it goes by weight
   */
  record Cut(String item, String step, double share, double spread, int weighings, double grams) {
    /** A cut that every body gives in the same number of packs. */
    static Cut packs(String item, double share, int weighings) {
      return new Cut(item, "pack", share, 0.06, weighings, 0);
    }

    /** A cut that is packed by weight. */
    static Cut packed(String item, double share, double grams) {
      return new Cut(item, "pack", share, 0.07, 0, grams);
    }

    /** Trim for a batch. */
    static Cut tub(double share) {
      return new Cut("trim", "tub", share, 0.12, 0, 16_000);
    }

    /** Bone or fat. */
    static Cut bin(String item, double share) {
      return new Cut(item, "bin", share, item.equals("fat") ? 0.16 : 0.06, 0, 21_000);
    }

    /** How many tickets a weight of this cut makes. */
    int tickets(double weight) {
      return weighings > 0 ? weighings : Math.max(1, (int) Math.round(weight / grams));
    }
  }

  private static final Style LAMB_CHOPS =
      new Style(
          "chops",
          List.of(
              Cut.packs("leg", 0.27, 2),
              Cut.packed("chump-chop", 0.06, 550),
              Cut.packed("loin-chop", 0.105, 600),
              Cut.packed("cutlet", 0.115, 550),
              Cut.packs("shoulder", 0.19, 2),
              Cut.packs("neck-chop", 0.045, 1),
              Cut.packs("breast-and-flap", 0.09, 2),
              Cut.packs("shank", 0.04, 1),
              Cut.tub(0.03),
              Cut.bin("bone", 0.05),
              Cut.bin("fat", 0.05)));

  private static final Style LAMB_BONED =
      new Style(
          "boned",
          List.of(
              Cut.packs("leg-boneless", 0.235, 2),
              Cut.packed("loin-chop", 0.10, 600),
              Cut.packed("cutlet", 0.11, 550),
              Cut.packs("shoulder-boneless", 0.15, 2),
              Cut.packed("stewing-dice", 0.06, 500),
              Cut.packed("mince", 0.10, 500),
              Cut.tub(0.05),
              Cut.bin("bone", 0.14),
              Cut.bin("fat", 0.06)));

  private static final Style PORK_ROASTS =
      new Style(
          "roasts",
          List.of(
              Cut.packed("leg-roast", 0.23, 2_500),
              Cut.packed("loin-chop", 0.15, 800),
              Cut.packed("belly", 0.13, 2_200),
              Cut.packed("collar-butt", 0.08, 1_900),
              Cut.packed("shoulder-roast", 0.11, 2_300),
              Cut.packs("hock", 0.045, 2),
              Cut.tub(0.08),
              Cut.bin("bone", 0.10),
              Cut.bin("fat", 0.08)));

  private static final Style PORK_BONED =
      new Style(
          "boned",
          List.of(
              Cut.packed("leg-boneless", 0.20, 2_000),
              Cut.packed("loin-steak", 0.11, 700),
              Cut.packed("belly-slices", 0.12, 900),
              Cut.packed("collar-butt-steak", 0.08, 700),
              Cut.packed("shoulder-dice", 0.08, 700),
              Cut.tub(0.13),
              Cut.bin("bone", 0.14),
              Cut.bin("fat", 0.10)));

  private static final Style BEEF_STEAKS =
      new Style(
          "steaks",
          List.of(
              Cut.packed("topside-roast", 0.055, 2_000),
              Cut.packed("silverside-roast", 0.05, 2_000),
              Cut.packed("thick-flank-steak", 0.045, 1_100),
              Cut.packed("rump-steak", 0.05, 1_100),
              Cut.packed("striploin-steak", 0.04, 1_000),
              Cut.packed("tenderloin", 0.016, 1_300),
              Cut.packed("cube-roll-steak", 0.03, 1_000),
              Cut.packed("chuck-steak", 0.055, 1_200),
              Cut.packed("blade-steak", 0.05, 1_200),
              Cut.packed("brisket", 0.055, 2_000),
              Cut.packed("osso-bucco", 0.035, 1_400),
              Cut.packed("short-ribs", 0.035, 1_500),
              Cut.packed("stewing-dice", 0.06, 1_000),
              Cut.tub(0.18),
              Cut.bin("bone", 0.165),
              Cut.bin("fat", 0.085)));

  private static final Style BEEF_MINCED =
      new Style(
          "minced",
          List.of(
              Cut.packed("topside-roast", 0.06, 2_200),
              Cut.packed("silverside-roast", 0.05, 2_200),
              Cut.packed("rump-steak", 0.055, 1_200),
              Cut.packed("striploin-steak", 0.045, 1_100),
              Cut.packed("tenderloin", 0.016, 1_300),
              Cut.packed("cube-roll-steak", 0.035, 1_100),
              Cut.packed("chuck-roast", 0.06, 1_800),
              Cut.packed("stewing-dice", 0.05, 1_000),
              Cut.tub(0.33),
              Cut.bin("bone", 0.19),
              Cut.bin("fat", 0.10)));

  private static final Style GOAT_PIECES =
      new Style(
          "pieces",
          List.of(
              Cut.packs("leg", 0.29, 2),
              Cut.packed("loin-chop", 0.12, 600),
              Cut.packs("shoulder", 0.22, 2),
              Cut.packs("neck-chop", 0.055, 1),
              Cut.packed("curry-pieces", 0.14, 1_000),
              Cut.packs("shank", 0.045, 1),
              Cut.tub(0.04),
              Cut.bin("bone", 0.075),
              Cut.bin("fat", 0.025)));

  /** The styles of a species. */
  static List<Style> of(Species species) {
    return switch (species) {
      case LAMB -> List.of(LAMB_CHOPS, LAMB_BONED);
      case PORK -> List.of(PORK_ROASTS, PORK_BONED);
      case BEEF -> List.of(BEEF_STEAKS, BEEF_MINCED);
      case GOAT -> List.of(GOAT_PIECES);
    };
  }
}
