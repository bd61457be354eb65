package gambrel.trade.cuts;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The parts of one species, from the carcase down to the cuts that are packed. Immutable. */
public final class CutTree {
  /** The id of every tree's root. */
  public static final String ROOT = "carcase";

  /** Half of a carcase; every tree has this item and those of the constants below. */
  public static final String SIDE = "side";

  /** The front half of a side. */
  public static final String FOREQUARTER = "forequarter";

  /** The hind half of a side. */
  public static final String HINDQUARTER = "hindquarter";

  /** Minced meat; any meat and trim can be made into it. */
  public static final String MINCE = "mince";

  /** Sausages; any meat and trim can be made into them. */
  public static final String SAUSAGES = "sausages";

  /** Trimmings of any part. */
  public static final String TRIM = "trim";

  /** Bone of any part. */
  public static final String BONE = "bone";

  /** Bone, fat and waste of any part, which are mostly not taken home. */
  public static final Set<String> USUALLY_BIN = Set.of(BONE, "fat", "waste");

  private final Species species;
  private final List<Item> items = new ArrayList<>();
  private final Map<String, Integer> order = new HashMap<>();
  private final Map<String, List<Item>> children = new HashMap<>();

  /** For each position, the items from the root down to it. */
  private final List<List<Item>> paths = new ArrayList<>();

  /** For each id, its facts with the inherited ones. */
  private final Map<String, Facts> facts = new HashMap<>();

  CutTree(Species species, Collection<Item> listed) {
    this.species = species;
    for (var item : listed) {
      children.computeIfAbsent(item.parent(), p -> new ArrayList<>()).add(item);
    }
    children.get("").forEach(root -> add(root, List.of()));
  }

  /** Adds an item and all that comes from it. */
  private void add(Item item, List<Item> above) {
    var path = new ArrayList<>(above);
    path.add(item);
    order.put(item.id(), items.size());
    items.add(item);
    paths.add(List.copyOf(path));
    facts.put(item.id(), item.facts().over(facts(item.parent())));
    children(item.id()).forEach(child -> add(child, path));
  }

  /**
   * A tree of items in any order; siblings keep the order in which they are listed.
   *
   * @throws IllegalArgumentException if there is no root, or an item is listed twice, lacks its
   *     parent or comes from itself
   */
  public static CutTree of(Species species, List<Item> items) {
    var extension = new Extension(species, List.of(), items);
    if (!extension.rejected().isEmpty()) {
      throw new IllegalArgumentException(species.id() + ": " + extension.rejected().get(0));
    }
    if (items.isEmpty()) {
      throw new IllegalArgumentException(species.id() + ": " + ROOT + " is missing");
    }
    return extension.tree();
  }

  /**
   * This tree with items added or replaced; items that do not fit are left out. A replaced item
   * keeps its place among its siblings unless its parent changes; moved and new items come last.
   */
  public Extension extend(List<Item> extra) {
    return new Extension(species, items, extra);
  }

  /** The species whose parts these are. */
  public Species species() {
    return species;
  }

  /** All items; each is followed by the items that come from it. */
  public List<Item> items() {
    return Collections.unmodifiableList(items);
  }

  /** The item with that id; empty if the tree has none. */
  public Optional<Item> find(String id) {
    var position = order.get(id);
    return position == null ? Optional.empty() : Optional.of(items.get(position));
  }

  /** The items that come directly from an item, in order; empty for a leaf or an unknown id. */
  public List<Item> children(String id) {
    return id.isEmpty()
        ? List.of()
        : Collections.unmodifiableList(children.getOrDefault(id, List.of()));
  }

  /** Whether an item is the ancestor or comes from it; false if either is unknown. */
  public boolean isUnder(String id, String ancestor) {
    var position = order.get(id);
    if (position != null) {
      for (var item : paths.get(position)) {
        if (item.id().equals(ancestor)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * The items from the root down to this one, both included.
   *
   * @throws IllegalArgumentException if the tree has no such item
   */
  public List<Item> path(String id) {
    return paths.get(order(id));
  }

  /**
   * The facts of an item: each is its own, else that of the nearest item above that has one. All
   * are empty for an unknown item.
   */
  public Facts facts(String id) {
    return facts.getOrDefault(id, Facts.INHERITED);
  }

  /**
   * The item's position in {@link #items()}, from 0.
   *
   * @throws IllegalArgumentException if the tree has no such item
   */
  public int order(String id) {
    var position = order.get(id);
    if (position == null) {
      throw new IllegalArgumentException(species.id() + ": no item " + id);
    }
    return position;
  }
}
