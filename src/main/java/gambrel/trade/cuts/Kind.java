package gambrel.trade.cuts;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What an item counts as when weights are summed. */
public enum Kind {
  /** The whole body, its sides and quarters: what hangs. */
  CARCASE,
  /** A piece to be broken further, not normally packed. */
  PIECE,
  /** A cut that goes home, on or off the bone. */
  MEAT,
  /** Boneless trimmings; counted as meat when packed. */
  TRIM,
  BONE,
  FAT,
  WASTE,
  /** Taken out at dressing and never hung: outside take-home and loss. */
  OFFAL,
  /** Water, seasoning or bought-in fat put into a batch. */
  ADDED;

  private final String id = name().toLowerCase(Locale.ROOT);

  /** The word used in the shop's files, in lower case. */
  public String id() {
    return id;
  }

  /** The kind of that id, without regard to case or outer blanks; empty if there is none. */
  public static Optional<Kind> of(String id) {
    return Arrays.stream(values()).filter(k -> k.id().equalsIgnoreCase(id.strip())).findFirst();
  }
}
