package gambrel.pages.views;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The words of the pages in one language.
 *
 * <p>A key without a dot is a label, which templates print unchanged. A key with a dot is a
 * sentence with places for figures: {@code {0}}, {@code {1}} or names in braces. A sentence about a
 * number of things has two forms, {@code key.one} and {@code key.many}.
 *
 * @param texts the words by key
 */
public record Words(Map<String, String> texts) {
  private static final Pattern PLACE = Pattern.compile("\\{([a-z_]+|\\d)}");

  /**
   * Reads words files.
   *
   * @param files contents of properties files; a later file replaces words of an earlier one
   */
  public static Words of(List<String> files) {
    var read = new Properties();
    for (var file : files) {
      try {
        read.load(new StringReader(file));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return new Words(
        read.stringPropertyNames().stream()
            .collect(Collectors.toUnmodifiableMap(key -> key, read::getProperty)));
  }

  /** The labels that templates print. */
  public Map<String, String> labels() {
    return texts.entrySet().stream()
        .filter(word -> !word.getKey().contains("."))
        .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  /** Whether there are words for {@code key}. */
  public boolean has(String key) {
    return texts.containsKey(key);
  }

  /**
   * A sentence with its figures.
   *
   * @param figures the texts of {@code {0}}, {@code {1}} and so on
   * @throws IllegalArgumentException if no such sentence exists, or figures are too few
   */
  public String say(String key, String... figures) {
    var named = new HashMap<String, String>();
    for (int i = 0; i < figures.length; i++) {
      named.put(Integer.toString(i), figures[i]);
    }
    return say(key, named);
  }

  /**
   * A sentence with named figures.
   *
   * @param figures their texts by the names in braces
   * @throws IllegalArgumentException if no such sentence exists, or a figure is missing
   */
  public String say(String key, Map<String, String> figures) {
    var text = texts.get(key);
    if (text == null) {
      throw new IllegalArgumentException("there are no words for \"" + key + "\"");
    }
    return PLACE
        .matcher(text)
        .replaceAll(place -> Matcher.quoteReplacement(figure(key, place.group(1), figures)));
  }

  /**
   * A sentence about a number of things.
   *
   * @param number decides between {@code key.one} and {@code key.many}: the words of {@code
   *     number.singular} list the numbers for the first, which are 1 if they are missing
   */
  public String count(String key, long number, String... figures) {
    return say(key + (isSingular(number) ? ".one" : ".many"), figures);
  }

  private boolean isSingular(long number) {
    var singular = texts.getOrDefault("number.singular", "1");
    return List.of(singular.split(" ")).contains(Long.toString(number));
  }

  private static String figure(String key, String place, Map<String, String> figures) {
    var figure = figures.get(place);
    if (figure == null) {
      throw new IllegalArgumentException("\"" + key + "\" needs a figure {" + place + "}");
    }
    return figure;
  }
}
