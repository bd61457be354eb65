package gambrel.trade.cuts;

import gambrel.trade.cuts.Extension.Flaw;
import gambrel.trade.cuts.Extension.Rejected;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Adds listed items to a tree or replaces items of it. An item is placed as soon as it fits, in as
 * many rounds as needed, so that a list may name children before parents and may swap parts. Items
 * that never fit are rejected.
 */
final class Grafting {
  private final List<Item> base;
  private final Map<String, Item> listed = new LinkedHashMap<>();
  private final Map<String, Item> waiting = new LinkedHashMap<>();
  private final Map<String, Item> placed = new LinkedHashMap<>();
  private final List<Rejected> rejected = new ArrayList<>();

  Grafting(List<Item> base, List<Item> extra) {
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

  List<Rejected> rejected() {
    return rejected;
  }

  /** All items, siblings in order: replaced items in their place, new and moved items last. */
  List<Item> items() {
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
    return List.copyOf(items.values());
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
