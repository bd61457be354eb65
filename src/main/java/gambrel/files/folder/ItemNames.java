package gambrel.files.folder;

import gambrel.files.csv.NameComparison;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What items are called: by their ids, by their names, and by the column {@code also} of the
 * built-in tables. Finds the items that a text means.
 */
public final class ItemNames {
  private static final int MOST_NEAR = 3;

  /** Words that tell no item from another. */
  private static final Set<String> SMALL = Set.of("", "and", "the");

  /** The words for species; read when a name is compared first. */
  private static final class SpeciesWords {
    /** By word the species that it means. */
    static final Map<String, Species> MEANT =
        BuiltInTables.speciesWords().entrySet().stream()
            .collect(Collectors.toMap(word -> plain(word.getKey()), Map.Entry::getValue));

    /** A species, such as in "leg of lamb"; elsewhere "of" may be "off" without its end. */
    static final Pattern NAMED =
        Pattern.compile("\\b((?:of|de|du|d)\\W+)?(" + String.join("|", MEANT.keySet()) + ")s?\\b");
  }

  /** How well a word fits another one that differs by a slip of the keys. */
  private static final double SLIP = 0.9;

  /** By how much the item that a text clearly means fits better than any other. */
  private static final double CLEARLY = 0.1;

  /** Two words that say one thing. */
  private static final Pattern BONE_IN = Pattern.compile("\\bbone\\W+(?:in|on)\\b");

  private static final Pattern VOWELS = Pattern.compile("[aeiou]");
  private static final Pattern DOUBLE = Pattern.compile("(.)\\1");

  /** What plurals and participles end with. */
  private static final Pattern ENDING = Pattern.compile("e?n|er?|e?s|x|e?d");

  /** A letter behind the last word, as where a scale cuts a name short. */
  private static final Pattern LAST_LETTER = Pattern.compile("(?<=\\p{L}{2})\\h+\\p{L}$");

  /** The fewest letters by which the end of a compound is known. */
  private static final int SHORTEST_END = 5;

  /** A word is short for one of at most so many times its letters. */
  private static final int MOST_OF_SHORT = 3;

  private final CutTrees cuts;
  private final Region region;

  /** The names of each species; read when they are needed first. */
  private final Map<Species, List<Name>> names = new EnumMap<>(Species.class);

  /** The words of all names; found when they are needed first. */
  private final Set<String> known = new HashSet<>();

  /**
   * What an item is called.
   *
   * @param isOnPages whether pages call the item so
   * @param isOwn whether it says of the bone just what the tables say
   * @param plain the name as it is compared
   * @param words its words, in order of the alphabet
   */
  private record Name(
      Item item,
      Species species,
      boolean isOnPages,
      boolean isOwn,
      String plain,
      List<String> words) {}

  /** An item with how well a text fits it, and whether it is of a likely species. */
  private record Fit(Item item, boolean isLikely, double score) {}

  /**
   * The names of a shop's items.
   *
   * @param cuts its cut trees
   * @param region where the built-in items have these names
   */
  public ItemNames(CutTrees cuts, Region region) {
    this.cuts = cuts;
    this.region = region;
  }

  /**
   * The items that have just the words of a text for a name, in any order and number; of a species
   * those alone, if there are some, that pages call so. A word that is only nearly alike, or short
   * for another, does not count.
   *
   * @param likely the species that it is of, if it names none; all if this is empty
   */
  public List<Item> named(String text, Set<Species> likely) {
    String plain = NameComparison.plain(text);
    var words = words(text);
    var of = species(text);
    var found =
        names(of.isEmpty() ? likely : of)
            .filter(
                name -> name.plain.equals(plain) || !words.isEmpty() && words.equals(name.words))
            .toList();
    var called =
        found.stream().filter(Name::isOnPages).map(Name::species).collect(Collectors.toSet());
    return found.stream()
        .filter(name -> name.isOnPages || !called.contains(name.species))
        .map(Name::item)
        .distinct()
        .toList();
  }

  /**
   * The item that a text of a species means, though with words that are short for those of its name
   * or have a slip; empty if another one is nearly as like it.
   */
  public Optional<Item> clear(String text, Species species) {
    var fits = fits(text, Set.of(species)).filter(Fit::isLikely).toList();
    return fits.stream()
        .limit(1)
        .filter(best -> best.score >= SLIP)
        .filter(
            best ->
                fits.stream()
                    .filter(other -> !other.item.equals(best.item))
                    .noneMatch(other -> other.score > best.score - CLEARLY))
        .map(Fit::item)
        .findFirst();
  }

  /**
   * The items, at most three, of which a text has most words; none if it has no word of any.
   *
   * @param likely the species that it is probably of; their items come first
   */
  public List<Item> nearest(String text, Set<Species> likely) {
    var ids = new HashSet<String>();
    return fits(text, likely)
        .map(Fit::item)
        .filter(item -> ids.add(item.id()))
        .limit(MOST_NEAR)
        .toList();
  }

  /** All items with how well a text fits them; the likely ones first, then the best. */
  private Stream<Fit> fits(String text, Set<Species> likely) {
    String whole = LAST_LETTER.matcher(text.strip()).replaceFirst("");
    String plain = NameComparison.plain(whole);
    var words = words(whole);
    if (known.isEmpty()) {
      names(Set.of()).forEach(name -> known.addAll(name.words));
    }
    return names(species(text))
        .filter(Name::isOwn)
        .map(
            name ->
                new Fit(
                    name.item,
                    likely.contains(name.species),
                    name.plain.equals(plain) ? 1 : score(words, name.words)))
        .filter(fit -> fit.score > 0)
        .sorted(Comparator.comparing(Fit::isLikely).thenComparing(Fit::score).reversed());
  }

