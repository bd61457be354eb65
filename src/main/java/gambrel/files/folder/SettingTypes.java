package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import gambrel.trade.cuts.Region;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.shop.Step;
import java.time.Month;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.EnumSet;
import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.Set;

/** The kinds of value that {@code shop.properties} holds beside those of cells. */
final class SettingTypes {
  private SettingTypes() {}

  /** Rail weights between commas; a blank text means none. */
  static Set<Step> steps(String text) {
    var steps = EnumSet.noneOf(Step.class);
    for (var word : text.split("[,;\\s]+")) {
      if (!word.isEmpty()) {
        steps.add(
            Step.of(word).filter(Step::isRail).orElseThrow(() -> new BadCell("NOT_RAIL_STEP")));
      }
    }
    return steps;
  }

  /** Months by number between commas, or all of them; a blank text means none. */
  static Set<Month> months(String text) {
    if (text.strip().equalsIgnoreCase("all")) {
      return EnumSet.allOf(Month.class);
    }
    var months = EnumSet.noneOf(Month.class);
    for (var word : text.split("[,;\\s]+")) {
      if (!word.isEmpty()) {
        months.add(month(word));
      }
    }
    return months;
  }

  private static Month month(String text) {
    if (!text.matches("0?[1-9]|1[0-2]")) {
      throw new BadCell("NOT_MONTHS");
    }
    return Month.of(Integer.parseInt(text));
  }

  /** A currency of ISO 4217. */
  static Currency currency(String text) {
    try {
      return Currency.getInstance(text.toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new BadCell("NOT_CURRENCY");
    }
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
        .filter(unit -> unit == WeightUnit.KG || unit == WeightUnit.LB)
        .orElseThrow(() -> new BadCell("NOT_SHOP_UNIT"));
  }

  /** A region of the trade. */
  static Region region(String text) {
    return Region.of(text).orElseThrow(() -> new BadCell("NOT_REGION"));
  }

  /** The region that a locale suggests. */
  static Region regionOf(Locale locale) {
    return switch (locale.getCountry()) {
      case "GB", "IE" -> Region.UK;
      case "US", "CA" -> Region.US;
      default -> Region.AU;
    };
  }

  /** A locale (BCP 47); an underscore is taken for a hyphen. */
  static Locale locale(String text) {
    try {
      return new Locale.Builder().setLanguageTag(text.replace('_', '-')).build();
    } catch (IllformedLocaleException e) {
      throw new BadCell("NOT_LOCALE");
    }
  }

  /** The locale of a language in a region. */
  static Locale localeOf(String language, Region region) {
    String country =
        switch (region) {
          case AU -> "AU";
          case UK -> "GB";
          case US -> "US";
        };
    return new Locale.Builder().setLanguageTag(language).setRegion(country).build();
  }

  /** A formatter for a pattern of dates. */
  static DateTimeFormatter formatter(String pattern, Locale locale) {
    try {
      return Dates.formatter(pattern, locale);
    } catch (IllegalArgumentException e) {
      throw new BadCell("NOT_DATE_PATTERN");
    }
  }
}
