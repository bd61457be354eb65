package gambrel.pages.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import gambrel.files.folder.BuiltInTables;
import gambrel.pages.views.Words;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LanguagesTest {
  private static final Pattern PLACE = Pattern.compile("\\{[a-z_\\d]+}");

  /** Keys of what an English-speaking shop writes itself. */
  private static final String CLASS = "class.";

  /** Words that are the same in English and in one of the other languages. */
  private static final Set<String> SAME_WORDS =
      Set.of("Page", "Total", "Steaks", "centre {0}", "1");

  private static final Map<String, String> ENGLISH = words("en");

  private static Map<String, String> words(String language) {
    return texts("words_" + language);
  }

  private static Map<String, String> texts(String file) {
    return Words.of(List.of(FarmShop.file(file + ".properties").orElseThrow())).texts();
  }

  private static Set<String> places(String text) {
    return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"fr", "de", "es"})
  void haveEveryKeyOfEnglishAndNoOther(String language) {
    var keys = new TreeSet<>(words(language).keySet());
    keys.removeIf(key -> key.startsWith(CLASS));
    assertEquals(new TreeSet<>(ENGLISH.keySet()), keys);
  }

  @ParameterizedTest
  @ValueSource(strings = {"fr", "de", "es"})
  void askForTheSameFiguresAsEnglish(String language) {
    var words = words(language);
    var different =
        ENGLISH.keySet().stream()
            .filter(key -> words.containsKey(key))
            .filter(key -> !places(words.get(key)).equals(places(ENGLISH.get(key))))
            .toList();
    assertEquals(List.of(), different);
  }

  @ParameterizedTest
  @ValueSource(strings = {"fr", "de", "es"})
  void areNotEnglish(String language) {
    var words = words(language);
    var same =
        ENGLISH.keySet().stream()
            .filter(key -> !key.startsWith("date."))
            .filter(key -> PLACE.matcher(ENGLISH.get(key)).replaceAll("").matches(".*\\p{L}.*"))
            .filter(key -> ENGLISH.get(key).equals(words.get(key)))
            .filter(key -> !SAME_WORDS.contains(ENGLISH.get(key)))
            .toList();
    assertEquals(List.of(), same);
  }

  @ParameterizedTest
  @ValueSource(strings = {"fr", "de", "es"})
  void knowTheSameClassesOfAnimals(String language) {
    assertEquals(classes("fr"), classes(language));
  }

  private static Set<String> classes(String language) {
    return words(language).keySet().stream()
        .filter(key -> key.startsWith(CLASS))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "fr", "de", "es"})
  void haveNoQuotationMarkThatWouldEndTheTextOfAStyleSheet(String language) {
    words(language).forEach((key, text) -> assertFalse(text.contains("\""), key));
  }

  @ParameterizedTest
  @ValueSource(strings = {"words_fr", "cuts_fr", "notices_fr"})
  void keepFrenchPunctuationOnTheLineOfItsWord(String file) {
    var loose = Pattern.compile("[ \u00a0][;:?!»]|[}\\d] %|« ");
    texts(file).forEach((key, text) -> assertFalse(loose.matcher(text).find(), key));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "words_fr",
        "cuts_fr",
        "notices_fr",
        "words_de",
        "cuts_de",
        "notices_de",
        "words_es",
        "cuts_es",
        "notices_es"
      })
  void usePrintersApostrophes(String file) {
    texts(file)
        .forEach((key, text) -> assertFalse(!key.startsWith("date.") && text.contains("'"), key));
  }

  @ParameterizedTest
  @ValueSource(strings = {"fr", "de", "es"})
  void nameEveryCutAndNothingElse(String language) {
    var names = texts("cuts_" + language).keySet();
    var needed = new TreeSet<String>();
    for (var species : Species.values()) {
      for (var item : BuiltInTables.cuts(Region.AU).of(species).items()) {
        String own = species.id() + '.' + item.id();
        needed.add(names.contains(own) ? own : item.id());
      }
    }
    assertEquals(needed, new TreeSet<>(names));
  }

  @ParameterizedTest
  @ValueSource(strings = {"fr", "de", "es"})
  void holdNoKeyTwice(String language) {
    for (var kind : List.of("words_", "cuts_", "notices_")) {
      var lines = FarmShop.file(kind + language + ".properties").orElseThrow().lines().toList();
      var keys = keys(lines.stream()).toList();
      assertEquals(Set.copyOf(keys).size(), keys.size(), kind);
    }
  }

  private static Stream<String> keys(Stream<String> lines) {
    return lines
        .filter(line -> line.contains("=") && !line.startsWith("#"))
        .map(line -> line.substring(0, line.indexOf('=')));
  }
}
