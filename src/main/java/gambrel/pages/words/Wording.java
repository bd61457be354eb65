package gambrel.pages.words;

import gambrel.pages.views.Words;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.PublishedRanges;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The language of one reader.
 *
 * @param words the words
 * @param locale language of the words, and how numbers are printed
 * @param formats how numbers and dates are printed
 * @param cuts names of cuts
 * @param notices words of notices, reasons and likely causes
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

  /** A sentence about a number of things, whose first figure is the number. */
  public String counted(String key, long number, String... more) {
    var figures = Stream.concat(Stream.of(formats.count(number)), Stream.of(more));
    return words.count(key, number, figures.toArray(String[]::new));
  }

  /** The first {@code most} names, and how many more there are. */
  public String names(List<String> names, int most) {
    String first = names.stream().limit(most).collect(Collectors.joining(", "));
    int more = names.size() - most;
    return more > 0 ? say("summary.more", first, formats.count(more)) : first;
  }

  /** A species in a sentence. */
  public String kind(Species species) {
    return say("summary.kind." + species.id());
  }

  /** The name of a part of a species' body. */
  public String cut(Species species, Item item) {
    return cuts.of(species, item);
  }

  /** The class of a body; as the shop wrote it if the language has no word for it. */
  public String category(Body body) {
    return category(body.category());
  }

  /** A class; as the shop wrote it if the language has no word for it. */
  public String category(String name) {
    String key = "class." + name.toLowerCase(Locale.ROOT);
    return words.has(key) ? words.say(key) : name;
  }

  /** The publisher of a range, and what the range is about. */
  public String source(PublishedRanges.Range range) {
    return range.about().isEmpty()
        ? range.source()
        : words.say("range." + range.about(), range.source());
  }

  /** BCP 47 tag of the page's text. */
  public String language() {
    return locale.toLanguageTag();
  }

  /**
   * Names of cuts in a language. The first of these is used: the shop's name for this language, the
   * shop's name in its list of cuts, the language's name, the region's name.
   *
   * <p>A name is listed as {@code ITEM=NAME} for every species or {@code SPECIES.ITEM=NAME} for
   * one.
   */
  public static final class CutNames {
    private final Map<String, String> shops = new HashMap<>();
    private final Map<String, String> languages;

    /**
     * Reads lists of names; a later list replaces names of an earlier one.
     *
     * @param builtIn contents of the built-in files
     * @param shops contents of the shop's files, or of the built-in ones if it has none
     */
    CutNames(List<String> builtIn, List<String> shops) {
      this.languages = Words.of(builtIn).texts();
      this.shops.putAll(Words.of(shops).texts());
      // A name that a shop copied from the built-in list is not the shop's own.
      this.shops.entrySet().removeIf(name -> name.getValue().equals(languages.get(name.getKey())));
    }

    String of(Species species, Item item) {
      return find(shops, species, item)
          .or(() -> item.ownName() ? Optional.of(item.name()) : find(languages, species, item))
          .orElse(item.name());
    }

    private static Optional<String> find(Map<String, String> names, Species species, Item item) {
      var ofSpecies = names.get(species.id() + '.' + item.id());
      return Optional.ofNullable(ofSpecies == null ? names.get(item.id()) : ofSpecies);
    }
  }
}
