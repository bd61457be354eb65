package gambrel.bench;

import java.util.List;

/**
 * What a made-up beast is cut into: shares of the weight into the boning room, in ten-thousandths.
 */
final class BenchCuts {
  private BenchCuts() {}

  /**
   * One code of the scale.
   *
   * @param code as keyed
   * @param item of the cut tree
   * @param step where it goes
   * @param share of the weight into the boning room, in ten-thousandths
   * @param trays over which it is spread
   */
  record Cut(String code, String item, String step, int share, int trays) {}

  static final List<Cut> ALL =
      List.of(
          new Cut("301", "topside-roast", "pack", 450, 8),
          new Cut("302", "schnitzel", "pack", 250, 8),
          new Cut("303", "silverside-roast", "pack", 350, 6),
          new Cut("304", "corned-silverside", "pack", 200, 4),
          new Cut("305", "eye-round-roast", "pack", 130, 2),
          new Cut("306", "thick-flank-steak", "pack", 280, 8),
          new Cut("308", "rump-steak", "pack", 330, 10),
          new Cut("309", "striploin-steak", "pack", 290, 10),
          new Cut("310", "tenderloin-steak", "pack", 130, 6),
          new Cut("311", "flank-steak", "pack", 60, 2),
          new Cut("314", "shin-shank-meat", "pack", 280, 6),
          new Cut("320", "cube-roll-steak", "pack", 240, 10),
          new Cut("321", "short-ribs", "pack", 190, 6),
          new Cut("322", "chuck-steak", "pack", 480, 12),
          new Cut("323", "blade-roast", "pack", 420, 8),
          new Cut("324", "oyster-blade-steak", "pack", 160, 6),
          new Cut("327", "brisket-roll", "pack", 380, 6),
          new Cut("328", "stewing-dice", "pack", 370, 10),
          new Cut("501", "mince", "pack", 600, 12),
          new Cut("601", "trim", "tub", 900, 3),
          new Cut("901", "bone", "bin", 1890, 6),
          new Cut("902", "fat", "bin", 1160, 6),
          new Cut("903", "waste", "bin", 340, 4));

  /** Trays of a body. */
  static final int TRAYS = ALL.stream().mapToInt(Cut::trays).sum();
}
