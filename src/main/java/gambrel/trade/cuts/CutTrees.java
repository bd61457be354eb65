package gambrel.trade.cuts;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** One tree for every species. Immutable. */
public final class CutTrees {
  private final Map<Species, CutTree> trees;

  private CutTrees(Map<Species, CutTree> trees) {
    this.trees = trees;
  }

  /**
   * The trees of all species.
   *
   * @throws IllegalArgumentException if a species has no tree, or two
   */
  public static CutTrees from(Collection<CutTree> trees) {
    var bySpecies = new EnumMap<Species, CutTree>(Species.class);
    for (var tree : trees) {
      if (bySpecies.put(tree.species(), tree) != null) {
        throw new IllegalArgumentException("two trees for " + tree.species().id());
      }
    }
    for (var species : Species.values()) {
      if (!bySpecies.containsKey(species)) {
        throw new IllegalArgumentException("no tree for " + species.id());
      }
    }
    return new CutTrees(bySpecies);
  }

  /** The tree of a species. */
  public CutTree of(Species species) {
    return trees.get(species);
  }

  /** These trees with the tree of one species replaced. */
  public CutTrees with(CutTree tree) {
    var changed = new EnumMap<>(trees);
    changed.put(tree.species(), tree);
    return new CutTrees(changed);
  }

  /** All trees, in the order of {@link Species}. */
  public List<CutTree> all() {
    return List.copyOf(trees.values());
  }
}
