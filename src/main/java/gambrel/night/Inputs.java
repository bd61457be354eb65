package gambrel.night;

import gambrel.files.export.ExportReader;
import gambrel.files.folder.MailSettingsReader;
import gambrel.files.folder.ShopReader;
import gambrel.files.folder.UnreadableShop;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.sending.MailSettings;
import gambrel.trade.shop.Shop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A shop folder as read.
 *
 * @param shop everything but the exports
 * @param exports the exports, in path order
 * @param notices what is wrong with the files
 * @param mail how statements are mailed; empty if they are not
 */
public record Inputs(
    Shop shop, List<ExportFile> exports, List<Notice> notices, Optional<MailSettings> mail) {
  /** Copies the lists. */
  public Inputs {
    exports = List.copyOf(exports);
    notices = List.copyOf(notices);
  }

  /** A shop folder without mail settings. */
  public Inputs(Shop shop, List<ExportFile> exports, List<Notice> notices) {
    this(shop, exports, notices, Optional.empty());
  }

  /** Every row of the exports, in order. */
  Stream<ExportRow> rows() {
    return exports.stream().flatMap(file -> file.rows().stream());
  }

  /**
   * Reads a shop folder.
   *
   * @param progress receives the stages of the reading
   * @throws RefusedException if it cannot be read
   */
  public static Inputs read(Path folder, Progress progress) throws RefusedException {
    var notices = new ArrayList<Notice>();
    try {
      var shop = ShopReader.read(folder, notices);
      var mail = MailSettingsReader.read(folder, notices);
      var exports = ExportReader.read(folder, shop, progress);
      notices.addAll(exports.notices());
      return new Inputs(shop, exports.files(), notices, mail);
    } catch (UnreadableShop e) {
      throw new RefusedException(e.getMessage());
    }
  }
}
