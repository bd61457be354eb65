package gambrel.files.layout;

import gambrel.files.barcode.InStorePlan;
import gambrel.files.csv.TextForm;
import gambrel.files.folder.SettingsFile;
import gambrel.files.layout.LayoutTypes.PatternType;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.Field;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads the file of one layout. */
final class LayoutReader {
  private static final int USUAL_DECIMALS = 3;
  private static final String TIME = Field.TIME.id();

  /** In place of a constant date: the date in the file's name. */
  private static final String IN_NAME = "name";

  private static final List<List<String>> NEEDED =
      Layout.groups("scale", "time date barcode", "code barcode", "net gross barcode");

  private static final List<List<String>> REACH =
      Layout.groups("scale", "ticket", "time", "date", "clock", "body", "code", "net gross");

  private final SettingsFile file;
  private final Locale locale;
  private final TextForm text;
  private final LayoutMappings mappings;

  private LayoutReader(SettingsFile file, Locale locale) {
    this.file = file;
    this.locale = locale;
    this.text = text();
    this.mappings = LayoutMappings.read(file, text.header());
  }

  /**
   * The layout in a file; empty if any of its settings cannot be read, since a weight in a wrong
   * unit is worse than none.
   *
   * @param file its settings
   * @param place the file
   * @param locale the language of months and markers, beside English
   * @param scale the scale of rows that name none, or empty
   * @param thisYear decides the century of a barcode's two-digit year
   */
  static Optional<Layout> read(
      SettingsFile file, Place place, Locale locale, String scale, int thisYear) {
    var layout = new LayoutReader(file, locale).layout(place, scale, thisYear);
    file.compareNames(LayoutMappings.KEYS);
    return file.isFaulty() ? Optional.empty() : Optional.of(layout);
  }

  private Layout layout(Place place, String scale, int thisYear) {
    var constants = new HashMap<>(mappings.constants());
    if (!scale.isEmpty()) {
      constants.putIfAbsent(Field.SCALE.id(), scale);
    }
    var elsewhere = Set.copyOf(constants.keySet());
    boolean dateInName = constants.remove(LayoutColumns.DATE, IN_NAME);
    var given = file.get("unit", LayoutTypes::unit);
    var unit = given.flatMap(single -> single);
    var weights = weights(given.isPresent() && unit.isEmpty());
    int decimals = file.count("instore.decimals").orElse(USUAL_DECIMALS);
    var translation =
        new LayoutTranslation(
            mappings.values(),
            constants,
            weights,
            unit,
            time(),
            file.get("instore", plan -> new InStorePlan(plan, decimals)),
            thisYear,
            file.get("identity", LayoutTypes::columns).orElse(List.of()));
    var columns = new LayoutColumns(mappings.columns(), ownColumns());
    return new Layout(
        place,
        text,
        columns,
        NEEDED,
        REACH,
        elsewhere,
        unit,
        file.get("negative", LayoutTypes::negative).isPresent(),
        dateInName,
        isHeaderRepeated(),
        Optional.of(translation::translate));
  }

  private TextForm text() {
    var delimiters =
        file.getCharacter("delimiter", LayoutTypes::delimiter)
            .map(List::of)
            .orElse(TextForm.USUAL_DELIMITERS);
    char quote = file.getCharacter("quote", LayoutTypes::quote).orElse(TextForm.DOUBLE_QUOTE);
    if (delimiters.contains(quote)) {
      file.refuse("quote", "IS_DELIMITER");
    }
    return new TextForm(
        delimiters,
        quote,
        file.get("charset", LayoutTypes::charset).orElse(StandardCharsets.UTF_8),
        file.count("skip").orElse(0),
        isHeaderRepeated() || file.yesNo("header").orElse(true),
        file.get("ignore", LayoutTypes::expression),
        file.getCharacter("decimal", LayoutTypes::decimal).orElse('.'));
  }

  /** Whether the header may stand in the file again, as where files were joined. */
  private boolean isHeaderRepeated() {
    return file.text("header").equalsIgnoreCase("repeated");
  }

  private WeightText weights(boolean poundsAndOunces) {
    char decimal = text.decimal();
    var thousands = file.getCharacter("thousands", LayoutTypes::thousands);
    if (thousands.isPresent() && thousands.get() == decimal) {
      file.refuse("thousands", "IS_DECIMAL_MARK");
    }
    return new WeightText(decimal, thousands, poundsAndOunces);
  }

  private LayoutTime time() {
    if (file.has(TIME) && isInTwo()) {
      file.refuse(TIME, "BESIDE_DATE");
    }
    return new LayoutTime(
        patterns(TIME, PatternType.TIME),
        patterns(LayoutColumns.DATE, PatternType.DATE),
        patterns(LayoutColumns.CLOCK, PatternType.CLOCK),
        file.has(LayoutColumns.CLOCK) || mappings.gives(LayoutColumns.CLOCK));
  }

  private List<DateTimeFormatter> patterns(String key, PatternType type) {
    return file.get(key, pattern -> type.formatters(pattern, locale)).orElse(List.of());
  }

  private boolean isInTwo() {
    return file.has(LayoutColumns.DATE)
        || file.has(LayoutColumns.CLOCK)
        || mappings.gives(LayoutColumns.DATE)
        || mappings.gives(LayoutColumns.CLOCK);
  }

  /** Without {@code time} if times stand in two columns, else without {@code date} and clock. */
  private Set<String> ownColumns() {
    var own = new HashSet<>(LayoutColumns.ALL);
    own.removeAll(isInTwo() ? List.of(TIME) : List.of(LayoutColumns.DATE, LayoutColumns.CLOCK));
    return own;
  }
}
