package gambrel.files.guess;

import gambrel.trade.cuts.CutTree;
import gambrel.trade.measure.FileWord;
import gambrel.trade.shop.Step;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words that scales print above columns and for a status, in several languages. */
final class GuessWords {
  /** The words for columns that hold something else. */
  private static final String NONE = "none";

  /** What stands between words. */
  static final String BETWEEN = "[^\\p{L}\\p{M}]+";

  /** Words that fit many columns. */
  private static final String WEAK = "weak";

  /** What the keys of the words of descriptions begin with. */
  private static final String MEANS = "means.";

  private static final int WHOLE = 60;
  private static final int WORD = 45;
  private static final int BEGINNING = 30;
  private static final int WEAKLY = 15;
  private static final int SHORTEST_BEGINNING = 4;

  private static final Map<String, List<String>> WORDS = read();

  /** Headers that say how a date or a clock time is written. */
  private static final Map<String, Pattern> WRITTEN_AS =
      Map.of("date", Pattern.compile("[ymdj/.-]{4,10}"), "clock", Pattern.compile("hh:?mm(:?ss)?"));

  private GuessWords() {}

  private static Map<String, List<String>> read() {
    var texts = new Properties();
    try (var in = GuessWords.class.getResourceAsStream("/gambrel/guess/words.properties")) {
      texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    var words = new HashMap<String, List<String>>();
    texts
        .stringPropertyNames()
        .forEach(key -> words.put(key, List.of(texts.getProperty(key).split(" +"))));
    return Map.copyOf(words);
  }

  /** All columns that have words, in the order of a layout. */
  static List<String> columns() {
    return WORDS.get("columns");
  }

  /** Whether a header text is of a column that holds something else. */
  static boolean isOther(String header) {
    int other = score(NONE, header);
    return other > 0 && columns().stream().allMatch(column -> score(column, header) < other);
  }

  /** Whether another column of that kind is rather meant, as beside the time of printing. */
  static boolean isSecond(String header) {
    return score(NONE, header) > 0 || score("second", header) > 0;
  }

  /** Whether a column says how many packs were weighed together. */
  static boolean isOfPacks(String header) {
    return score("packs", header) > 0;
  }

  /** A header text with blanks between words that only a capital sets apart: {@code netGrams}. */
  static String spaced(String header) {
    return header.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ");
  }

  /** How well a header text fits a column; 0 if not at all. */
  static int score(String column, String header) {
    String text = header.strip().toLowerCase(Locale.ROOT);
    var as = WRITTEN_AS.get(column);
    if (as != null && as.matcher(text).matches() && text.matches(".*[dh].*")) {
      return WHOLE;
    }
    var parts = spaced(header).toLowerCase(Locale.ROOT).split(BETWEEN);
    int best = 0;
    for (String word : WORDS.getOrDefault(column, List.of())) {
      int score = text.equals(word) ? WHOLE : 0;
      for (String part : parts) {
        boolean begins = word.length() >= SHORTEST_BEGINNING && part.startsWith(word);
        score = Math.max(score, part.equals(word) ? WORD : begins ? BEGINNING : 0);
      }
      best = Math.max(best, isIn(WEAK, word) ? Math.min(score, WEAKLY) : score);
    }
    return best;
  }

  private static boolean isIn(String key, String word) {
    return WORDS.get(key).contains(word);
  }

  /** The unit of weight that a word means, as a layout writes it. The word may be in brackets. */
  static Optional<String> unit(String word) {
    String plain = word.toLowerCase(Locale.ROOT).replaceAll("^[(\\[]|[)\\].]$", "");
    return Stream.of("kg", "g", "lb", "oz").filter(u -> isIn("unit." + u, plain)).findFirst();
  }

  static boolean isUnit(String word) {
    return unit(word).isPresent();
  }

  /** What all words of a description mean; empty if they mean nothing or two things. */
  static Optional<Meaning> meaning(String description) {
    var words = List.of(description.strip().toLowerCase(Locale.ROOT).split(BETWEEN));
    var meanings =
        WORDS.keySet().stream()
            .filter(key -> key.startsWith(MEANS))
            .filter(key -> words.stream().allMatch(word -> isOf(key, word)))
            .filter(key -> words.stream().anyMatch(word -> isIn(key, word)))
            .toList();
    return meanings.stream()
        .filter(only -> meanings.size() == 1)
        .map(only -> only.substring(MEANS.length()).split(",", 2))
        .map(cells -> new Meaning(cells[0], FileWord.find(Step.class, cells[1]).orElseThrow()))
        .findFirst();
  }

  /** Whether a word is of a meaning; what things are put into is of every meaning with step bin. */
  private static boolean isOf(String key, String word) {
    return isIn(key, word) || key.endsWith("," + Step.BIN.id()) && isIn("holders", word);
  }

  /** The step, hot or cold, of which a text has a word and the other step has none. */
  static Optional<Step> railStep(String text) {
    var words = List.of(text.strip().toLowerCase(Locale.ROOT).split(BETWEEN));
    var own = words.stream().filter(word -> isOn(Step.HOT, word) != isOn(Step.COLD, word)).toList();
    return Stream.of(Step.HOT, Step.COLD)
        .filter(step -> !own.isEmpty() && own.stream().allMatch(word -> isOn(step, word)))
        .findFirst();
  }

  /** A text without its words for hot and cold. */
  static String withoutRail(String text) {
    return Stream.of(text.strip().toLowerCase(Locale.ROOT).split(BETWEEN))
        .filter(word -> isOn(Step.HOT, word) == isOn(Step.COLD, word))
        .collect(Collectors.joining(" "));
  }

  /** A text without its words for left and right. */
  static String withoutSide(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split(" "))
        .filter(word -> !isIn("sides", word))
        .collect(Collectors.joining(" "));
  }

