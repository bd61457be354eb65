package gambrel.trade.rows;

import gambrel.trade.shop.IdIndex;
import java.util.regex.Pattern;

/** Compares the ticket numbers of scales, which may be of any length. */
final class Tickets {
  private static final Pattern NUMBER = Pattern.compile("\\d+");

  private Tickets() {}

  /** One text for all spellings of a scale's ticket, with and without leading zeros. */
  static String key(String scale, String ticket) {
    return scale + '\n' + IdIndex.withoutZeros(ticket);
  }

  /** Whether a ticket is a plain number. */
  static boolean isNumber(String ticket) {
    return NUMBER.matcher(ticket).matches();
  }

  /** Compares two tickets that are plain numbers. */
  static int compare(String one, String other) {
    String a = IdIndex.withoutZeros(one);
    String b = IdIndex.withoutZeros(other);
    return a.length() == b.length() ? a.compareTo(b) : Integer.compare(a.length(), b.length());
  }
}
