package gambrel.pages.words;

import gambrel.pages.views.Words;
import gambrel.trade.cuts.Region;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.shop.Settings;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Chooses words by language and region. The words in {@code words_LANGUAGE.properties} replace the
 * English ones. They are replaced in turn by {@code words_LANGUAGE_COUNTRY.properties} of the
 * shop's region, and then of the reader's own country. Names of cuts in {@code
 * cuts_LANGUAGE.properties} and words of notices in {@code notices_LANGUAGE.properties} are chosen
 * alike. A customer whose language has no words reads English.
 *
 * <p>Safe for use by several threads.
 */
public final class WordFiles {
  private static final Pattern PLACE = Pattern.compile("\\{\\w+}");
  private static final String ENGLISH = Locale.ENGLISH.getLanguage();

  private final Function<String, Optional<String>> builtIn;
  private final Function<String, Optional<String>> shops;
  private final Settings settings;
  private final Map<String, Wording> known = new ConcurrentHashMap<>();

  /**
   * Words for a shop.
   *
   * @param builtIn text of a built-in file by name; its words are used if the shop's file lacks
   *     them
   * @param shops text of the shop's own file by name, or of the built-in file if it has none
   */
  public WordFiles(
      Function<String, Optional<String>> builtIn,
      Function<String, Optional<String>> shops,
      Settings settings) {
    this.builtIn = builtIn;
    this.shops = shops;
    this.settings = settings;
  }

  /**
   * The words for a reader.
   *
   * @param language BCP 47 tag, or empty for the shop's
   * @throws IllegalArgumentException if a words file is broken
   */
  public Wording of(String language) {
    String wanted = language.isEmpty() ? settings.language() : language;
    return known.computeIfAbsent(wanted, tag -> choose(Locale.forLanguageTag(tag)));
  }

  private Wording choose(Locale wanted) {
    String language = isSpoken(wanted) ? wanted.getLanguage() : ENGLISH;
    var words = words("words", language, wanted);
    var locale = locale(language.equals(ENGLISH) ? Locale.ENGLISH : wanted, wanted);
    var cuts =
        new Wording.CutNames(
            texts(builtIn, "cuts", language, wanted), texts(shops, "cuts", language, wanted));
    var formats = new Formats(locale, settings.unit(), settings.currency(), words);
    var notices =
        new NoticeWords(
            words("notices", language, wanted).texts(),
            formats,
            part -> formats.inside(cuts.of(part.species(), part.item())));
    return new Wording(words, locale, formats, cuts, notices);
  }

  /** The words of one kind of file, in a language, with English for those that it lacks. */
  private Words words(String kind, String language, Locale wanted) {
    var languages = Stream.of(ENGLISH, language).distinct().toList();
    var files =
        languages.stream()
            .flatMap(
                of ->
                    Stream.of(texts(builtIn, kind, of, wanted), texts(shops, kind, of, wanted))
                        .distinct())
            .toList();
    var words = Words.of(files.stream().flatMap(List::stream).toList());
    // The built-in files alone are one list for each language.
    if (files.size() > languages.size()) {
      check(kind, words);
    }
    return words;
  }

  private boolean isSpoken(Locale wanted) {
    return !wanted.getLanguage().isEmpty()
        && !texts(shops, "words", wanted.getLanguage(), wanted).isEmpty();
  }

  /** Refuses a sentence that names a figure which the English sentence does not name. */
  private void check(String kind, Words words) {
    var known = Words.of(texts(builtIn, kind, ENGLISH, Locale.ENGLISH)).texts();
    words
        .texts()
        .forEach(
            (key, text) ->
                PLACE
                    .matcher(text)
                    .results()
                    .map(MatchResult::group)
                    .filter(place -> !known.getOrDefault(key, text).contains(place))
                    .sorted()
                    .findFirst()
                    .ifPresent(
                        place -> {
                          throw new IllegalArgumentException(
                              "\"" + key + "\" asks for " + place + ", which it is not given");
                        }));
  }

  /** The files of a language: for all countries, the shop's region and the reader's country. */
  private List<String> texts(
      Function<String, Optional<String>> source, String kind, String language, Locale wanted) {
    var suffixes = new LinkedHashSet<>(List.of(language, language + '_' + country()));
    if (wanted.getLanguage().equals(language) && !wanted.getCountry().isEmpty()) {
      suffixes.add(language + '_' + wanted.getCountry());
    }
    return suffixes.stream()
        .map(suffix -> source.apply(kind + '_' + suffix + ".properties"))
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * The locale for numbers: the shop's if the language is the shop's, else the reader's country, or
   * the shop's country if the reader has none.
   */
  private Locale locale(Locale spoken, Locale wanted) {
    var shop = settings.locale();
    if (shop.getLanguage().equals(spoken.getLanguage())) {
      return shop;
    }
    String country =
        wanted.getCountry().isEmpty() || !wanted.getLanguage().equals(spoken.getLanguage())
            ? shop.getCountry()
            : wanted.getCountry();
    return new Locale.Builder()
        .setLanguage(spoken.getLanguage())
        .setScript(spoken.getScript())
        .setRegion(country)
        .build();
  }

  private String country() {
    var region = settings.region();
    return region == Region.UK ? "GB" : region.name();
  }
}
