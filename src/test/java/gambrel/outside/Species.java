package gambrel.outside;

import java.util.List;
import java.util.Locale;

/**
 * What the rooms cut. Dressing percentages and chill shrinks lie in the ranges of
 * references/yields; live weights, spreads between bodies and drying on the rail are our own.
 */
enum Species {
  LAMB('L', 46, 3.5, 49, 1.3, 2.5, 0.40, 1.05, 0.22, 1, 3, List.of("lamb", "lamb", "hogget")),
  BEEF('B', 470, 35, 54, 1.1, 1.8, 0.22, 0.9, 0.14, 7, 11, List.of("steer", "heifer", "cow")),
  PORK('P', 95, 7, 74, 1.0, 2.4, 0.30, 0.85, 0.20, 1, 3, List.of("baconer")),
  GOAT('G', 38, 3, 47, 1.3, 3.6, 0.45, 1.2, 0.25, 1, 2, List.of("kid"));

  /** First letter of the ids. */
  final char letter;

  /** Mean live weight in kilograms. */
  final double live;

  /** Spread of the live weight in kilograms. */
  final double liveSpread;

  /** Mean hot weight in per cent of live. */
  final double dressing;

  /** Spread of the dressing percentage. */
  final double dressingSpread;

  /** Mean chill shrink in per cent of hot. */
  final double chill;

  /** Spread of the chill shrink. */
  final double chillSpread;

  /** Mean bench loss in per cent of what goes into the boning room. */
  final double loss;

  /** Drying on the rail in per cent a day. */
  final double drying;

  /** Fewest days from the cold weighing to the block. */
  final int hungFrom;

  /** Most days from the cold weighing to the block. */
  final int hungTo;

  /** The classes, each as likely. */
  final List<String> classes;

  Species(
      char letter,
      double live,
      double liveSpread,
      double dressing,
      double dressingSpread,
      double chill,
      double chillSpread,
      double loss,
      double drying,
      int hungFrom,
      int hungTo,
      List<String> classes) {
    this.letter = letter;
    this.live = live;
    this.liveSpread = liveSpread;
    this.dressing = dressing;
    this.dressingSpread = dressingSpread;
    this.chill = chill;
    this.chillSpread = chillSpread;
    this.loss = loss;
    this.drying = drying;
    this.hungFrom = hungFrom;
    this.hungTo = hungTo;
    this.classes = classes;
  }

  /** The id of the species in the shop's files. */
  String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
