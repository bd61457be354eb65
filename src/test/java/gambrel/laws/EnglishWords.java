package gambrel.laws;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Pattern;

/** The words of English pages by their keys, and the numbers that a sentence puts into them. */
final class EnglishWords {
  private static final Pattern PLACE = Pattern.compile("\\{(\\d)}");

  private record Sentence(Pattern pattern, List<Integer> order, String longest) {}

  private final Properties words = new Properties();
  private final Map<String, Sentence> sentences = new HashMap<>();

  /** Words of a region; the United States have some of their own. */
  EnglishWords(boolean american) {
    load("words_en.properties");
    if (american) {
      load("words_en_US.properties");
    }
  }

  private void load(String file) {
    try (var reader = Files.newBufferedReader(Path.of("templates", file))) {
      words.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The words of a key with texts put into their places. */
  String say(String key, String... texts) {
    var said = words.getProperty(key);
    if (said == null) {
      throw new AssertionError("no words " + key);
    }
    for (int i = 0; i < texts.length; i++) {
      said = said.replace("{" + i + "}", texts[i]);
    }
    return said;
  }

  /**
   * What stands in the places of a sentence, if it is among {@code text}: by place, those without
   * one blank.
   */
  Optional<List<String>> read(String key, String text) {
    var sentence = sentences.computeIfAbsent(key, this::sentence);
    if (!text.contains(sentence.longest())) {
      return Optional.empty();
    }
    var found = sentence.pattern().matcher(text);
    if (!found.find()) {
      return Optional.empty();
    }
    var texts = new ArrayList<>(List.of("", "", "", "", "", ""));
    for (int i = 0; i < sentence.order().size(); i++) {
      texts.set(sentence.order().get(i), found.group(i + 1));
    }
    return Optional.of(texts);
  }

  private Sentence sentence(String key) {
    var said = say(key);
    var places = PLACE.matcher(said);
    var pattern = new StringBuilder();
    var order = new ArrayList<Integer>();
    int from = 0;
    while (places.find()) {
      pattern.append(Pattern.quote(said.substring(from, places.start())));
      boolean last = places.end() == said.length();
      // What begins a sentence may stand after others.
      String any = places.start() == 0 ? "[^{}:]+?" : "[^{}]+?";
      pattern.append(last ? "([^ ]+)" : "([^ ]+|" + any + ")");
      order.add(Integer.parseInt(places.group(1)));
      from = places.end();
    }
    pattern.append(Pattern.quote(said.substring(from)));
    var longest =
        PLACE.splitAsStream(said).max(Comparator.comparingInt(String::length)).orElseThrow();
    return new Sentence(Pattern.compile(pattern.toString()), order, longest);
  }
}
