package gambrel.files.folder;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import gambrel.files.csv.SpreadsheetDamage;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Currency;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The kinds of cell that the shop's files hold; every method is a {@link CellType}.
 *
 * @param dates how the shop writes dates
 * @param currency its currency
 * @param decimalComma whether the file may write a comma for the decimal point
 */
record CellTypes(Dates dates, Currency currency, boolean decimalComma) {
  private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)");
  private static final int MOST_DIGITS = 12;
  private static final int LONGEST = 100;

  /** The same for a file with this delimiter: beside a semicolon the comma is a decimal mark. */
  CellTypes forDelimiter(char delimiter) {
    return new CellTypes(dates, currency, delimiter == ';');
  }

  /** A key without control characters that no spreadsheet has turned into a number. */
  String id(String text) {
    if (text.chars().anyMatch(Character::isISOControl)) {
      throw new BadCell("CONTROL");
    }
    if (SpreadsheetDamage.isLostId(text)) {
      throw new BadCell(NoticeCode.SPREADSHEET_DAMAGE, Phrase.of("CELL.LOST_ID"));
    }
    return text;
  }

  /** Several keys between blanks. */
  List<String> ids(String text) {
    return List.of(text.split("\\s+")).stream().map(this::id).distinct().toList();
  }

  /** An item of the cut trees; items are written in lower case. */
  String item(String text) {
    return id(text).toLowerCase(Locale.ROOT);
  }

  /** Any number. */
  BigDecimal number(String text) {
    return number(text, decimalComma);
  }

  /**
   * The number that a text denotes, without thousands marks and exponents.
   *
   * @param decimalComma whether a comma may stand for the decimal point
   * @throws BadCell if it is none, or has more than 12 digits before or after the point
   */
  static BigDecimal number(String text, boolean decimalComma) {
    String plain = decimalComma ? text.replace(',', '.') : text;
    if (SpreadsheetDamage.isExponent(text)) {
      throw new BadCell("EXPONENT");
    }
    if (!PLAIN.matcher(plain).matches()) {
      throw new BadCell("NOT_PLAIN");
    }
    // What is very long takes long to read.
    var number = plain.length() > LONGEST ? null : new BigDecimal(plain);
    if (number == null
        || number.precision() - number.scale() > MOST_DIGITS
        || number.scale() > MOST_DIGITS) {
      throw new BadCell("TOO_MANY_DIGITS");
    }
    return number;
  }

  /** Zero or more. */
  BigDecimal notNegative(String text) {
    var number = number(text);
    if (number.signum() < 0) {
      throw new BadCell("BELOW_ZERO");
    }
    return number;
  }

  /** More than zero. */
  BigDecimal positive(String text) {
    var number = notNegative(text);
    if (number.signum() == 0) {
      throw new BadCell("NOT_ABOVE_ZERO");
    }
    return number;
  }

  /** A whole number, zero or more. */
  int count(String text) {
    try {
      return notNegative(text).intValueExact();
    } catch (ArithmeticException e) {
      throw new BadCell("NOT_WHOLE");
    }
  }

  /** A whole number, one or more. */
  int head(String text) {
    int count = count(text);
    if (count == 0) {
      throw new BadCell("BELOW_ONE");
    }
    return count;
  }

  /** A weight in the shop's unit, zero or more. */
  Weight weight(String text) {
    return Weight.of(notNegative(text));
  }

  /** An amount of money that fits the currency's minor unit. */
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

  /** A share above zero. */
  BigFraction share(String text) {
    return Shares.read(text, decimalComma);
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

  /** A language tag (BCP 47). */
  String language(String text) {
    try {
      return new Locale.Builder().setLanguageTag(text.replace('_', '-')).build().toLanguageTag();
    } catch (IllformedLocaleException e) {
      throw new BadCell("NOT_LANGUAGE");
    }
  }

  /** One of the words of an enumeration, in any case. */
  static <E extends Enum<E>> CellType<E> word(Class<E> words) {
    return (formats, text) -> {
      for (var word : words.getEnumConstants()) {
        if (word.name().equalsIgnoreCase(text)) {
          return word;
        }
      }
      throw new BadCell(Phrase.of("CELL.NONE_OF").with("words", all(words)));
    };
  }

  private static <E extends Enum<E>> List<String> all(Class<E> words) {
    return List.of(words.getEnumConstants()).stream()
        .map(word -> word.name().toLowerCase(Locale.ROOT))
        .toList();
  }
}
