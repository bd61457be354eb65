package gambrel.pages.words;

import gambrel.pages.views.Words;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.ValueFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Prints numbers and dates for one reader. A number and its unit stay on one line; negative numbers
 * have a minus sign, not a hyphen.
 */
public final class Formats implements ValueFormat {
  private static final String NO_BREAK = "\u00a0";
  private static final String MINUS = "\u2212";

  private final Locale locale;
  private final WeightUnit unit;
  private final Currency currency;
  private final Map<String, DateTimeFormatter> dates;
  private final String percent;
  private final String first;

  /**
   * Formats of one reader.
   *
   * @param locale how numbers are printed, and the language of month and day names
   * @param unit the unit of all weights
   * @param currency the currency of all money
   * @param words the patterns of dates and of a percentage
   * @throws IllegalArgumentException if a pattern is missing or wrong
   */
  public Formats(Locale locale, WeightUnit unit, Currency currency, Words words) {
    this.locale = locale;
    this.unit = unit;
    this.currency = currency;
    this.percent = words.say("number.percent", "{0}");
    this.first = words.say("date.first");
    // Only the language counts for month and day names: their regional forms change too often.
    var language = Locale.forLanguageTag(locale.getLanguage());
    this.dates =
        Stream.of("day", "date", "brief", "month", "time")
            .collect(
                Collectors.toMap(
                    name -> name,
                    name -> DateTimeFormatter.ofPattern(words.say("date." + name), language)));
  }

  /** A weight with its unit, {@code decimals} places. */
  public String weight(Weight weight, int decimals) {
    return bareWeight(weight, decimals) + NO_BREAK + unit();
  }

  /** A weight with its unit, with {@code least} decimals, or more if it has more; three at most. */
  public String fitting(Weight weight, int least) {
    return weight(weight, WeightDecimals.fitting(least, List.of(weight)));
  }

  /** A weight without its unit, {@code decimals} places, half away from zero. */
  public String bareWeight(Weight weight, int decimals) {
    return number(weight.decimal().setScale(decimals, RoundingMode.HALF_UP));
  }

  /** The unit of all weights. */
  public String unit() {
    return unit.id();
  }

  /** The code of the currency of all money. */
  public String currency() {
    return currency.getCurrencyCode();
  }

  /** A number with the decimals that it has. */
  @Override
  public String number(BigDecimal value) {
    var pattern = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(locale));
    pattern.setMinimumFractionDigits(Math.max(0, value.scale()));
    pattern.setMaximumFractionDigits(Math.max(0, value.scale()));
    return signed(value, pattern.format(value.abs()));
  }

  @Override
  public String number(BigDecimal value, WeightUnit itsUnit) {
    return number(value) + NO_BREAK + itsUnit.id();
  }

  /** A whole number. */
  @Override
  public String count(long number) {
    return number(BigDecimal.valueOf(number));
  }

  /** A number to at most {@code decimals} places, without zeros at the end. */
  public String quantity(BigFraction value, int decimals) {
    return number(trimmed(Exact.round(value, decimals), 0));
  }

  /** A number with one decimal, such as a percentage under a head with the sign. */
  public String tenths(BigFraction value) {
    return number(Exact.round(value, 1));
  }

  /** A percentage with one decimal. */
  @Override
  public String percent(BigFraction value) {
    return percent.replace("{0}", tenths(value));
  }

  /** A percentage given in tenths. */
  public String percentTenths(long tenths) {
    return percent.replace("{0}", number(BigDecimal.valueOf(tenths, 1)));
  }

  /** A percentage with the decimals that it has. */
  public String percent(BigDecimal value) {
    return percent.replace("{0}", number(trimmed(value, 0)));
  }

  /** Money with its currency. */
  public String money(Money amount) {
    var format = NumberFormat.getCurrencyInstance(locale);
    format.setCurrency(currency);
    format.setMinimumFractionDigits(Money.digits(currency));
    format.setMaximumFractionDigits(Money.digits(currency));
    var value = amount.decimal(currency);
    return signed(value, format.format(value.abs()));
  }

  /** Money given in the currency's major unit, rounded to the minor one. */
  public String money(BigFraction amount) {
    return money(Money.of(amount, currency));
  }

  /** Money without its currency, for a column. */
  public String bareMoney(Money amount) {
    return number(amount.decimal(currency));
  }

  /** A price without its currency; with more decimals than the minor unit if it has more. */
  public String price(BigDecimal price) {
    return number(trimmed(price, Money.digits(currency)));
  }

  /** A date with its day of the week, such as {@code Monday 3 August 2026}. */
  public String day(LocalDate value) {
    return text("day", value);
  }

  /** A date, such as {@code 3 August 2026}. */
  @Override
  public String date(LocalDate value) {
    return text("date", value);
  }

  /** A date and time, such as {@code 3 August 2026, 14:05}. */
  @Override
  public String moment(LocalDateTime value) {
    return date(value.toLocalDate()) + ", " + dates.get("time").format(value);
  }

  /** A date for a narrow column, such as {@code 3 Aug}. */
  public String brief(LocalDate value) {
    return text("brief", value);
  }

  private String text(String name, LocalDate value) {
    String text = dates.get(name).format(value);
    return value.getDayOfMonth() == 1 ? text.replaceFirst("\\b1\\b", first) : text;
  }

  /** A month, such as {@code August 2026}. */
  public String month(YearMonth value) {
    return dates.get("month").format(value);
  }

  /** A name in the middle of a sentence: its first letter is small, except in German. */
  public String inside(String name) {
    boolean word = name.length() > 1 && Character.isLowerCase(name.charAt(1));
    return word && !locale.getLanguage().equals(Locale.GERMAN.getLanguage())
        ? name.substring(0, 1).toLowerCase(locale) + name.substring(1)
        : name;
  }

  /** A text with a capital at the beginning: in many languages months and days have none. */
  public String opening(String text) {
    return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(locale) + text.substring(1);
  }

  private static BigDecimal trimmed(BigDecimal value, int leastDecimals) {
    var bare = value.stripTrailingZeros();
    return bare.scale() < leastDecimals ? bare.setScale(leastDecimals) : bare;
  }

  private static String signed(BigDecimal value, String size) {
    return value.signum() < 0 ? MINUS + size : size;
  }
}
