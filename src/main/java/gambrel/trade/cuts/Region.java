package gambrel.trade.cuts;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Whose trade names and primal breaks the built-in trees follow. */
public enum Region {
  AU,
  UK,
  US;

  private final String id = name().toLowerCase(Locale.ROOT);

  /** The word used in the shop's files, in lower case. */
  public String id() {
    return id;
  }

  /** The region of that id, without regard to case or outer blanks; empty if there is none. */
  public static Optional<Region> of(String id) {
    return Arrays.stream(values()).filter(r -> r.id().equalsIgnoreCase(id.strip())).findFirst();
  }
}
