package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.FileWord;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Settings.Bins;
import gambrel.trade.shop.Settings.Limits;
import gambrel.trade.shop.Settings.Paper;
import gambrel.trade.shop.Settings.Printing;
import gambrel.trade.shop.Settings.Terms;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads {@code shop.properties}. */
final class SettingsReader {
  private static final int MOST_NUMBER = 999_999_999;
  private static final LocalDate SAMPLE = LocalDate.of(2026, 11, 23);

  private SettingsReader() {}

  /**
   * The settings of a shop.
   *
   * @throws UnreadableShop if a required setting is missing or bad
   */
  static Settings read(SettingsFile file) {
    file.checkRequired(
        new TreeMap<>(
            Map.of(
                "name", text -> text,
                "currency", SettingsReader::currency,
                "unit", SettingsReader::unit,
                "zone", SettingsReader::zone)));
    var given = file.get("locale", text -> CellTypes.locale(text, "NOT_LOCALE"));
    var region =
        file.get(
                "region",
                text ->
                    FileWord.find(Region.class, text).orElseThrow(() -> new BadCell("NOT_REGION")))
            .orElseGet(() -> given.map(SettingsReader::regionOf).orElse(Region.AU));
    var language = file.get("language", CellTypes.PLAIN::language).orElse("en");
    return new Settings(
        file.need("name", text -> text),
        file.text("address"),
        file.text("contact"),
        file.need("currency", SettingsReader::currency),
        given.orElseGet(() -> localeOf(language, region)),
        language,
        region,
        file.need("unit", SettingsReader::unit),
        file.need("zone", SettingsReader::zone),
        file.get("paper", t -> CellTypes.word(Paper.class, t))
            .orElse(region == Region.US ? Paper.LETTER : Paper.A4),
        file.text("tax_name"),
        file.yesNo("tax_included").orElse(false),
        terms(file),
        Optional.of(file.text("templates")).filter(path -> !path.isEmpty()),
        rail(file),
        file.get("bins", t -> CellTypes.word(Bins.class, t)).orElse(Bins.WEIGHED),
        file.count("quiet_hours").orElse(6),
        file.count("cutting_days").orElse(4),
        file.getEvenBlank("year_review", SettingsReader::months).orElse(EnumSet.of(Month.DECEMBER)),
        file.yesNo("allow_mixed_batches").orElse(false),
        new Printing(
            file.yesNo("print_both_sides").orElse(false), file.yesNo("print_cover").orElse(false)),
        new Limits(
            percent(file, "limit.cutting_loss_pct", "3.0"),
            percent(file, "limit.hanging_pct_per_day", "0.4"),
            percent(file, "limit.batch_loss_pct", "8.0"),
            file.count("limit.days_hung").orElse(42),
            file.count("limit.revisions").orElse(5),
            file.count("limit.print").orElse(500)));
  }

  /** The kinds of cell that follow from the settings; names in the file are compared then. */
  static CellTypes cells(SettingsFile file, Settings settings) {
    var own = file.get("dates", pattern -> formatter(pattern, settings.locale()));
    file.compareNames(List.of());
    return new CellTypes(new Dates(own, settings.zone()), settings.currency(), false);
  }

  private static Terms terms(SettingsFile file) {
    return new Terms(
        file.text("tax_number"),
        file.text("tax_number_name"),
        file.get("number_from", SettingsReader::number).orElse(1),
        file.count("pay_by_days"),
        file.text("pay_to"));
  }

  /** A number of a statement, far enough from the largest that can be counted to. */
  private static int number(String text) {
    return BadCell.unless(
        "TOO_MANY_DIGITS", CellTypes.PLAIN.head(text), number -> number <= MOST_NUMBER);
  }

  private static BigDecimal percent(SettingsFile file, String key, String otherwise) {
    return file.get(key, CellTypes.PLAIN::notNegative).orElseGet(() -> new BigDecimal(otherwise));
  }

  private static Map<Species, Set<Step>> rail(SettingsFile file) {
    var usual =
        file.getEvenBlank("rail", SettingsReader::steps).orElse(EnumSet.of(Step.HOT, Step.COLD));
    var rail = new EnumMap<Species, Set<Step>>(Species.class);
    for (var species : Species.values()) {
      var own = file.getEvenBlank("rail." + species.id(), SettingsReader::steps);
      rail.put(species, own.orElse(usual));
    }
    return Map.copyOf(rail);
  }

  /** Rail weights with commas between them; a blank text means none. */
  private static Set<Step> steps(String text) {
    return words(
        text,
        word ->
            FileWord.find(Step.class, word)
                .filter(Step::isRail)
                .orElseThrow(() -> new BadCell("NOT_RAIL_STEP")));
  }

  /** Months by number with commas between them, or {@code all}; a blank text means none. */
  private static Set<Month> months(String text) {
    return text.equalsIgnoreCase("all")
        ? EnumSet.allOf(Month.class)
        : words(text, word -> BadCell.unless("NOT_MONTHS", () -> Month.of(Integer.parseInt(word))));
  }

  private static <T extends Comparable<T>> Set<T> words(String text, Function<String, T> type) {
    return Stream.of(text.split("[,;\\s]+"))
        .filter(word -> !word.isEmpty())
        .map(type)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** A currency of ISO 4217. */
  private static Currency currency(String text) {
    return BadCell.unless(
        "NOT_CURRENCY", () -> Currency.getInstance(text.toUpperCase(Locale.ROOT)));
  }

  /** A time zone of the IANA list. */
  private static ZoneId zone(String text) {
    return ZoneId.of(BadCell.unless("NOT_ZONE", text, ZoneId.getAvailableZoneIds()::contains));
  }

  /** The unit of a shop: kilogram or pound. */
  private static WeightUnit unit(String text) {
    return WeightUnit.of(text)
        .filter(List.of(WeightUnit.KG, WeightUnit.LB)::contains)
        .orElseThrow(() -> new BadCell("NOT_SHOP_UNIT"));
  }

  /** The region whose names a shop in the country of {@code locale} most likely uses. */
  private static Region regionOf(Locale locale) {
    return switch (locale.getCountry()) {
      case "GB", "IE" -> Region.UK;
      case "US", "CA" -> Region.US;
      default -> Region.AU;
    };
  }

  /** The locale of a language in a region. */
  private static Locale localeOf(String language, Region region) {
    String country = region == Region.UK ? "GB" : region.name();
    return new Locale.Builder().setLanguageTag(language).setRegion(country).build();
  }

  /** The formatter of a pattern of dates; what it prints must read back as the same date. */
  private static DateTimeFormatter formatter(String pattern, Locale locale) {
    String why = "NOT_DATE_PATTERN";
    return BadCell.unless(
        why,
        () ->
            BadCell.unless(
                why,
                Dates.formatter(pattern, locale),
                own -> LocalDate.parse(own.format(SAMPLE), own).equals(SAMPLE)));
  }
}
