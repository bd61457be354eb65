package gambrel.trade.cuts;

import gambrel.trade.cuts.Extension.Rejected;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The parts of one species, from the carcase down to what goes into a bag. Immutable. */
public final class CutTree {
  /** The id of every tree's root. */
  public static final String ROOT = "carcase";

  /** Half of a carcase; every tree has it, as the parts below. */
  public static final String SIDE = "side";

  /** The front half of a side. */
  public static final String FOREQUARTER = "forequarter";

  /** The hind half of a side. */
  public static final String HINDQUARTER = "hindquarter";

  /** Minced meat: what any meat and trim can be made into. */
  public static final String MINCE = "mince";

  /** Diced meat, the other thing that any meat can be made into. */
  public static final String DICE = "stewing-dice";

  /** Bone of any part. */
  public static final String BONE = "bone";

  private final Species species;
  private final List<Item> items;
  private final Map<String, Integer> order = new HashMap<>();
  private final Map<String, List<Item>> children = new HashMap<>();

  /** By id, with what is inherited filled in. */
  private final Map<String, Facts> facts = new HashMap<>();

  /** For each position, the items from the root down to it: asked of every weighing. */
  private final List<List<Item>> paths = new ArrayList<>();

  /** For each position, the position just after the last item under it. */
  private final int[] ends;

  private CutTree(Species species, List<Item> listed) {
    this.species = species;
    for (var item : listed) {
      children.computeIfAbsent(item.parent(), p -> new ArrayList<>()).add(item);
    }
    children.replaceAll((id, below) -> List.copyOf(below));
    items = depthFirst();
    for (var item : items) {
      order.put(item.id(), order.size());
      paths.add(pathTo(item));
      facts.put(item.id(), item.facts().over(facts(item.parent())));
    }
    ends = ends();
  }

  /**
   * A tree of items in any order; siblings keep the order in which they are listed.
   *
   * @throws IllegalArgumentException if there is no root, or an item is listed twice, lacks its
   *     parent or comes from itself
   */
  public static CutTree of(Species species, List<Item> items) {
    var grafting = new Grafting(List.of(), items);
    refuse(species, grafting.rejected());
    if (items.isEmpty()) {
      throw new IllegalArgumentException(species.id() + ": " + ROOT + " is missing");
    }
    return new CutTree(species, grafting.items());
  }

  /**
   * This tree with items added or replaced. A replaced item keeps its place among its siblings
   * unless its parent changes; moved and new ones come last.
   *
   * @throws IllegalArgumentException if one of them does not fit
   */
  public CutTree with(List<Item> extra) {
    var extension = extend(extra);
    refuse(species, extension.rejected());
    return extension.tree();
  }

  /** As {@link #with}, but items that do not fit are left out and reported. */
  public Extension extend(List<Item> extra) {
    var grafting = new Grafting(items, extra);
    return new Extension(new CutTree(species, grafting.items()), grafting.rejected());
  }

  /** The species whose parts these are. */
  public Species species() {
    return species;
  }

  /** All items, each followed by what comes from it. */
  public List<Item> items() {
    return items;
  }

  /** The item of that id. */
  public Optional<Item> find(String id) {
    return Optional.ofNullable(order.get(id)).map(items::get);
  }

  /** The whole body. */
  public Item root() {
    return items.get(0);
  }

  /** What comes directly from an item, in order; empty for a leaf or an unknown id. */
  public List<Item> children(String id) {
    return id.isEmpty() ? List.of() : children.getOrDefault(id, List.of());
  }

  /** Whether an item is the ancestor or comes from it; false if either is unknown. */
  public boolean isUnder(String id, String ancestor) {
    var below = order.get(id);
    var above = order.get(ancestor);
    return below != null && above != null && above <= below && below < ends[above];
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

  /** The items from the root down to {@code item}, whose parent has its path already. */
  private List<Item> pathTo(Item item) {
    var path = new ArrayList<Item>();
    if (!paths.isEmpty()) {
      path.addAll(path(item.parent()));
    }
    path.add(item);
    return List.copyOf(path);
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

  private List<Item> depthFirst() {
    var sorted = new ArrayList<Item>();
    var ahead = new ArrayDeque<>(children.get(""));
    while (!ahead.isEmpty()) {
      var item = ahead.pop();
      sorted.add(item);
      var below = children(item.id());
      for (int i = below.size() - 1; i >= 0; i--) {
        ahead.push(below.get(i));
      }
    }
    return List.copyOf(sorted);
  }

  private int[] ends() {
    var result = new int[items.size()];
    for (int i = items.size() - 1; i >= 0; i--) {
      var below = children(items.get(i).id());
      result[i] = below.isEmpty() ? i + 1 : result[order.get(below.get(below.size() - 1).id())];
    }
    return result;
  }

  private static void refuse(Species species, List<Rejected> rejected) {
    if (!rejected.isEmpty()) {
      throw new IllegalArgumentException(species.id() + ": " + rejected.get(0));
    }
  }
}
