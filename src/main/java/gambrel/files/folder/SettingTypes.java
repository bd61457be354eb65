package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import gambrel.trade.cuts.Region;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Step;
import java.time.LocalDate;
import java.time.Month;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The kinds of value that only {@code shop.properties} holds. */
final class SettingTypes {
  private static final LocalDate SAMPLE = LocalDate.of(2026, 11, 23);

  private SettingTypes() {}

  /** Rail weights with commas between them; a blank text means none. */
  static Set<Step> steps(String text) {
    return words(text)
        .map(Step::of)
        .map(step -> step.filter(Step::isRail).orElseThrow(() -> new BadCell("NOT_RAIL_STEP")))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Step.class)));
  }

  /** Months by number with commas between them, or {@code all}; a blank text means none. */
  static Set<Month> months(String text) {
    if (text.strip().equalsIgnoreCase("all")) {
      return EnumSet.allOf(Month.class);
    }
    return words(text)
        .map(word -> BadCell.unless("NOT_MONTHS", () -> Month.of(Integer.parseInt(word))))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Month.class)));
  }

  private static Stream<String> words(String text) {
    return Stream.of(text.split("[,;\\s]+")).filter(Predicate.not(String::isEmpty));
  }

  /** A currency of ISO 4217. */
  static Currency currency(String text) {
    return BadCell.unless(
        "NOT_CURRENCY", () -> Currency.getInstance(text.toUpperCase(Locale.ROOT)));
  }

  /** A time zone of the IANA list. */
  static ZoneId zone(String text) {
    if (!ZoneId.getAvailableZoneIds().contains(text)) {
      throw new BadCell("NOT_ZONE");
    }
    return ZoneId.of(text);
  }

  /** The unit of a shop: kilogram or pound. */
  static WeightUnit unit(String text) {
    return WeightUnit.of(text)
        .filter(List.of(WeightUnit.KG, WeightUnit.LB)::contains)
        .orElseThrow(() -> new BadCell("NOT_SHOP_UNIT"));
  }

  /** A region of the trade. */
  static Region region(String text) {
    return Region.of(text).orElseThrow(() -> new BadCell("NOT_REGION"));
  }

  /** The region whose names a shop in the country of {@code locale} most likely uses. */
  static Region regionOf(Locale locale) {
    return switch (locale.getCountry()) {
      case "GB", "IE" -> Region.UK;
      case "US", "CA" -> Region.US;
      default -> Region.AU;
    };
  }

  /** A locale (BCP 47). */
  static Locale locale(String text) {
    return locale(text, "NOT_LOCALE");
  }

  /** A locale (BCP 47), or {@code why} it is none; an underscore is taken for a hyphen. */
  static Locale locale(String text, String why) {
    return BadCell.unless(
        why, () -> new Locale.Builder().setLanguageTag(text.replace('_', '-')).build());
  }

  /** The locale of a language in a region. */
  static Locale localeOf(String language, Region region) {
    String country = region == Region.UK ? "GB" : region.name();
    return new Locale.Builder().setLanguageTag(language).setRegion(country).build();
  }

  /** The formatter of a pattern of dates; what it prints must read back as the same date. */
  static DateTimeFormatter formatter(String pattern, Locale locale) {
    return BadCell.unless(
        "NOT_DATE_PATTERN",
        () -> {
          var formatter = Dates.formatter(pattern, locale);
          if (!LocalDate.parse(formatter.format(SAMPLE), formatter).equals(SAMPLE)) {
            throw new BadCell("NOT_DATE_PATTERN");
          }
          return formatter;
        });
  }
}
