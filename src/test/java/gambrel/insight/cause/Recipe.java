package gambrel.insight.cause;

import java.util.List;

/**
 * A way to cut a body: what it gives, in ten-thousandths of the weight into the boning room before
 * chance, and the usual weight of a pack in grams. Invented, after the usual build of the animals.
 *
 * @param species the species
 * @param hot grams on the rail, least and most
 * @param chill chill shrink in hundredths of a per cent, usual of the species
 * @param sides whether it hangs in two sides
 * @param parts what it gives
 */
record Recipe(String species, int[] hot, int chill, boolean sides, List<Part> parts) {
  /**
   * A part of the recipe.
   *
   * @param code step and item
   * @param share in ten-thousandths
   * @param pack usual grams of a pack or tub
   */
  record Part(String code, int share, int pack) {
    static Part of(String line) {
      var words = line.strip().split("\\s+");
      return new Part(words[0], Integer.parseInt(words[1]), Integer.parseInt(words[2]));
    }
  }

  private static Recipe of(
      String species, int least, int most, int chill, boolean sides, String parts) {
    return new Recipe(
        species,
        new int[] {least, most},
        chill,
        sides,
        parts.lines().filter(l -> !l.isBlank()).map(Part::of).toList());
  }

  private static final String BEEF =
      """
      pack.rump-steak 360 1100
      pack.topside-roast 420 1800
      pack.silverside-roast 380 1900
      pack.thick-flank-steak 330 1000
      pack.striploin-steak 330 900
      pack.tenderloin-steak 140 600
      pack.cube-roll-steak 260 900
      pack.shin-shank-meat 340 1200
      pack.brisket-roll 420 2000
      pack.chuck-steak 560 1300
      pack.blade-roast 420 1900
      pack.stewing-dice 500 1000
      """;

  private static final String LAMB =
      """
      pack.leg-chump-off 2400 2600
      pack.chump-chop 550 600
      pack.loin-chop 950 700
      pack.cutlet 800 600
      pack.forequarter-chop 1550 900
      pack.shank 520 450
      pack.neck-chop 330 700
      pack.mince 620 600
      bin.bone 1050 30000
      bin.fat 850 30000
      bin.waste 110 30000
      """;

  private static final String PORK =
      """
      pack.leg-roast 2200 2200
      pack.loin-chop 1250 1100
      pack.belly-slices 900 1000
      pack.spare-ribs 300 1000
      pack.collar-butt-steak 800 1000
      pack.shoulder-roast 1000 2100
      pack.hock 330 900
      """;

  /** All ways that a shop may cut. */
  static final List<Recipe> ALL =
      List.of(
          of(
              "beef",
              190_000,
              290_000,
              175,
              true,
              BEEF
                  + "pack.mince 2300 1000\n"
                  + "bin.bone 1640 22000\nbin.fat 640 22000\nbin.waste 60 20000"),
          of(
              "beef",
              190_000,
              290_000,
              175,
              true,
              BEEF
                  + "tub.trim 2300 18000\n"
                  + "bin.bone 1580 22000\nbin.fat 690 22000\nbin.waste 60 20000"),
          of("lamb", 18_000, 27_000, 260, false, LAMB),
          of(
              "pork",
              58_000,
              90_000,
              250,
              true,
              PORK
                  + "pack.mince 1150 900\n"
                  + "bin.bone 950 20000\nbin.fat 780 20000\nbin.waste 90 20000"),
          of(
              "pork",
              58_000,
              90_000,
              250,
              false,
              PORK
                  + "tub.trim 1150 9000\n"
                  + "bin.bone 1000 20000\nbin.fat 720 20000\nbin.waste 90 20000"),
          of(
              "goat",
              14_000,
              20_000,
              420,
              false,
              """
              pack.leg-chump-off 2400 2100
              pack.curry-pieces 4000 1000
              pack.shank 620 500
              pack.mince 900 800
              bin.bone 1750 20000
              bin.fat 160 20000
              bin.waste 80 20000
              """));
}
