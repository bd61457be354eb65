package gambrel.trade.cuts;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What kind of animal a body is. Lamb covers hogget and mutton, game covers deer and the like. */
public enum Species {
  BEEF,
  VEAL,
  LAMB,
  PORK,
  GOAT,
  GAME;

  private final String id = name().toLowerCase(Locale.ROOT);

  /** The word used in the shop's files, in lower case. */
  public String id() {
    return id;
  }

  /** The species of that id, without regard to case or outer blanks; empty if there is none. */
  public static Optional<Species> of(String id) {
    return Arrays.stream(values()).filter(s -> s.id().equalsIgnoreCase(id.strip())).findFirst();
  }
}
