package gambrel.trade.cuts;

import java.util.List;

/** What ids begin with that say which side of a body a part is of. */
public final class SideLabels {
  /** Each of them. */
  public static final List<String> ALL = List.of("left-", "right-");

  private SideLabels() {}

  /** The id of a part, whichever side it is of. */
  public static String plain(String item) {
    for (String label : ALL) {
      if (item.startsWith(label)) {
        return item.substring(label.length());
      }
    }
    return item;
  }
}
