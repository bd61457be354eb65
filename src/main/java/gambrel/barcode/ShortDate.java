package gambrel.barcode;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;

/** Dates as {@code YYMMDD}; day 00 names a month without saying which day. */
final class ShortDate {
  private ShortDate() {}

  /** Whether six digits are a date in some century. */
  static boolean isOne(String digits) {
    int day = number(digits, 4);
    // 2000 is a leap year: 29 February is refused only where the century is known.
    return day == 0
        ? isMonth(number(digits, 2))
        : in(2000 + number(digits, 0), digits).isPresent();
  }

  /**
   * The date in the century nearest to {@code thisYear}: from 49 years before it to 50 after (GS1
   * General Specifications, section 7.12). Empty for day 00.
   */
  static Optional<LocalDate> read(String digits, int thisYear) {
    int year = number(digits, 0);
    int ahead = year - Math.floorMod(thisYear, 100);
    int century = thisYear - Math.floorMod(thisYear, 100);
    if (ahead >= 51) {
      century -= 100;
    } else if (ahead <= -50) {
      century += 100;
    }
    return in(century + year, digits);
  }

  private static Optional<LocalDate> in(int year, String digits) {
    try {
      return Optional.of(LocalDate.of(year, number(digits, 2), number(digits, 4)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static boolean isMonth(int number) {
    return number >= 1 && number <= 12;
  }

  private static int number(String digits, int at) {
    return Integer.parseInt(digits.substring(at, at + 2));
  }
}
