package gambrel.night;

import gambrel.files.export.ExportReader;
import gambrel.files.folder.ShopReader;
import gambrel.files.folder.ShopReading;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.shop.Shop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A shop folder as read.
 *
 * @param shop everything but the exports
 * @param exports the exports, in path order
 * @param notices what is wrong with the files
 */
public record Inputs(Shop shop, List<ExportFile> exports, List<Notice> notices) {
  /** Copies the lists. */
  public Inputs {
    exports = List.copyOf(exports);
    notices = List.copyOf(notices);
  }

  /**
   * Reads a shop folder.
   *
   * @throws RefusedException if it cannot be read
   */
  public static Inputs read(Path folder) throws RefusedException {
    return read(folder, Progress.NONE);
  }

  /**
   * As above, and reports to {@code progress}.
   *
   * @throws RefusedException if it cannot be read
   */
  public static Inputs read(Path folder, Progress progress) throws RefusedException {
    var reading = ShopReader.read(folder);
    if (reading instanceof ShopReading.Ok ok) {
      var exports = ExportReader.read(folder, ok.shop(), progress);
      var notices = new ArrayList<>(ok.notices());
      notices.addAll(exports.notices());
      return new Inputs(ok.shop(), exports.files(), notices);
    }
    throw new RefusedException(((ShopReading.Unreadable) reading).why());
  }
}
