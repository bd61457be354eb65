package gambrel.files.mail;

import java.net.IDN;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * One plain address, {@code local@domain}, without a name, a comment or quotes: ASCII letters,
 * digits and marks before the sign (RFC 5322, 3.2.3, dot-atom), a domain of letters and digits of
 * any language after it.
 */
public final class MailAddress {
  private static final int LONGEST = 254;
  private static final int LONGEST_LOCAL = 64;
  private static final String ATOM = "[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+";
  private static final Pattern LOCAL = Pattern.compile(ATOM + "(?:\\." + ATOM + ")*");
  private static final String LABEL =
      "[\\p{L}\\p{N}](?:[\\p{L}\\p{M}\\p{N}-]*[\\p{L}\\p{M}\\p{N}])?";
  private static final Pattern DOMAIN =
      Pattern.compile("localhost|" + LABEL + "(?:\\." + LABEL + ")+");

  private MailAddress() {}

  /** Whether mail can be sent to a text; never if it holds a line break or several addresses. */
  public static boolean isUsable(String text) {
    int at = text.lastIndexOf('@');
    return at > 0
        && at <= LONGEST_LOCAL
        && LOCAL.matcher(text.substring(0, at)).matches()
        && DOMAIN.matcher(text.substring(at + 1)).matches()
        && isOneDomain(text.substring(at + 1));
  }

  /**
   * Whether a domain comes back from its ASCII form as it was. Some letters do not, and would lead
   * to another domain: the German sharp s becomes ss.
   */
  private static boolean isOneDomain(String domain) {
    try {
      String ascii = IDN.toASCII(domain, IDN.USE_STD3_ASCII_RULES);
      return ascii.length() <= LONGEST - LONGEST_LOCAL
          && (ascii.equalsIgnoreCase(domain)
              || IDN.toUnicode(ascii).equals(domain.toLowerCase(Locale.ROOT)));
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  /** A usable address in ASCII (RFC 3490). */
  static String ascii(String address) {
    int at = address.lastIndexOf('@') + 1;
    return address.substring(0, at) + IDN.toASCII(address.substring(at));
  }
}
