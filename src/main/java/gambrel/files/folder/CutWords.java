package gambrel.files.folder;

import gambrel.trade.cuts.Species;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a label or a name says of a cut.
 *
 * @param species those that it names
 * @param bone whether the cut is on the bone; empty if it does not say
 * @param words its other words in the singular and in order, each written one way
 * @param telling those of its words that tell one cut from another
 */
record CutWords(
    Set<Species> species, Optional<Boolean> bone, Set<String> words, Set<String> telling) {

  /** Words that tell no item from another. */
  private static final Set<String> SMALL = Set.of("", "and", "the");

  /** What stands before a species, as in "leg of lamb"; elsewhere "of" may be a short "off". */
  private static final Set<String> OF = Set.of("of", "de", "du", "d");

  private static final String BONE_IN = "bonein";
  private static final String BONELESS = "boneless";

  /** What is rolled is boned. */
  private static final String ROLLED = "rolled";

  /** The most words that stand for one. */
  private static final int LONGEST = 3;

  private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}]+");
  private static final Pattern OWNED = Pattern.compile("['’]s\\b");
  private static final Pattern PLURAL = Pattern.compile("(?<=[^s]{3})s$");
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}");

  /**
   * How labels write words, and what each stands for. A word that tells no cut from another stands
   * for nothing. Common practice of the trade.
   */
  private static final Map<String, String> MEANT =
      BuiltInTables.rows("cuts/words").stream()
          .collect(
              Collectors.toMap(
                  row -> String.join(" ", written(row.get("word"))), row -> row.get("means")));

  private static final Map<String, Species> OF_SPECIES =
      BuiltInTables.speciesWords().entrySet().stream()
          .collect(Collectors.toMap(word -> plain(word.getKey()), Map.Entry::getValue));

  /** What a text says. */
  static CutWords of(String text) {
    var written = written(text);
    var species = EnumSet.noneOf(Species.class);
    var words = new TreeSet<String>();
    var telling = new TreeSet<String>();
    for (int at = 0, next; at < written.size(); at = next) {
      next = end(written, at);
      String word = String.join(" ", written.subList(at, next));
      boolean isOf = OF.contains(word) && next < written.size();
      if (OF_SPECIES.containsKey(word)) {
        species.add(OF_SPECIES.get(word));
      } else if (!isOf || !OF_SPECIES.containsKey(written.get(next))) {
        String means = MEANT.getOrDefault(word, word);
        words.addAll(List.of((means.isEmpty() ? word : means).split(" ")));
        telling.addAll(List.of(means.split(" ")));
      }
    }
    boolean isBoned = words.contains(BONELESS) || words.contains(ROLLED);
    var bone = Optional.of(words.contains(BONE_IN)).filter(isOn -> isOn != isBoned);
    Stream.of(words, telling).forEach(CutWords::leaveOut);
    return new CutWords(species, bone, words, telling);
  }

  /** The end of the most words from an index on that stand for something together; else of one. */
  private static int end(List<String> written, int from) {
    return IntStream.rangeClosed(1, Math.min(LONGEST, written.size() - from))
        .map(words -> from + words)
        .filter(to -> MEANT.containsKey(String.join(" ", written.subList(from, to))))
        .max()
        .orElse(from + 1);
  }

  /** The words of a text in the singular. */
  private static List<String> written(String text) {
    return NO_LETTERS
        .splitAsStream(OWNED.matcher(plain(text)).replaceAll("s"))
        .map(word -> PLURAL.matcher(word).replaceFirst(""))
        .toList();
  }

  /** Leaves out what is said of the bone, and what says nothing. */
  private static void leaveOut(Set<String> words) {
    words.removeAll(SMALL);
    words.removeAll(Set.of(BONE_IN, BONELESS));
  }

  /** A text in small letters without accents. */
  private static String plain(String text) {
    String apart = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    return ACCENTS.matcher(apart).replaceAll("").replace("œ", "oe");
  }
}
