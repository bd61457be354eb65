package gambrel.pages.views;

import java.util.regex.Pattern;

/**
 * A text that a reader may tap or click.
 *
 * @param text as printed
 * @param target {@code tel:} or {@code mailto:} address; empty for a text that is neither
 */
public record Link(String text, String target) {
  private static final Pattern MAIL = Pattern.compile("[^\\s@<>,]+@[^\\s@<>,]+\\.[^\\s@<>,]+");
  private static final Pattern PHONE = Pattern.compile("\\+?[\\d ()/.-]{6,}");

  /** Links a text that is an e-mail address or a telephone number. */
  public static Link of(String text) {
    String bare = text.strip();
    if (MAIL.matcher(bare).matches()) {
      return new Link(bare, "mailto:" + bare);
    }
    boolean phone = PHONE.matcher(bare).matches() && bare.replaceAll("\\D", "").length() > 5;
    return new Link(bare, phone ? "tel:" + bare.replaceAll("[^\\d+]", "") : "");
  }
}
