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
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
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

  private static final String EXPORTS = "exports";
  private static final Pattern NAME = Pattern.compile("[^./\\\\][^/\\\\]*");

  /** The year by which barcodes get their century if no body has a date of kill. */
  private static final int MID_CENTURY = 2050;

  private final Path shopFolder;
  private final Shop shop;
  private final List<Notice> notices;
  private final Predicate<String> isScale;
  private final Map<String, Choice> choices = new HashMap<>();

  /**
   * The layouts of a shop.
   *
   * @param notices receives a notice for each layout of a scale that is not there, and for each
   *     fault of a layout that is used
   * @param isScale whether a folder is that of a scale with its name, which wrote its exports
   */
  public Layouts(Path shopFolder, Shop shop, List<Notice> notices, Predicate<String> isScale) {
    this.shopFolder = shopFolder;
    this.shop = shop;
    this.notices = notices;
    this.isScale = isScale;
    shop.scales().values().stream()
        .filter(scale -> !scale.layout().isEmpty() && path(scale.id()).isEmpty())
        .sorted(Comparator.comparing(Scale::id))
        .map(Layouts::missing)
        .forEach(notices::add);
  }

  private static Notice missing(Scale scale) {
    return Notice.of(NoticeCode.REFERENCE_UNKNOWN, "LAYOUT", new Place("scales.csv", 0))
        .with("named", scale.id())
        .with("layout", scale.layout())
        .with("path", file(scale.layout()));
  }

  /** The path of the layout for a folder of exports; empty if there is none. */
  private Optional<String> path(String folder) {
    var ofScale = layout(folder).filter(NAME.asMatchPredicate()).map(Layouts::file);
    return Stream.of(
            Optional.of(EXPORTS + '/' + folder + '/' + OWN), Optional.of(file(folder)), ofScale)
        .flatMap(Optional::stream)
        .filter(path -> Files.exists(shopFolder.resolve(path), NOFOLLOW_LINKS))
        .findFirst();
  }

  /**
   * The name of the layout that scales.csv gives the scale of this name; empty if it gives none.
   */
  private Optional<String> layout(String scale) {
    return Optional.ofNullable(shop.scales().get(scale))
        .map(Scale::layout)
        .filter(layout -> !layout.isEmpty());
  }

  /**
   * The layout of a file.
   *
   * @param layout {@link Layout#PLAIN} if there is none or it has a fault
   * @param fault why it cannot be used; ends a sentence about a file
   * @param settings its values by key; none if there is no layout or it cannot be read
   * @param lines its lines, likewise
   */
  public record Choice(
      Layout layout, Optional<Phrase> fault, Map<String, String> settings, List<String> lines) {
    /** The choice of a folder for which there is no layout. */
    public static final Choice PLAIN =
        new Choice(Layout.PLAIN, Optional.empty(), Map.of(), List.of());

    /** The layout if one is saved that can be used. */
    public Optional<Layout> saved() {
      return Optional.of(layout).filter(of -> fault.isEmpty() && !settings.isEmpty());
    }
  }

  /**
   * The layout for a file.
   *
   * @param path relative to the shop folder, beginning with the folder of the exports
   */
  public Choice of(String path) {
    var parts = path.split("/", 3);
    return parts.length < 3 ? Choice.PLAIN : choices.computeIfAbsent(parts[1], this::choose);
  }

  private Choice choose(String folder) {
    return path(folder)
        .map(path -> read(path, folder))
        .orElseGet(
            () ->
                new Choice(
                    Layout.PLAIN,
                    layout(folder).map(name -> Phrase.of("FAULT.NO_LAYOUT").with("layout", name)),
                    Map.of(),
                    List.of()));
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
      return faulty(path, Map.of(), List.of());
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
    String scale = isScale.test(folder) ? folder : "";
    return LayoutReader.read(file, new Place(path, 0), shop.settings().locale(), scale, thisYear())
        .map(layout -> new Choice(layout, Optional.empty(), file.values(), file.lines()))
        .orElseGet(() -> faulty(path, file.values(), file.lines()));
  }

  private static Choice faulty(String path, Map<String, String> settings, List<String> lines) {
    var fault = Phrase.of("FAULT.LAYOUT").with("layout", path);
    return new Choice(Layout.PLAIN, Optional.of(fault), settings, lines);
  }

  private int thisYear() {
    return shop.bodies().values().stream()
        .map(Body::killed)
        .flatMap(Optional::stream)
        .map(LocalDate::getYear)
        .max(Integer::compare)
        .orElse(MID_CENTURY);
  }

  /**
   * Adds the escapes of the properties format to lines of a layout. The format ends a key at its
   * first blank and drops single backslashes, but {@code value.status.VOID SALE=void} and {@code
   * ignore=^\d+} are meant as they stand.
   */
  private static final class LayoutEscapes {
    private static final Pattern EXPRESSION =
        Pattern.compile("\\s*(ignore|above\\.\\w+)\\s*[=:].*");
    private static final Pattern FOREIGN =
        Pattern.compile("\\s*(value\\.(?:[^=\\\\]|\\\\.)*?)\\s*=(.*)");
    private static final Pattern LONE_BACKSLASH =
        Pattern.compile("\\\\\\\\|\\\\(?=[^\\\\tnrfu:=#! ])");
    private static final Pattern BARE_BLANK = Pattern.compile("\\\\.|[\\s:]");

    private static final int LONGEST = 1000;

    private LayoutEscapes() {}

    /** The line in the properties format. */
    static String line(String line) {
      if (line.length() > LONGEST) {
        return line;
      }
      if (EXPRESSION.matcher(line).matches()) {
        return LONE_BACKSLASH.matcher(line).replaceAll("\\\\\\\\");
      }
      var foreign = FOREIGN.matcher(line);
      if (!foreign.matches()) {
        return line;
      }
      String key =
          BARE_BLANK
              .matcher(foreign.group(1))
              .replaceAll(found -> Matcher.quoteReplacement(escaped(found.group())));
      return key + '=' + foreign.group(2);
    }

    private static String escaped(String text) {
      return text.length() > 1 ? text : '\\' + text;
    }
  }
}
