package gambrel.demo;

import java.util.ArrayList;
import java.util.List;

/** Fills packs: nearly alike, and all of the meat in them. */
final class Packs {
  private Packs() {}

  /** Packs of about low to high grams; a single smaller one where there is not enough. */
  static List<Long> of(long grams, int low, int high, Dice dice) {
    long middle = (low + high) / 2L;
    return split(grams, Math.max(1, (int) ((grams + middle / 2) / middle)), dice);
  }

  /** So many packs. */
  static List<Long> split(long grams, int count, Dice dice) {
    var packs = new ArrayList<Long>();
    long rest = grams;
    for (int left = count; left > 1; left--) {
      long pack = dice.vary(rest / left, 110);
      packs.add(pack);
      rest -= pack;
    }
    packs.add(rest);
    return packs;
  }
}
