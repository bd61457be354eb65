package gambrel.trade.cuts;

import gambrel.trade.measure.FileWord;
import java.util.Optional;

/** The regions whose trade names and primal breaks the built-in trees follow. */
public enum Region implements FileWord {
  AU,
  UK,
  US;

  /**
   * The region that a text names, without regard to case or outer blanks; empty if it names none.
   */
  public static Optional<Region> of(String text) {
    return FileWord.find(Region.class, text);
  }
}
