package gambrel.trade.cuts;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** One tree for every species. Immutable. */
public final class CutTrees {
  private final Map<Species, CutTree> trees = new EnumMap<>(Species.class);

  private CutTrees() {}

  /**
   * The trees of all species.
   *
   * @throws IllegalArgumentException if a species has no tree, or two
   */
  public static CutTrees from(Collection<CutTree> trees) {
    var all = new CutTrees();
    for (var tree : trees) {
      if (all.trees.put(tree.species(), tree) != null) {
        throw new IllegalArgumentException("two trees for " + tree.species().id());
      }
    }
    for (var species : Species.values()) {
      if (!all.trees.containsKey(species)) {
        throw new IllegalArgumentException("no tree for " + species.id());
      }
    }
    return all;
  }

  /** The tree of a species. */
  public CutTree of(Species species) {
    return trees.get(species);
  }

  /** These trees with the tree of one species replaced. */
  public CutTrees with(CutTree tree) {
    var changed = new CutTrees();
    changed.trees.putAll(trees);
    changed.trees.put(tree.species(), tree);
    return changed;
  }

  /** All trees, in the order of {@link Species}. */
  public List<CutTree> all() {
    return List.copyOf(trees.values());
  }
}
