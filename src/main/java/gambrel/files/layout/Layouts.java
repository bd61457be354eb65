package gambrel.files.layout;

import gambrel.files.folder.SettingsFile;
import gambrel.files.folder.UnreadableShop;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Shop;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Finds the layout of a file by its first folder under the exports: the folder's own, else the one
 * of its name, else that of the scale of its name.
 */
public final class Layouts {
  private static final String OWN = "layout.properties";
  private static final String FOLDER = "layouts/";
  private static final Pattern NAME = Pattern.compile("[^./\\\\][^/\\\\]*");

  /** Where no body dates the shop, barcodes are of this century. */
  private static final int MID_CENTURY = 2050;

  private final Path shopFolder;
  private final Shop shop;
  private final List<Notice> notices;
  private final Map<String, Choice> choices = new HashMap<>();

  /**
   * The layouts of a shop.
   *
   * @param notices where it is added what is wrong with them
   */
  public Layouts(Path shopFolder, Shop shop, List<Notice> notices) {
    this.shopFolder = shopFolder;
    this.shop = shop;
    this.notices = notices;
  }

  /**
   * A layout.
   *
   * @param layout the plain one where none can be used
   * @param fault why it cannot be used, to end a sentence about a file
   */
  public record Choice(Layout layout, Optional<Phrase> fault) {}

  /**
   * The layout for a file.
   *
   * @param path relative to the shop folder, beginning with the folder of the exports
   */
  public Choice of(String path) {
    var parts = path.split("/", 3);
    return parts.length < 3
        ? new Choice(Layout.PLAIN, Optional.empty())
        : choices.computeIfAbsent(parts[1], folder -> choose(parts[0], folder));
  }

  private Choice choose(String exports, String folder) {
    String own = exports + '/' + folder + '/' + OWN;
    if (isFile(own)) {
      return read(own, folder);
    }
    if (isFile(file(folder))) {
      return read(file(folder), folder);
    }
    var scale = Optional.ofNullable(shop.scales().get(folder));
    String wanted = scale.map(s -> s.layout()).orElse("");
    if (wanted.isEmpty()) {
      return new Choice(Layout.PLAIN, Optional.empty());
    }
    if (NAME.matcher(wanted).matches() && isFile(file(wanted))) {
      return read(file(wanted), folder);
    }
    return missing(folder, wanted);
  }

  private static String file(String name) {
    return FOLDER + name + ".properties";
  }

  private boolean isFile(String path) {
    return Files.isRegularFile(shopFolder.resolve(path), LinkOption.NOFOLLOW_LINKS);
  }

  private Choice missing(String scale, String wanted) {
    notices.add(
        Notice.of(NoticeCode.REFERENCE_UNKNOWN, "LAYOUT", new Place("scales.csv", 0))
            .with("named", scale)
            .with("layout", wanted)
            .with("path", file(wanted)));
    return new Choice(Layout.PLAIN, Optional.empty());
  }

  private Choice read(String path, String folder) {
    String scale = shop.scales().containsKey(folder) ? folder : "";
    try {
      var file = new SettingsFile(shopFolder, path, LayoutEscapes::line, notices);
      return LayoutReader.read(
              file, new Place(path, 0), shop.settings().locale(), scale, thisYear())
          .map(layout -> new Choice(layout, Optional.empty()))
          .orElseGet(() -> faulty(path));
    } catch (UnreadableShop e) {
      notices.add(
          Notice.of(NoticeCode.SETTING_BAD, "UNREADABLE", new Place(path, 0))
              .with("fault", e.fault()));
      return faulty(path);
    }
  }

  private static Choice faulty(String path) {
    return new Choice(Layout.PLAIN, Optional.of(Phrase.of("FAULT.LAYOUT").with("layout", path)));
  }

  private int thisYear() {
    return shop.bodies().values().stream()
        .map(Body::killed)
        .flatMap(Optional::stream)
        .map(LocalDate::getYear)
        .max(Integer::compare)
        .orElse(MID_CENTURY);
  }
}
