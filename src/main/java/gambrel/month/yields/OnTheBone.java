package gambrel.month.yields;

import java.util.Set;

/**
 * The built-in items that go home with bone in them, as is common practice of the trade. An item that
 * a shop adds counts as boneless.
 */
public final class OnTheBone {
  private static final Set<String> ITEMS =
      Set.of(
          // Cattle.
          "t-bone", "porterhouse-t-bone", "striploin-bone-in", "striploin-steak-bone-in",
          "wing-rib", "short-loin", "rump-steak-bone-in", "rib-set", "op-rib", "rib-eye-bone-in",
          "back-ribs", "short-ribs", "spare-ribs", "chuck-square-cut", "chuck-blade-bone-in",
          "chuck-roast-bone-in", "chuck-short-ribs", "hind-shank", "fore-shank", "shin-shank",
          "osso-bucco", "neck",
          // Small stock, pigs and game.
          "leg", "leg-chump-on", "leg-chump-off", "leg-half-fillet-end", "leg-half-shank-end",
          "leg-roast", "ham", "haunch", "haunch-roast", "hind-hock", "ham-hock", "chump",
          "chump-chop", "saddle", "middle", "loin", "loin-roast", "loin-chop", "loin-chop-double",
          "rack", "rack-frenched", "cutlet", "country-style-ribs", "ribs", "shoulder",
          "shoulder-square-cut", "shoulder-oyster-cut", "shoulder-half", "shoulder-roast",
          "forequarter-chop", "picnic", "fore-hock", "hock", "shank", "neck-chop",
          "breast-and-flap", "chops", "curry-pieces");

  private OnTheBone() {}

  /** Whether an item has bone in it when it is packed under its own name. */
  public static boolean is(String item) {
    return ITEMS.contains(item);
  }
}
