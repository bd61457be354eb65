package gambrel.trade.balance;

import gambrel.trade.cuts.CutTree;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The hung tree of each cut tree, made at its first use. Thread-safe. */
final class HungTrees {
  private final Map<Key, HungTree> trees = new ConcurrentHashMap<>();

  /** Cut trees are compared by identity, since each species has one. */
  private record Key(CutTree tree, boolean apart) {}

  HungTree of(CutTree tree, boolean apart) {
    return trees.computeIfAbsent(
        new Key(tree, apart), key -> new HungTree(key.tree(), key.apart()));
  }
}
