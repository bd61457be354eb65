package gambrel.trade.balance;

import gambrel.trade.cuts.CutTree;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The hung parts of each tree, made at the first call. Safe for use by several threads. */
final class HungTrees {
  private final Map<Key, HungTree> trees = new ConcurrentHashMap<>();

  /** Trees are compared by identity: each species has one. */
  private record Key(CutTree tree, boolean apart) {}

  HungTree of(CutTree tree, boolean apart) {
    return trees.computeIfAbsent(
        new Key(tree, apart), key -> new HungTree(key.tree(), key.apart()));
  }
}
