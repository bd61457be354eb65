package gambrel.weighing;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.Optional;

/**
 * Times as nearly every scale writes them, read without the JDK's formatter, which takes as long as all
 * else about a row: {@code 2026-07-31T14:05}, with seconds or without, a blank for the T.
 */
final class PlainTime {
  private static final int MINUTES = "2026-07-31T14:05".length();
  private static final int SECONDS = "2026-07-31T14:05:30".length();

  private PlainTime() {}

  /** The time; empty for anything else, which may still be a time. */
  static Optional<LocalDateTime> read(String text) {
    boolean shaped =
        (text.length() == MINUTES || text.length() == SECONDS && text.charAt(16) == ':')
            && text.charAt(4) == '-'
            && text.charAt(7) == '-'
            && (text.charAt(10) == 'T' || text.charAt(10) == ' ')
            && text.charAt(13) == ':';
    if (!shaped) {
      return Optional.empty();
    }
    int year = number(text, 0, 4);
    int month = number(text, 5, 7);
    int day = number(text, 8, 10);
    int hour = number(text, 11, 13);
    int minute = number(text, 14, 16);
    int second = text.length() == SECONDS ? number(text, 17, 19) : 0;
    boolean sound =
        year > 0
            && isWithin(1, month, 12)
            && isWithin(1, day, 31)
            && isWithin(0, hour, 23)
            && isWithin(0, minute, 59)
            && isWithin(0, second, 59)
            && (day <= 28 || YearMonth.of(year, month).isValidDay(day));
    return sound
        ? Optional.of(LocalDateTime.of(year, month, day, hour, minute, second))
        : Optional.empty();
  }

  private static boolean isWithin(int least, int number, int most) {
    return least <= number && number <= most;
  }

  /** The digits from {@code start} up to {@code end}; -1 if there is anything else. */
  private static int number(String text, int start, int end) {
    int number = 0;
    for (int i = start; i < end; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = number * 10 + digit;
    }
    return number;
  }
}
