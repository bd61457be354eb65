package gambrel.trade.cuts;

import gambrel.trade.measure.FileWord;
import java.util.Optional;

/** The species of bodies. Lamb covers hogget and mutton, game covers deer and similar animals. */
public enum Species implements FileWord {
  BEEF,
  VEAL,
  LAMB,
  PORK,
  GOAT,
  GAME;

  /**
   * The species that a text names, without regard to case or outer blanks; empty if it names none.
   */
  public static Optional<Species> of(String text) {
    return FileWord.find(Species.class, text);
  }
}
