package gambrel.trade.cuts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A tree with items added or replaced, and the items that did not fit. An item is placed as soon as
 * it fits, in as many rounds as needed, so that a list may name children before parents and may
 * swap parts. Items that never fit are rejected.
 */
public final class Extension {
  private final Species species;
  private final List<Item> base;
  private final Map<String, Item> listed = new LinkedHashMap<>();
  private final Map<String, Item> waiting = new LinkedHashMap<>();
  private final Map<String, Item> placed = new LinkedHashMap<>();
  private final List<Rejected> rejected = new ArrayList<>();

  /** An item that is left out of a tree, with the reason. */
  public record Rejected(Item item, Flaw flaw) {}

  /** Why an item does not fit into a tree. */
  public enum Flaw {
    /** The parent is in neither the tree nor the accepted items. */
    NO_PARENT,
    /** The item would come from itself. */
    CYCLE,
    /** An earlier item of the same list has the same id. */
    TWICE,
    /** The carcase has a parent or another kind, or another item has no parent. */
    ROOT
  }

  Extension(Species species, List<Item> base, List<Item> extra) {
    this.species = species;
    this.base = base;
    base.forEach(item -> placed.put(item.id(), item));
    for (var item : extra) {
      if (listed.putIfAbsent(item.id(), item) != null) {
        rejected.add(new Rejected(item, Flaw.TWICE));
      }
    }
    waiting.putAll(listed);
    while (waiting.values().removeIf(this::place)) {
      // another round may place items whose parents were placed in this one
    }
    waiting.values().forEach(i -> rejected.add(new Rejected(i, flaw(i).orElseThrow())));
  }

  /** The items that are left out; an item of the tree whose replacement is rejected stays. */
  public List<Rejected> rejected() {
    return Collections.unmodifiableList(rejected);
  }

  /** The tree with every item that fits: replaced items in their place, new and moved ones last. */
  public CutTree tree() {
    var items = new LinkedHashMap<String, Item>();
    base.forEach(item -> items.put(item.id(), item));
    for (var item : listed.values()) {
      if (waiting.containsKey(item.id())) {
        continue;
      }
      var old = items.get(item.id());
      if (old != null && !old.parent().equals(item.parent())) {
        items.remove(item.id());
      }
      items.put(item.id(), item);
    }
    return new CutTree(species, items.values());
  }

  private boolean place(Item item) {
    if (flaw(item).isPresent()) {
      return false;
    }
    placed.put(item.id(), item);
    return true;
  }

  private Optional<Flaw> flaw(Item item) {
    if (item.id().equals(CutTree.ROOT) || item.parent().isEmpty()) {
      var isRoot = item.id().equals(CutTree.ROOT) && item.parent().isEmpty();
      return isRoot && item.kind() == Kind.CARCASE ? Optional.empty() : Optional.of(Flaw.ROOT);
    }
    if (comesFromItself(item)) {
      return Optional.of(Flaw.CYCLE);
    }
    return placed.containsKey(item.parent()) ? Optional.empty() : Optional.of(Flaw.NO_PARENT);
  }

  private boolean comesFromItself(Item item) {
    var next = item.parent();
    // the step count ends a walk into a circle of other items
    for (int steps = placed.size() + waiting.size(); steps >= 0 && next != null; steps--) {
      if (next.equals(item.id())) {
        return true;
      }
      var above = placed.getOrDefault(next, waiting.get(next));
      next = above == null ? null : above.parent();
    }
    return false;
  }
}
