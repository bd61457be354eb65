package gambrel.files.folder;

import gambrel.trade.notice.Notice;
import gambrel.trade.shop.Shop;
import java.util.List;

/** What came of reading a shop folder. */
public sealed interface ShopReading {
  /**
   * The folder could be read.
   *
   * @param shop what it says
   * @param notices what was left out or taken with a remark, in reading order
   */
  record Ok(Shop shop, List<Notice> notices) implements ShopReading {
    /** Copies the notices. */
    public Ok {
      notices = List.copyOf(notices);
    }
  }

  /**
   * The folder cannot be read, and no night can be run on it.
   *
   * @param why what is missing or wrong, as a sentence without a full stop
   */
  record Unreadable(String why) implements ShopReading {}
}
