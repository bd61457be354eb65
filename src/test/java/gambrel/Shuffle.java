package gambrel;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/** Puts lists into a random order. */
public final class Shuffle {
  private Shuffle() {}

  /** Shuffles {@code list}, each order being as likely as any other. */
  public static void inPlace(List<?> list, SplittableRandom random) {
    for (int last = list.size() - 1; last > 0; last--) {
      Collections.swap(list, last, random.nextInt(last + 1));
    }
  }
}
