package gambrel.files.layout;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.SettingsFile;
import gambrel.files.csv.TextForm;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.Field;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads one layout. */
final class LayoutReader {
  private static final int USUAL_DECIMALS = 3;
  private static final String TIME = Field.TIME.id();

  private static final List<List<String>> NEEDED =
      List.of(
          List.of(Field.SCALE.id()),
          List.of(TIME, LayoutColumns.DATE, LayoutColumns.BARCODE),
          List.of(Field.CODE.id(), LayoutColumns.BARCODE),
          List.of(Field.NET.id(), Field.GROSS.id(), LayoutColumns.BARCODE));

  private static final List<List<String>> REACH =
      List.of(
          List.of(Field.SCALE.id()),
          List.of(Field.TICKET.id()),
          List.of(TIME),
          List.of(LayoutColumns.DATE),
          List.of(LayoutColumns.CLOCK),
          List.of(Field.BODY.id()),
          List.of(Field.CODE.id()),
          List.of(Field.NET.id(), Field.GROSS.id()));

  private final SettingsFile file;
  private final Place place;
  private final Locale locale;
  private final LayoutMappings mappings;

  private LayoutReader(SettingsFile file, Place place, Locale locale) {
    this.file = file;
    this.place = place;
    this.locale = locale;
    this.mappings = new LayoutMappings(file);
  }

  /**
   * The layout that a file holds; empty if anything in it cannot be read, since a weight in a wrong
   * unit is worse than none.
   *
   * @param file its settings
   * @param place where it stands
   * @param locale the language of months and markers, beside English
   * @param scale the scale of rows that name none, or empty
   * @param thisYear decides the century of a barcode's two-digit year
   */
  static Optional<Layout> read(
      SettingsFile file, Place place, Locale locale, String scale, int thisYear) {
    var reader = new LayoutReader(file, place, locale);
    var layout = reader.layout(scale, thisYear);
    file.tellUnknown();
    return file.isFaulty() ? Optional.empty() : Optional.of(layout);
  }

  private Layout layout(String scale, int thisYear) {
    var text = text();
    mappings.read(text.header());
    var constants = new HashMap<>(mappings.constants());
    if (!scale.isEmpty()) {
      constants.putIfAbsent(Field.SCALE.id(), scale);
    }
    var unit = file.get("unit", LayoutTypes::unit);
    var single = unit.flatMap(u -> u);
    return new Layout(
        place,
        text,
        new LayoutColumns(mappings.columns(), ownColumns()),
        NEEDED,
        REACH,
        constants.keySet(),
        single,
        translation(constants, single, unit.isPresent() && single.isEmpty(), thisYear));
  }

  private LayoutTranslation translation(
      Map<String, String> constants,
      Optional<WeightUnit> unit,
      boolean poundsAndOunces,
      int thisYear) {
    var numerals = numerals();
    int decimals = file.get("instore.decimals", this::count).orElse(USUAL_DECIMALS);
    return new LayoutTranslation(
        mappings.values(),
        constants,
        numerals,
        new WeightText(numerals, poundsAndOunces),
        unit,
        time(),
        file.get("instore", plan -> LayoutTypes.inStore(plan, decimals)),
        thisYear,
        file.get("identity", LayoutTypes::columns).orElse(List.of()));
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
        file.get("skip", this::count).orElse(0),
        file.get("header", this::yesNo).orElse(true),
        file.get("ignore", LayoutTypes::expression));
  }

  private Numerals numerals() {
    char decimal = file.getCharacter("decimal", LayoutTypes::decimal).orElse('.');
    var thousands = file.getCharacter("thousands", LayoutTypes::thousands);
    if (thousands.isPresent() && thousands.get() == decimal) {
      file.refuse("thousands", "IS_DECIMAL_MARK");
    }
    return new Numerals(decimal, thousands);
  }

  private LayoutTime time() {
    if (file.has(TIME) && isInTwo()) {
      file.refuse(TIME, "BESIDE_DATE");
    }
    return new LayoutTime(
        patterns(TIME, LayoutTypes::time),
        patterns(LayoutColumns.DATE, LayoutTypes::date),
        patterns(LayoutColumns.CLOCK, LayoutTypes::clock),
        file.has(LayoutColumns.CLOCK) || mappings.tells(LayoutColumns.CLOCK));
  }

  private List<DateTimeFormatter> patterns(String key, PatternType type) {
    return file.get(key, pattern -> type.formatters(pattern, locale)).orElse(List.of());
  }

  private boolean isInTwo() {
    return file.has(LayoutColumns.DATE)
        || file.has(LayoutColumns.CLOCK)
        || mappings.tells(LayoutColumns.DATE)
        || mappings.tells(LayoutColumns.CLOCK);
  }

  /** Own names are looked for only in the way in which the layout tells times. */
  private Set<String> ownColumns() {
    var own = new HashSet<>(LayoutColumns.all());
    own.removeAll(isInTwo() ? List.of(TIME) : List.of(LayoutColumns.DATE, LayoutColumns.CLOCK));
    return own;
  }

  private int count(String text) {
    if (!text.matches("\\d{1,4}")) {
      throw new BadCell("NOT_WHOLE");
    }
    return Integer.parseInt(text);
  }

  private boolean yesNo(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> throw new BadCell("NOT_YES_NO");
    };
  }

  @FunctionalInterface
  private interface PatternType {
    List<DateTimeFormatter> formatters(String pattern, Locale locale);
  }
}
