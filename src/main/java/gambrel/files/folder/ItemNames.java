package gambrel.files.folder;

import gambrel.files.csv.NameComparison;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
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

  /** How well a word fits another one that differs by a slip of the keys. */
  private static final double SLIP = 0.9;

  /** By how much the item that a text clearly means fits better than any other. */
  private static final double CLEARLY = 0.1;

  /** How well a text fits mince, sausages or trim if it has their words. */
  private static final double MIXED = 0.9;

  /** What a name has too much if it says of the bone what a text does not. */
  private static final double UNSAID = 0.75;

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
  private final Map<Species, Names> names = new EnumMap<>(Species.class);

  /** The words of all names; found when they are needed first. */
  private final Set<String> known = new HashSet<>();

  /**
   * What an item is called.
   *
   * @param isOnPages whether pages call the item so
   * @param plain the name as it is compared
   * @param says what it says
   * @param bone whether the item is on the bone by the tables; empty if that is not known
   */
  private record Name(
      Item item,
      Species species,
      boolean isOnPages,
      String plain,
      CutWords says,
      Optional<Boolean> bone) {

    /** A text that says nothing of the bone means no name that does. */
    boolean agrees(CutWords text) {
      return text.bone().isPresent()
          ? !isAgainst(text.bone(), bone) && !isAgainst(text.bone(), says.bone())
          : says.bone().isEmpty();
    }

    /** What is mostly boned may be left on the bone, if the text says so and the name not else. */
    boolean mayHaveBone(CutWords text) {
      return text.bone().equals(Optional.of(true)) && !isAgainst(text.bone(), says.bone());
    }

    private static boolean isAgainst(Optional<Boolean> one, Optional<Boolean> other) {
      return one.isPresent() && other.isPresent() && !one.equals(other);
    }
  }

  /** The names of a species. */
  private record Names(
      List<Name> all, Map<String, List<Name>> byPlain, Map<Set<String>, List<Name>> byWords) {
    static Names of(List<Name> all) {
      return new Names(
          all,
          all.stream().collect(Collectors.groupingBy(Name::plain)),
          all.stream().collect(Collectors.groupingBy(name -> name.says().words())));
    }

    /** Those that a text means: of several ways to be one the first that any is. */
    List<Name> meant(String plain, CutWords text) {
      var same = byWords.getOrDefault(text.words(), List.of());
      var telling = byWords.getOrDefault(text.telling(), List.of());
      return Stream.of(
              byPlain.getOrDefault(plain, List.of()).stream(),
              same.stream().filter(name -> name.says().bone().equals(text.bone())),
              same.stream().filter(name -> name.agrees(text)),
              telling.stream().filter(name -> name.agrees(text)),
              telling.stream().filter(name -> name.mayHaveBone(text)))
          .map(Stream::toList)
          .filter(found -> !found.isEmpty())
          .findFirst()
          .orElse(List.of());
    }
  }

  /** A name with how well a text fits it. */
  private record Fit(Name name, double score) {
    Item item() {
      return name.item();
    }
  }

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
   * for one that the trade does not shorten so, does not count. Words that tell no cut from another
   * are passed over where no name has them.
   *
   * @param likely the species that it is of, if it names none; all if this is empty
   */
  public List<Item> named(String text, Set<Species> likely) {
    String plain = NameComparison.plain(text);
    var says = CutWords.of(text);
    return names(says, likely)
        .flatMap(names -> onPages(names.meant(plain, says)))
        .distinct()
        .toList();
  }

  /** The items that pages call so; all if they call none so. */
  private static Stream<Item> onPages(List<Name> names) {
    boolean isCalled = names.stream().anyMatch(Name::isOnPages);
    return names.stream().filter(name -> name.isOnPages || !isCalled).map(Name::item);
  }

  /**
   * The item that a text of a species means, though with words that are short for those of its name
   * or have a slip; empty if another one is nearly as like it.
   */
  public Optional<Item> clear(String text, Species species) {
    var fits = fits(text, Set.of(species)).filter(fit -> fit.name.species() == species).toList();
    return fits.stream()
        .limit(1)
        .filter(best -> best.score >= SLIP)
        .filter(
            best ->
                fits.stream()
                    .filter(other -> !other.item().equals(best.item()))
                    .noneMatch(other -> other.score > best.score - CLEARLY))
        .map(Fit::item)
        .findFirst();
  }

  /**
   * The items, at most three, of which a text has most words; none if it has no word of any.
   *
   * @param likely the species that it is of, if it names none; all if this is empty
   */
  public List<Item> nearest(String text, Set<Species> likely) {
    var ids = new HashSet<String>();
    return fits(text, likely)
        .map(Fit::item)
        .filter(item -> ids.add(item.id()))
        .limit(MOST_NEAR)
        .toList();
  }

  /** The names with how well a text fits them; the best first. */
  private Stream<Fit> fits(String text, Set<Species> likely) {
    String whole = LAST_LETTER.matcher(text.strip()).replaceFirst("");
    String plain = NameComparison.plain(whole);
    var says = CutWords.of(whole);
    if (known.isEmpty()) {
      names(Set.of())
          .flatMap(names -> names.all().stream())
          .forEach(name -> known.addAll(name.says().words()));
    }
    return names(says, likely)
        .flatMap(names -> names.all().stream())
        .map(name -> new Fit(name, name.plain.equals(plain) ? 1 : score(says, name)))
        .filter(fit -> fit.score > 0)
        .sorted(Comparator.comparing(Fit::score).reversed());
  }

  /** Whether a text has a word, and only words for species. */
  public static boolean isOfSpecies(String text) {
    var says = CutWords.of(text);
    return !says.species().isEmpty() && says.telling().isEmpty() && says.bone().isEmpty();
  }

  /** The names of the species that a text names, else of the likely ones. */
  private Stream<Names> names(CutWords text, Set<Species> likely) {
    return names(text.species().isEmpty() ? likely : text.species());
  }

  /** The names of some species, of all if none is given. */
  private Stream<Names> names(Set<Species> of) {
    return cuts.all().stream()
        .filter(tree -> of.isEmpty() || of.contains(tree.species()))
        .map(tree -> names.computeIfAbsent(tree.species(), species -> names(tree)));
  }

  private Names names(CutTree tree) {
    var also = BuiltInTables.also(tree.species(), region);
    return Names.of(
        tree.items().stream()
            .flatMap(item -> names(item, also.getOrDefault(item.id(), List.of()), tree))
            .toList());
  }

  /** The names of an item; what stands before or in brackets is only another name. */
  private static Stream<Name> names(Item item, List<String> also, CutTree tree) {
    var parts = Stream.of(item.name().split("[()]")).filter(part -> !part.isBlank()).toList();
    boolean isWhole = parts.size() == 1;
    return Stream.of(
            Stream.of(name(item.id(), false, tree, item)),
            parts.stream().map(part -> name(part, isWhole, tree, item)),
            also.stream().map(other -> name(other, false, tree, item)))
        .flatMap(some -> some);
  }

  private static Name name(String name, boolean isOnPages, CutTree tree, Item item) {
    return new Name(
        item,
        tree.species(),
        isOnPages,
        NameComparison.plain(name),
        CutWords.of(name),
        tree.facts(item.id()).bone());
  }

  /**
   * How well words fit those of a name: those that both have, of all; the words count twice. What
   * is said of the bone is one more. Mince, sausages and trim are that, whatever is said of the
   * meat in them.
   */
  private double score(CutWords text, Name name) {
    var words = text.telling();
    var own = name.says.words();
    if (isMixed(name.item) && !own.isEmpty() && words.containsAll(own)) {
      return MIXED + own.size() / 100.0;
    }
    double same = words.stream().mapToDouble(word -> alike(word, known.contains(word), own)).sum();
    boolean isSame = text.bone().isPresent() && name.agrees(text);
    int size = words.size() + (text.bone().isPresent() ? 1 : 0);
    double ownSize = own.size() + (isSame ? 1 : name.says.bone().isPresent() ? UNSAID : 0);
    return 3 * (same + (isSame && same > 0 ? 1 : 0)) / Math.max(1, 2 * size + ownSize);
  }

  private static boolean isMixed(Item item) {
    return item.kind() == Kind.TRIM || item.facts().minced().orElse(false);
  }

  /**
   * How well a word fits others. One that is known is neither mistyped nor short for another; a
   * short one fits the better the more of the letters it has, and so does the end of a long one.
   */
  private static double alike(String word, boolean isKnown, Set<String> others) {
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
}
