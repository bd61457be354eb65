package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.ScaleCode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The kinds of cell in the files of a shop. Each method reads a text that is not blank and throws a
 * {@link BadCell} if it is not of the kind.
 *
 * @param dates how the shop writes dates
 * @param currency its currency
 * @param decimalComma whether the file may write a comma for the decimal point
 */
record CellTypes(Dates dates, Currency currency, boolean decimalComma) {
  /** The kinds that depend on no shop, with decimal points. */
  static final CellTypes PLAIN =
      new CellTypes(
          new Dates(Optional.empty(), ZoneOffset.UTC), Currency.getInstance("XXX"), false);

  private static final Pattern DIGITS = Pattern.compile("(?=\\D*\\d)[+-]?\\d*+\\.?\\d*+");

  private static final Set<String> LANGUAGES = Set.of(Locale.getISOLanguages());

  private static final Pattern EXPONENT = Pattern.compile("(?i)[+-]?\\d+([.,]\\d*)?E[+-]?\\d+");

  /** A text that a spreadsheet has turned into a date: {@code 1-Feb}, {@code 2026-02-01}. */
  private static final Pattern LOST_TO_DATE =
      Pattern.compile(
          "\\d{1,2}[-. /]\\p{L}{3,9}\\.?(?:[-. /]\\d{2,4})?"
              + "|\\p{L}{3,9}\\.?[-. /]\\d{1,4}"
              + "|\\d{4}-\\d{2}-\\d{2}(?:[T ].*)?"
              + "|\\d{1,2}([-./])\\d{1,2}\\1\\d{2,4}");

  /** The same kinds in a file with this delimiter; {@code ;} allows decimal commas. */
  CellTypes forDelimiter(char delimiter) {
    return new CellTypes(dates, currency, delimiter == ';');
  }

  /** An id without control characters that no spreadsheet has turned into a number. */
  String id(String text) {
    BadCell.unless("CONTROL", text, id -> id.chars().noneMatch(Character::isISOControl));
    return unlessDamaged(IdIndex.isLost(text), text, "LOST_ID");
  }

  /** A text that a spreadsheet has not turned into a date, as {@code 1/2} becomes 1-Feb. */
  static String notDate(String text, String why) {
    return unlessDamaged(LOST_TO_DATE.matcher(text).matches(), text, why);
  }

  private static String unlessDamaged(boolean damaged, String text, String why) {
    if (damaged) {
      throw new BadCell(NoticeCode.SPREADSHEET_DAMAGE, Phrase.of("CELL." + why));
    }
    return text;
  }

  /** Ids with blanks between them, each once. */
  List<String> ids(String text) {
    return List.of(text.split("\\s+")).stream().map(this::id).distinct().toList();
  }

  /** The id of an item in lower case. */
  String item(String text) {
    return id(text).toLowerCase(Locale.ROOT);
  }

  /** The ids of items, parted by {@code |}, each once. */
  List<String> items(String text) {
    return Stream.of(text.split(Pattern.quote(ScaleCode.PARTED), -1))
        .map(item -> item(item.strip()))
        .distinct()
        .toList();
  }

  /** Any number of at most 12 digits before and after the point, without thousands marks. */
  BigDecimal number(String text) {
    BadCell.unless("EXPONENT", text, Predicate.not(EXPONENT.asMatchPredicate()));
    String plain = decimalComma ? text.replace(',', '.') : text;
    return DecimalText.of(plain)
        .orElseThrow(
            () -> new BadCell(DIGITS.matcher(plain).matches() ? "TOO_MANY_DIGITS" : "NOT_PLAIN"));
  }

  /** A number of zero or more. */
  BigDecimal notNegative(String text) {
    return BadCell.unless("BELOW_ZERO", number(text), number -> number.signum() >= 0);
  }

  /** A number above zero. */
  BigDecimal positive(String text) {
    return BadCell.unless("NOT_ABOVE_ZERO", notNegative(text), number -> number.signum() > 0);
  }

  /** A whole number of zero or more. */
  int count(String text) {
    var number = notNegative(text);
    return BadCell.unless("NOT_WHOLE", number::intValueExact);
  }

  /** A whole number of one or more. */
  int head(String text) {
    return BadCell.unless("BELOW_ONE", count(text), count -> count > 0);
  }

  /** A weight in the shop's unit, zero or more. */
  Weight weight(String text) {
    return Weight.of(notNegative(text));
  }

  /** An amount of money without a part of the currency's minor unit. */
  Money money(String text) {
    try {
      return Money.exact(number(text), currency);
    } catch (ArithmeticException e) {
      throw new BadCell(Phrase.of("CELL.TOO_FINE").with("currency", currency.getCurrencyCode()));
    }
  }

  /** A date. */
  LocalDate date(String text) {
    return dates.date(text);
  }

  /** A moment; a date alone means its first. */
  OffsetDateTime moment(String text) {
    return dates.moment(text);
  }

  /** A moment; a date alone means its last. */
  OffsetDateTime lastMoment(String text) {
    return dates.lastMoment(text);
  }

  /** Yes or no. */
  boolean yesNo(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "yes", "true", "1", "x" -> true;
      case "no", "false", "0" -> false;
      default -> throw new BadCell("NOT_YES_NO");
    };
  }

  /** A unit of weight. */
  WeightUnit unit(String text) {
    return WeightUnit.of(text).orElseThrow(() -> new BadCell("NOT_UNIT"));
  }

  /** A language tag (BCP 47); an underscore is taken for a hyphen. */
  String language(String text) {
    return locale(text, "NOT_LANGUAGE").toLanguageTag();
  }

  /**
   * A locale (BCP 47) of a language that has a code of two letters (ISO 639) or one of three, or
   * {@code why} it is none; an underscore is taken for a hyphen.
   */
  static Locale locale(String text, String why) {
    var locale =
        BadCell.unless(
            why, () -> new Locale.Builder().setLanguageTag(text.replace('_', '-')).build());
    String language = locale.getLanguage();
    return BadCell.unless(
        why, locale, found -> LANGUAGES.contains(language) || language.length() == 3);
  }

  /** The kind of cell that holds one of the words of an enumeration, in any case. */
  static <E extends Enum<E>> BiFunction<CellTypes, String, E> word(Class<E> words) {
    return (types, text) -> word(words, text);
  }

  /** One of the words of an enumeration, in any case. */
  static <E extends Enum<E>> E word(Class<E> words, String text) {
    var ids = new ArrayList<String>();
    for (E word : words.getEnumConstants()) {
      if (word.name().equalsIgnoreCase(text)) {
        return word;
      }
      ids.add(word.name().toLowerCase(Locale.ROOT));
    }
    throw new BadCell(Phrase.of("CELL.NONE_OF").with("words", ids));
  }
}
