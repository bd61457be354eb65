package gambrel.pages.words;

import gambrel.pages.views.Words;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.PublishedRange;
import java.util.Locale;

/**
 * How one reader is spoken to.
 *
 * @param words the words
 * @param locale language of the words, and how numbers are printed
 * @param formats how numbers and dates are printed
 * @param cuts how cuts are called
 * @param notices how notices, reasons and likely causes are said
 */
public record Wording(
    Words words, Locale locale, Formats formats, CutNames cuts, NoticeWords notices) {

  /** A sentence with its figures, see {@link Words#say}. */
  public String say(String key, String... figures) {
    return words.say(key, figures);
  }

  /** A sentence about a number of things, see {@link Words#count}. */
  public String count(String key, long number, String... figures) {
    return words.count(key, number, figures);
  }

  /** The name of a part of a species' body. */
  public String cut(Species species, Item item) {
    return cuts.of(species, item);
  }

  /** The class of a body; as the shop wrote it where the language has no word for it. */
  public String category(Body body) {
    return category(body.category());
  }

  /** A class; as the shop wrote it where the language has no word for it. */
  public String category(String name) {
    String key = "class." + name.toLowerCase(Locale.ROOT);
    return words.has(key) ? words.say(key) : name;
  }

  /** Who published a range, and of what. */
  public String source(PublishedRange range) {
    return range.about().isEmpty()
        ? range.source()
        : words.say("range." + range.about(), range.source());
  }

  /** BCP 47 tag of the page's text. */
  public String language() {
    return locale.toLanguageTag();
  }
}
