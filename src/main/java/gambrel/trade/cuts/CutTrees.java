package gambrel.trade.cuts;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * One tree for every species.
 *
 * @param trees by species
 */
public record CutTrees(Map<Species, CutTree> trees) {
  /** Copies the map. */
  public CutTrees {
    trees = Collections.unmodifiableMap(new EnumMap<>(trees));
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
  public Collection<CutTree> all() {
    return trees.values();
  }
}
