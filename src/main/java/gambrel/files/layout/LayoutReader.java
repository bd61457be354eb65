package gambrel.files.layout;

import gambrel.files.barcode.InStorePlan;
import gambrel.files.csv.BadCell;
import gambrel.files.csv.NameComparison;
import gambrel.files.csv.TextForm;
import gambrel.files.folder.SettingsFile;
import gambrel.files.layout.LayoutTypes.PatternType;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.Field;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

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

  /** The beginnings of the keys of a column. */
  private static final List<String> KINDS =
      List.of("column", "constant", "omit", "void", "above", "value");

  /** The keys but those of values, which may hold any foreign word. */
  private static final List<String> KEYS =
      KINDS.stream()
          .filter(kind -> !kind.equals("value"))
          .flatMap(kind -> Layout.ALL.stream().map(column -> kind + '.' + column))
          .sorted()
          .toList();

  private final SettingsFile file;
  private final Locale locale;
  private final TextForm text;

  /** Header text or number by column. */
  private final Map<String, String> columns = new HashMap<>();

  /** The texts for blank cells by column. */
  private final Map<String, String> constants = new HashMap<>();

  /** What is left out of cells, by column. */
  private final Map<String, String> omitted = new HashMap<>();

  /** The texts that mean a void row, by the column in which they stand. */
  private final Map<String, List<String>> voiding = new HashMap<>();

  /** Expressions of lines that give a column its value in the rows below. */
  private final Map<String, Pattern> above = new HashMap<>();

  /** Own values by column and foreign value. */
  private final Map<String, Map<String, String>> values = new HashMap<>();

  private LayoutReader(SettingsFile file, Locale locale) {
    this.file = file;
    this.locale = locale;
    boolean header = isHeaderRepeated() || file.yesNo("header").orElse(true);
    readColumns(header);
    this.text = text(header);
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
    file.compareNames(KEYS);
    return file.isFaulty() ? Optional.empty() : Optional.of(layout);
  }

  private Layout layout(Place place, String scale, int thisYear) {
    if (!scale.isEmpty()) {
      constants.putIfAbsent(Field.SCALE.id(), scale);
    }
    var elsewhere = new HashSet<>(constants.keySet());
    elsewhere.addAll(above.keySet());
    boolean dateInName = constants.remove(Layout.DATE, IN_NAME);
    var time = time();
    var given = file.get("unit", LayoutTypes::unit);
    var unit = given.flatMap(single -> single);
    var weights = weights(given.isPresent() && unit.isEmpty());
    int decimals = file.count("instore.decimals").orElse(USUAL_DECIMALS);
    var translation =
        new LayoutTranslation(
            omitted,
            voiding,
            values,
            constants,
            weights,
            unit,
            time,
            file.get("instore", plan -> new InStorePlan(plan, decimals)),
            thisYear,
            file.get("identity", LayoutTypes::columns).orElse(List.of()));
    return new Layout(
        place,
        text,
        columns,
        ownColumns(),
        NEEDED,
        REACH,
        elsewhere,
        unit,
        file.get("negative", LayoutTypes::negative).isPresent(),
        file.get("void", LayoutTypes::voided),
        dateInName ? path -> dateIn(path, time.date()) : path -> Optional.empty(),
        isHeaderRepeated(),
        translation::translate);
  }

  /** The date in the name of a file: by the pattern of dates if there is one, else ISO 8601. */
  private Optional<String> dateIn(String path, TimePattern date) {
    return Optional.of(path)
        .filter(name -> file.has(Layout.DATE))
        .flatMap(name -> Layout.dateIn(name, date))
        .or(() -> Layout.dateIn(path));
  }

  private TextForm text(boolean header) {
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
        header,
        file.get("ignore", LayoutTypes::expression),
        above,
        decimals() > 0 ? '.' : file.getCharacter("decimal", LayoutTypes::decimal).orElse('.'));
  }

  /** The number of decimals that the scale prints without a mark. */
  private int decimals() {
    String text = file.text("decimal");
    return text.matches("[1-3]") ? Integer.parseInt(text) : 0;
  }

  /**
   * Reads the keys of columns, such as {@code column.body}; a wrong one is refused.
   *
   * @param header whether columns have names
   */
  private void readColumns(boolean header) {
    for (String key : file.keys()) {
      var parts = key.split("\\.", 3);
      parts[0] = NameComparison.plain(parts[0]);
      if (parts.length > 1 && KINDS.contains(parts[0])) {
        try {
          String column = LayoutTypes.column(NameComparison.plain(parts[1]));
          boolean plain = parts.length == 2;
          readColumn(parts, column, file.text(plain ? parts[0] + '.' + column : key), header);
        } catch (BadCell e) {
          file.refuse(key, e);
        }
      }
    }
  }

  private void readColumn(String[] key, String column, String found, boolean header) {
    switch (key[0]) {
      case "column" -> columns.put(column, reference(found, header));
      case "constant" -> constants.put(column, found);
      case "omit" -> omitted.put(column, found.equals("space") ? " " : found);
      case "void" -> voiding.put(column, List.of(found.split(" *[|] *")));
      case "above" -> above.put(column, LayoutTypes.expression(found));
      default ->
          values
              .computeIfAbsent(column, c -> new HashMap<>())
              .put(key.length > 2 ? key[2].strip() : "", found);
    }
  }

  /** A column's header text or number; a text needs a header line. */
  private static String reference(String found, boolean header) {
    boolean number = Layout.isNumber(found);
    if (!found.isEmpty() && (number ? Integer.parseInt(found) == 0 : !header)) {
      throw new BadCell(Phrase.of("CELL.NO_COLUMN_NUMBER").with("named", found));
    }
    return found;
  }

  /** Whether the layout gives a column's place, a line above for it or a constant. */
  private boolean gives(String column) {
    return !columns.getOrDefault(column, "").isEmpty()
        || constants.containsKey(column)
        || above.containsKey(column);
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
    return new WeightText(decimal, thousands, poundsAndOunces, decimals());
  }

  private LayoutTime time() {
    if (file.has(TIME) && isInTwo()) {
      file.refuse(TIME, "BESIDE_DATE");
    }
    return new LayoutTime(
        pattern(TIME, PatternType.TIME),
        pattern(Layout.DATE, PatternType.DATE).orElse(TimePattern.ISO_DATE),
        pattern(Layout.CLOCK, PatternType.CLOCK).orElse(TimePattern.ANY_CLOCK),
        file.has(Layout.CLOCK) || gives(Layout.CLOCK));
  }

  private Optional<TimePattern> pattern(String key, PatternType type) {
    boolean thai = file.get("calendar", LayoutTypes::calendar).isPresent();
    var pattern = file.get(key, text -> type.pattern(text, locale));
    return thai ? pattern.map(TimePattern::inThaiYears) : pattern;
  }

  private boolean isInTwo() {
    return file.has(Layout.DATE)
        || file.has(Layout.CLOCK)
        || gives(Layout.DATE)
        || gives(Layout.CLOCK);
  }

  /** Without {@code time} if times stand in two columns, else without {@code date} and clock. */
  private Set<String> ownColumns() {
    var own = new HashSet<>(Layout.ALL);
    own.removeAll(isInTwo() ? List.of(TIME) : List.of(Layout.DATE, Layout.CLOCK));
    return own;
  }
}
