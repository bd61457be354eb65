package gambrel.trade.cuts;

import java.util.List;

/** The beginnings of item ids that name the side of a body. */
public final class SideLabels {
  /** Both labels. */
  public static final List<String> ALL = List.of("left-", "right-");

  private SideLabels() {}

  /** The id of a part without its side label. */
  public static String plain(String item) {
    for (String label : ALL) {
      if (item.startsWith(label)) {
        return item.substring(label.length());
      }
    }
    return item;
  }
}
