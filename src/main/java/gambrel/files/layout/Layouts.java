package gambrel.files.layout;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import gambrel.files.csv.TextLine;
import gambrel.files.folder.SettingsFile;
import gambrel.files.folder.UnreadableShop;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.Shop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds the layout of a file by its first folder under the exports: the folder's own layout, else
 * the layout of the folder's name, else the layout of the scale of that name.
 */
public final class Layouts {
  /** The name of a layout that lies in the folder of the exports it is for. */
  public static final String OWN = "layout.properties";

  private static final Pattern NAME = Pattern.compile("[^./\\\\][^/\\\\]*");

  /** The year by which barcodes get their century if no body has a date of kill. */
  private static final int MID_CENTURY = 2050;

  private final Path shopFolder;
  private final Shop shop;
  private final List<Notice> notices;
  private final Map<String, Choice> choices = new HashMap<>();

  /**
   * The layouts of a shop.
   *
   * @param notices receives a notice for each fault of a layout
   */
  public Layouts(Path shopFolder, Shop shop, List<Notice> notices) {
    this.shopFolder = shopFolder;
    this.shop = shop;
    this.notices = notices;
  }

  /**
   * The layout of a file.
   *
   * @param layout {@link Layout#PLAIN} if there is none or it has a fault
   * @param fault why it cannot be used; ends a sentence about a file
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
    var scale = Optional.ofNullable(shop.scales().get(folder));
    String wanted = scale.map(Scale::layout).orElse("");
    String ofScale = NAME.matcher(wanted).matches() ? file(wanted) : "";
    var found =
        Stream.of(exports + '/' + folder + '/' + OWN, file(folder), ofScale)
            .filter(path -> !path.isEmpty())
            .filter(path -> Files.exists(shopFolder.resolve(path), NOFOLLOW_LINKS))
            .findFirst();
    if (found.isPresent()) {
      return read(found.get(), folder);
    }
    if (!wanted.isEmpty()) {
      notices.add(
          Notice.of(NoticeCode.REFERENCE_UNKNOWN, "LAYOUT", new Place("scales.csv", 0))
              .with("named", folder)
              .with("layout", wanted)
              .with("path", file(wanted)));
      return new Choice(
          Layout.PLAIN, Optional.of(Phrase.of("FAULT.NO_LAYOUT").with("layout", wanted)));
    }
    return new Choice(Layout.PLAIN, Optional.empty());
  }

  private static String file(String name) {
    return "layouts/" + name + ".properties";
  }

  private Choice read(String path, String folder) {
    try {
      return choice(new SettingsFile(shopFolder, path, LayoutEscapes::line, notices), path, folder);
    } catch (UnreadableShop e) {
      var place = new Place(path, 0);
      notices.add(Notice.of(NoticeCode.SETTING_BAD, "UNREADABLE", place).with("fault", e.fault()));
      return faulty(path);
    }
  }

  /**
   * The layout with these lines.
   *
   * @param path where it would be saved
   * @param folder the first folder of the exports it is for
   */
  public Choice proposed(List<String> lines, String path, String folder) {
    var texts =
        IntStream.range(0, lines.size())
            .mapToObj(i -> new TextLine(i + 1, lines.get(i), "\n", false))
            .toList();
    return choice(new SettingsFile(path, texts, LayoutEscapes::line, notices), path, folder);
  }

  private Choice choice(SettingsFile file, String path, String folder) {
    String scale = shop.scales().containsKey(folder) ? folder : "";
    return LayoutReader.read(file, new Place(path, 0), shop.settings().locale(), scale, thisYear())
        .map(layout -> new Choice(layout, Optional.empty()))
        .orElseGet(() -> faulty(path));
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
