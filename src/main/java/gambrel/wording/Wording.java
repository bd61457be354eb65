package gambrel.wording;

import gambrel.statement.Words;
import java.util.Locale;

/**
 * How one reader is spoken to.
 *
 * @param words the words
 * @param locale language of the words, and how numbers are printed
 * @param formats how numbers and dates are printed
 */
public record Wording(Words words, Locale locale, Formats formats) {

  /** A sentence with its figures, see {@link Words#say}. */
  public String say(String key, String... figures) {
    return words.say(key, figures);
  }

  /** A sentence about a number of things, see {@link Words#count}. */
  public String count(String key, long number, String... figures) {
    return words.count(key, number, figures);
  }

  /** BCP 47 tag of the page's text. */
  public String language() {
    return locale.toLanguageTag();
  }
}
