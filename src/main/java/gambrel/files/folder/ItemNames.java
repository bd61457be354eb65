package gambrel.files.folder;

import gambrel.files.csv.NameComparison;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.CutTrees;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What items are called: by their ids, by their names, and by the column {@code also} of the
 * built-in tables. Finds the items that a text means.
 */
public final class ItemNames {
  private static final int MOST_NEAR = 3;

  /** Words that tell no item from another. */
  private static final Set<String> SMALL = Set.of("", "and", "of", "the");

  /** Words that say whether a cut is on the bone. */
  private static final Set<String> OF_BONE = Set.of("bone", "in", "on", "boneless");

  /** How well a word fits another one that differs by a slip of the keys. */
  private static final double SLIP = 0.9;

  private final CutTrees cuts;
  private final Region region;

  /** By species and item what else it is called; read when it is needed first. */
  private final Map<Species, Map<String, List<String>>> also = new HashMap<>();

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
   * The only item that a text names.
   *
   * @param likely the species that it is probably of; one that the text names comes first
   * @return empty if no item has just these words for a name, or two of a species have
   */
  public Optional<Item> item(String text, Set<Species> likely) {
    return trees(text, likely)
        .map(tree -> items(text, tree, score -> score == 1))
        .filter(found -> !found.isEmpty())
        .findFirst()
        .filter(found -> found.size() == 1)
        .map(found -> found.get(0));
  }

  /** The items, at most three, of which a text has most words; none if it has no word of any. */
  public List<Item> nearest(String text, Set<Species> likely) {
    var ids = new HashSet<String>();
    return trees(text, likely)
        .flatMap(tree -> items(text, tree, score -> score > 0).stream())
        .filter(item -> ids.add(item.id()))
        .limit(MOST_NEAR)
        .toList();
  }

  /** The trees of the species that a text names, else of all, the likely ones first. */
  private Stream<CutTree> trees(String text, Set<Species> likely) {
    var words = words(text);
    var named = cuts.all().stream().filter(tree -> words.contains(tree.species().id())).toList();
    return (named.isEmpty() ? cuts.all() : named)
        .stream().sorted(Comparator.comparing(tree -> !likely.contains(tree.species())));
  }

  /** The items of a species that a text names well enough, the best first. */
  private List<Item> items(String text, CutTree tree, DoublePredicate enough) {
    var scores = new LinkedHashMap<Item, Double>();
    for (var item : tree.items()) {
      names(item, tree.species()).mapToDouble(name -> score(text, name, tree, item)).max().stream()
          .filter(enough)
          .forEach(score -> scores.put(item, score));
    }
    return scores.keySet().stream().sorted(Comparator.comparing(i -> -scores.get(i))).toList();
  }

  /** What an item is called; a part of its name in brackets is a name as well. */
  private Stream<String> names(Item item, Species species) {
    var others = also.computeIfAbsent(species, of -> BuiltInTables.also(of, region));
    return Stream.of(
            Stream.of(item.id()),
            Stream.of(item.name().split("[()]")),
            others.getOrDefault(item.id(), List.of()).stream())
        .flatMap(names -> names)
        .filter(name -> !name.isBlank());
  }

  /** How well a text fits a name: twice the words that both have, of all words of both. */
  private static double score(String text, String name, CutTree tree, Item item) {
    if (NameComparison.plain(text).equals(NameComparison.plain(name))) {
      return 1;
    }
    var words = words(text);
    var own = words(name);
    words.remove(tree.species().id());
    own.remove(tree.species().id());
    var bone = bone(words);
    if (bone.isPresent() && bone(own).isEmpty() && tree.facts(item.id()).bone().equals(bone)) {
      words.removeAll(OF_BONE);
    }
    double same = words.stream().mapToDouble(word -> alike(word, own)).sum();
    return 2 * same / Math.max(1, words.size() + own.size());
  }

  /** Whether words say that a cut is on the bone or off it; empty if they say neither. */
  private static Optional<Boolean> bone(Set<String> words) {
    boolean on = words.contains("bone") && (words.contains("in") || words.contains("on"));
    return Optional.of(on).filter(is -> is || words.contains("boneless"));
  }

  private static double alike(String word, Set<String> others) {
    return others.contains(word) ? 1 : NameComparison.nearest(word, others).isPresent() ? SLIP : 0;
  }

  /** The words of a text in the singular, without those that tell nothing. */
  private static Set<String> words(String text) {
    return Stream.of(text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{M}]+"))
        .filter(word -> !SMALL.contains(word))
        .map(word -> word.replaceFirst("(?<=[^s]{3})s$", ""))
        .collect(Collectors.toCollection(HashSet::new));
  }
}