  private static boolean isOn(Step step, String word) {
    return isIn(MEANS + CutTree.ROOT + ',' + step.id(), word);
  }

  // Words for a weighing that counts, one that is cancelled, or one that is printed again.

  /** Whether common practice gives a word one meaning. */
  static boolean isStatus(String word) {
    return status(word, "").isPresent();
  }

  /** Whether one of the words of a text is for a cancelled weighing, such as before a number. */
  static boolean mentionsVoid(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"))
        .anyMatch(word -> isIn("status.void", word));
  }

  /** Whether each word is for hot or for cold. */
  static boolean areOfRail(List<String> words) {
    return words.stream().allMatch(word -> railStep(word).isPresent());
  }

  /** Whether words only say which of two sides a weight is of; dashes stand for a whole body. */
  static boolean areOfSides(List<String> words) {
    var sides = words.stream().filter(word -> !word.matches("-+")).distinct().toList();
    return sides.size() > 1
        && sides.stream().allMatch(side -> isIn("sides", side.toLowerCase(Locale.ROOT)));
  }

  /** Whether words only say which weights are gross and which are net. */
  static boolean areOfMode(List<String> words) {
    return words.stream().allMatch(word -> isIn("mode", word.toLowerCase(Locale.ROOT)));
  }

  /** Whether a word may say that a weighing does not count. */
  static boolean isDoubtful(String word) {
    String plain = word.toLowerCase(Locale.ROOT);
    return isIn("status.doubtful", plain)
        || plain.startsWith("unst")
        || plain.matches("[^\\p{L}\\d]+");
  }

  /**
   * What a status means, {@code ok}, {@code void} or {@code repeat}; empty if it could mean any.
   *
   * @param header the text above its column
   */
  static Optional<String> status(String word, String header) {
    String plain = word.toLowerCase(Locale.ROOT);
    boolean asksForVoid = isIn("status.void", header.toLowerCase(Locale.ROOT));
    if (isIn("status.ok", plain) || asksForVoid && isIn("status.no", plain)) {
      return Optional.of("ok");
    }
    boolean isVoid = isIn("status.void", plain) || asksForVoid && isIn("status.yes", plain);
    return isVoid
        ? Optional.of("void")
        : Optional.of("repeat").filter(repeat -> isIn("status." + repeat, plain));
  }
}
