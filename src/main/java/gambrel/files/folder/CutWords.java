package gambrel.files.folder;

import gambrel.trade.cuts.Species;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
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
    Set<Species> species, Optional<Boolean> bone, List<String> words, List<String> telling) {

  /** Words that tell no item from another. */
  private static final Set<String> SMALL = Set.of("", "and", "the");

  private static final String BONE_IN = "bonein";
  private static final String BONELESS = "boneless";

  /** What is rolled is boned. */
  private static final String ROLLED = "rolled";

  /**
   * How labels write words, each with the one that stands for it here; those that tell no cut from
   * another with none. Common practice of the trade.
   */
  private static final Map<String, String> MEANT = new HashMap<>();

  private static final Map<String, Species> OF_SPECIES =
      BuiltInTables.speciesWords().entrySet().stream()
          .collect(Collectors.toMap(word -> plain(word.getKey()), Map.Entry::getValue));

  /** A species, such as in "leg of lamb"; elsewhere "of" may be "off" without its end. */
  private static final Pattern SPECIES =
      Pattern.compile(
          "\\b((?:of|de|du|d)\\W+)?(" + String.join("|", OF_SPECIES.keySet()) + ")s?\\b");

  private static final Pattern WRITTEN;

  static {
    BuiltInTables.rows("cuts/words").forEach(row -> MEANT.put(row.get("word"), row.get("means")));
    WRITTEN =
        Pattern.compile(
            MEANT.keySet().stream()
                .sorted(Comparator.comparing(String::length).reversed())
                .map(word -> word.replace(" ", "[^\\p{L}]+"))
                .collect(Collectors.joining("|", "(?<!\\p{L})(", ")s?(?!\\p{L})")));
  }

  /** What a text says. */
  static CutWords of(String text) {
    String plain = plain(text).replaceAll("['’]s\\b", "s");
    var species =
        SPECIES
            .matcher(plain)
            .results()
            .map(found -> OF_SPECIES.get(found.group(2)))
            .collect(Collectors.toSet());
    String rest = SPECIES.matcher(plain).replaceAll(" ");
    var words = words(rest, CutWords::all);
    boolean isBoned = words.contains(BONELESS) || words.contains(ROLLED);
    var bone =
        words.contains(BONE_IN) == isBoned
            ? Optional.<Boolean>empty()
            : Optional.of(words.contains(BONE_IN));
    return new CutWords(
        species, bone, withoutBone(words), withoutBone(words(rest, CutWords::telling)));
  }

  /** What a text that stands in the table means; one that tells no cut from another is left out. */
  private static String telling(String written) {
    return MEANT.get(written.replaceAll("[^\\p{L}]+", " "));
  }

  /** As {@link #telling}, but one that tells no cut from another stays. */
  private static String all(String written) {
    String means = telling(written);
    return means.isEmpty() ? written : means;
  }

  private static List<String> words(String text, UnaryOperator<String> meant) {
    String one = WRITTEN.matcher(text).replaceAll(found -> meant.apply(found.group(1)));
    return Stream.of(one.split("[^\\p{L}]+"))
        .filter(word -> !SMALL.contains(word))
        .map(word -> word.replaceFirst("(?<=[^s]{3})s$", ""))
        .distinct()
        .sorted()
        .toList();
  }

  private static List<String> withoutBone(List<String> words) {
    return words.stream().filter(word -> !word.equals(BONE_IN) && !word.equals(BONELESS)).toList();
  }

  /** A text in small letters without accents. */
  private static String plain(String text) {
    return Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .replace("œ", "oe");
  }
}