  /** Whether a text has a word, and only words for species. */
  public static boolean isOfSpecies(String text) {
    return !species(text).isEmpty() && words(text).isEmpty();
  }

  /** The species that a text names. */
  private static Set<Species> species(String text) {
    return SpeciesWords.NAMED
        .matcher(plain(text))
        .results()
        .map(found -> SpeciesWords.MEANT.get(found.group(2)))
        .collect(Collectors.toSet());
  }

  /** The names of items of some species, of all if none is given. */
  private Stream<Name> names(Set<Species> of) {
    return cuts.all().stream()
        .filter(tree -> of.isEmpty() || of.contains(tree.species()))
        .flatMap(tree -> names(tree).stream());
  }

  private List<Name> names(CutTree tree) {
    return names.computeIfAbsent(
        tree.species(),
        species -> {
          var also = BuiltInTables.also(species, region);
          return tree.items().stream()
              .flatMap(item -> names(item, also.getOrDefault(item.id(), List.of()), tree))
              .toList();
        });
  }

  /** The names of an item; what stands before or in brackets is only another name. */
  private static Stream<Name> names(Item item, List<String> also, CutTree tree) {
    var parts = Stream.of(item.name().split("[()]")).filter(part -> !part.isBlank()).toList();
    boolean isWhole = parts.size() == 1;
    return Stream.of(
            names(item.id(), false, tree, item),
            parts.stream().flatMap(part -> names(part, isWhole, tree, item)),
            also.stream().flatMap(other -> names(other, false, tree, item)))
        .flatMap(some -> some);
  }

  /** A name, alone and with what may be added to it: that the cut is on the bone, or is not. */
  private static Stream<Name> names(String name, boolean isOnPages, CutTree tree, Item item) {
    boolean says = name.toLowerCase(Locale.ROOT).replace("t-bone", "").contains("bone");
    var bone = tree.facts(item.id()).bone().filter(is -> !says);
    return Stream.concat(
            Stream.of(""),
            bone.stream()
                .flatMap(is -> is ? Stream.of(" bone in", " bone on") : Stream.of(" boneless")))
        .map(
            added ->
                new Name(
                    item,
                    tree.species(),
                    isOnPages,
                    added.isEmpty(),
                    NameComparison.plain(name + added),
                    words(name + added)));
  }

  /** How well words fit those of a name: those that both have, of all; the words count twice. */
  private double score(List<String> words, List<String> own) {
    double same = words.stream().mapToDouble(word -> alike(word, known.contains(word), own)).sum();
    return 3 * same / Math.max(1, 2 * words.size() + own.size());
  }

  /**
   * How well a word fits others. One that is known is neither mistyped nor short for another; a
   * short one fits the better the more of the letters it has, and so does the end of a long one.
   */
  private static double alike(String word, boolean isKnown, List<String> others) {
    if (others.contains(word)) {
      return 1;
    }
    if (others.stream().anyMatch(other -> isFormOf(word, other) || isFormOf(other, word))) {
      return SLIP;
    }
    if (isKnown) {
      return 0;
    }
    boolean isConsonants =
        !VOWELS.matcher(word).find(1)
            && others.stream().anyMatch(other -> consonants(other).equals(word));
    return isConsonants || NameComparison.nearest(word, others).isPresent()
        ? SLIP
        : others.stream().mapToDouble(other -> SLIP * part(word, other)).max().orElse(0);
  }

  /** Whether a word is another one with the end of a plural or participle. */
  private static boolean isFormOf(String word, String other) {
    return word.startsWith(other)
        && ENDING.matcher(word).region(other.length(), word.length()).matches();
  }

  /** How much of a word another one has, if it is short for it or either ends as the other. */
  private static double part(String word, String other) {
    boolean isEnd =
        Math.min(word.length(), other.length()) >= SHORTEST_END
            && (word.endsWith(other) || other.endsWith(word));
    if (isEnd) {
      return Math.min(word.length(), other.length())
          / (double) Math.max(word.length(), other.length());
    }
    return isShort(word, other) ? word.length() / (other.length() + 1.0) : 0;
  }

  /** A word without its vowels but for a first one, as labels shorten it: shldr, stk, rst. */
  private static String consonants(String word) {
    String rest = VOWELS.matcher(word.substring(1)).replaceAll("");
    return word.charAt(0) + DOUBLE.matcher(rest).replaceAll("$1");
  }

  /** Whether a word begins as another one and has not too few of its letters, in their order. */
  private static boolean isShort(String word, String other) {
    int found = 0;
    for (char letter : (other + 's').toCharArray()) {
      found += found < word.length() && word.charAt(found) == letter ? 1 : 0;
    }
    return found == word.length()
        && found > 1
        && found * MOST_OF_SHORT >= other.length()
        && word.charAt(0) == other.charAt(0);
  }

  /** A text in small letters without accents. */
  private static String plain(String text) {
    return Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .replace("œ", "oe");
  }

  /** The words of a text in the singular and in order, without the species and small ones. */
  private static List<String> words(String text) {
    String one = BONE_IN.matcher(plain(text)).replaceAll("bonein");
    return Stream.of(SpeciesWords.NAMED.matcher(one).replaceAll(" ").split("[^\\p{L}]+"))
        .filter(word -> !SMALL.contains(word))
        .map(word -> word.replaceFirst("(?<=[^s]{3})s$", ""))
        .distinct()
        .sorted()
        .toList();
  }
}
