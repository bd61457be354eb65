package gambrel.pages.statement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.folder.BuiltInTables;
import gambrel.pages.views.Words;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.ReasonCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class WordKeysTest {
  private static final Path SOURCES = Path.of("src/main/java/gambrel");
  private static final Words WORDS =
      Words.of(List.of(FarmShop.file("words_en.properties").orElseThrow()));
  private static final Pattern LITERAL = Pattern.compile("\"([a-z_]+(?:\\.[a-z_-]+)*\\.?)\"");
  private static final Pattern SAID = Pattern.compile("\\bsay\\(\\s*\"([^\"]+)\"\\s*[,)]");
  private static final Pattern COUNTED = Pattern.compile("\\bcount(?:ed)?\\(\\s*\"([^\"]+)\"\\s*,");

  private static String sources() throws IOException {
    try (var files = Files.walk(SOURCES)) {
      var java =
          files
              .filter(f -> f.toString().endsWith(".java"))
              .filter(f -> f.toString().matches(".*/(pages|night)/.*"))
              .sorted()
              .toList();
      var text = new StringBuilder();
      for (var file : java) {
        text.append(Files.readString(file));
      }
      return text.toString();
    }
  }

  private static Set<String> all(Pattern pattern, String text) {
    return pattern.matcher(text).results().map(m -> m.group(1)).collect(Collectors.toSet());
  }

  @Test
  void thatAreSaidExist() throws IOException {
    for (var key : all(SAID, sources())) {
      assertTrue(WORDS.has(key), key);
    }
    for (var key : all(COUNTED, sources())) {
      assertTrue(WORDS.has(key + ".one") && WORDS.has(key + ".many"), key);
    }
  }

  /** A key may be put together: a literal that ends in a dot stands for all that begin with it. */
  @Test
  void thatExistAreSaid() throws IOException {
    var literals = all(LITERAL, sources());
    var unused = new TreeSet<String>();
    for (var key : WORDS.texts().keySet()) {
      String base = key.replaceAll("\\.(one|many|mob|guessed)$", "");
      boolean said =
          !key.contains(".")
              || literals.contains(key)
              || literals.contains(base)
              || literals.stream().anyMatch(l -> l.endsWith(".") && key.startsWith(l))
              || literals.contains(base.replaceFirst("^why\\.lead\\.whole", "why.lead"));
      if (!said) {
        unused.add(key);
      }
    }
    assertEquals(Set.of(), unused);
  }

  @Test
  void thatArePutTogetherExistForEveryKind() {
    for (var species : Species.values()) {
      assertTrue(WORDS.has("species." + species.id()), species.id());
      assertTrue(WORDS.has("animal.heading." + species.id()), species.id());
    }
    for (var region : Region.values()) {
      assertTrue(WORDS.has("caution.sale." + region.id()), region.id());
      assertTrue(WORDS.has("caution.cattle." + region.id()), region.id());
      assertTrue(WORDS.has("keeping.source." + region.id()), region.id());
      assertTrue(WORDS.has("keeping.cooked." + region.id()), region.id());
    }
    for (var reason : ReasonCode.values()) {
      assertTrue(WORDS.has("draft.reason." + reason.id()), reason.id());
    }
    for (var food : BuiltInTables.foods(Region.AU).all()) {
      assertTrue(WORDS.has("keeping." + food.id()), food.id());
    }
    for (var step : List.of("hot", "cold", "aged")) {
      assertTrue(WORDS.has("draft.rail." + step), step);
    }
  }
}
