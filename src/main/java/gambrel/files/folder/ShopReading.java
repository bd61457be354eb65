package gambrel.files.folder;

import gambrel.trade.notice.Notice;
import gambrel.trade.shop.Shop;
import java.util.List;

/** The result of reading a shop folder. */
public sealed interface ShopReading {
  /**
   * A folder that could be read.
   *
   * @param shop the contents of the folder without its exports
   * @param notices rows that were left out or taken with a remark, in reading order
   */
  record Ok(Shop shop, List<Notice> notices) implements ShopReading {
    /** Copies the notices. */
    public Ok {
      notices = List.copyOf(notices);
    }
  }

  /**
   * A folder that cannot be read; no night can be run on it.
   *
   * @param why what is missing or wrong, as a sentence without a full stop
   */
  record Unreadable(String why) implements ShopReading {}
}
