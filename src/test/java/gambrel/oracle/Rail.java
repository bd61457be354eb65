package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Hot, cold and boning weight of a body, each from the parts that stand for the whole. */
final class Rail {
  final Cover hot;
  final Cover cold;
  final Cover boning;

  final Cover aged;

  /** Weighings of parts under a part that stands, which do not replace it whole. */
  final List<Row> surplus = new ArrayList<>();

  /** Whether what lies under a part replaced it. */
  boolean replacedWhole;

  private final List<Row> rest = new ArrayList<>();

  /** Whether no part that hung before is missing among the aged ones. */
  final boolean agedAll;

  private final Tree tree;
  private final Standing standing;
  private final boolean takesCold;

  /** How the compared weighings name parts, and their components by step. */
  private Hanging hanging;

  private final Map<String, Map<String, Cover.Component>> steps = new TreeMap<>();

  Rail(Tree tree, Standing standing, boolean takesCold) {
    this.tree = tree;
    this.standing = standing;
    this.takesCold = takesCold;
    hot = alone("hot");
    cold = alone("cold");
    aged = alone("aged");
    compare(takesCold ? List.of("cold", "aged") : List.of("hot", "cold", "aged"));
    var chilled = resolved("cold");
    var before = takesCold ? chilled : overlay(Tree.ROOT, resolved("hot"), chilled);
    var all = overlay(Tree.ROOT, before, resolved("aged"));
    agedAll = atLeast(all.stream().filter(c -> c.step().equals("aged")).toList(), before);
    boning = all.isEmpty() ? null : new Cover(BigFraction.ONE, all);
  }

  private List<Cover.Component> resolved(String step) {
    var cover = resolve(Tree.ROOT, part -> steps.get(step).get(part));
    return cover == null ? List.of() : cover.components();
  }

  /** The later components wherever they take in at least as many of everything. */
  private List<Cover.Component> overlay(
      String part, List<Cover.Component> before, List<Cover.Component> later) {
    if (later.isEmpty()
        || (!atLeast(later, before) && before.stream().anyMatch(c -> c.part().equals(part)))) {
      return before;
    }
    if (atLeast(later, before)) {
      return later;
    }
    var all = new ArrayList<Cover.Component>();
    for (var child : hanging.children(part)) {
      all.addAll(overlay(child, under(child, before), under(child, later)));
    }
    return all;
  }

  private List<Cover.Component> under(String part, List<Cover.Component> components) {
    return components.stream().filter(c -> hanging.isUnder(c.part(), part)).toList();
  }

  private boolean atLeast(List<Cover.Component> more, List<Cover.Component> fewer) {
    var most = Cover.leaves(more, hanging);
    return Cover.leaves(fewer, hanging).entrySet().stream()
        .allMatch(
            e -> most.getOrDefault(e.getKey(), BigFraction.ZERO).compareTo(e.getValue()) >= 0);
  }

  /** Whether no smallest part is taken in more often than the body has it. */
  private boolean fits(List<Cover.Component> components) {
    return Cover.leaves(components, hanging).entrySet().stream()
        .allMatch(
            e ->
                e.getValue().compareTo(BigFraction.of(tree.count(e.getKey()) * standing.head()))
                    <= 0);
  }

  private Cover alone(String step) {
    compare(List.of(step));
    rest.clear();
    var cover = resolve(Tree.ROOT, part -> steps.get(step).get(part));
    surplus.addAll(rest);
    return cover;
  }

  /** Tells left from right where all weighings of these steps do. */
  private void compare(List<String> compared) {
    hanging =
        Hanging.of(tree, standing.rows().stream().filter(r -> compared.contains(r.step)).toList());
    for (var step : List.of("hot", "cold", "aged")) {
      Map<String, Cover.Component> parts = new TreeMap<>();
      for (var row : compared.contains(step) ? standing.rows(step) : List.<Row>of()) {
        parts.merge(
            hanging.part(row.item),
            new Cover.Component(hanging.part(row.item), step, standing.number(row), List.of(row)),
            Rail::join);
      }
      steps.put(step, parts);
    }
  }

  /** The rail weighings that no others replace. */
  List<Row> standingRows() {
    var rows = new ArrayList<Row>();
    for (var cover : new Cover[] {hot, cold, aged}) {
      if (cover != null) {
        rows.addAll(cover.rows());
      }
    }
    return rows;
  }

  private static Cover.Component join(Cover.Component a, Cover.Component b) {
    var rows = new ArrayList<>(a.rows());
    rows.addAll(b.rows());
    return new Cover.Component(a.part(), a.step(), a.number() + b.number(), rows);
  }

  private Cover resolve(String part, Function<String, Cover.Component> own) {
    var component = own.apply(part);
    var children = hanging.children(part);
    var covers = children.stream().map(child -> resolve(child, own)).toList();
    var joined = joined(part, children, covers);
    if (component == null) {
      return joined;
    }
    var whole = new Cover(BigFraction.of(component.number()), List.of(component));
    if (joined == null) {
      return whole;
    }
    var both = new ArrayList<>(whole.components());
    both.addAll(joined.components());
    if (fits(both)) {
      return new Cover(whole.number(), both);
    }
    if (isAll(part, joined.components())) {
      replacedWhole = true;
      return joined;
    }
    rest.addAll(joined.rows());
    return whole;
  }

  /** Whether the components take up the part as often as the body has it, no more and no less. */
  private boolean isAll(String part, List<Cover.Component> components) {
    var whole = new Cover.Component(part, "", tree.count(part) * standing.head(), List.of());
    return Cover.leaves(components, hanging).equals(Cover.leaves(List.of(whole), hanging));
  }

  /** The children together; they make up as many of the part as the scarcest of them allows. */
  private Cover joined(String part, List<String> children, List<Cover> covers) {
    var components = new ArrayList<Cover.Component>();
    BigFraction least = null;
    for (int i = 0; i < children.size(); i++) {
      var cover = covers.get(i);
      var number =
          cover == null
              ? BigFraction.ZERO
              : cover.number().divide(hanging.ratio(children.get(i), part));
      least = least == null || number.compareTo(least) < 0 ? number : least;
      if (cover != null) {
        components.addAll(cover.components());
      }
    }
    return components.isEmpty() ? null : new Cover(least, components);
  }

  /** Whether hot and cold are both there and take in different parts. */
  boolean partsDiffer() {
    if (hot == null || cold == null) {
      return false;
    }
    compare(List.of("hot", "cold"));
    var one = resolve(Tree.ROOT, part -> steps.get("hot").get(part));
    var other = resolve(Tree.ROOT, part -> steps.get("cold").get(part));
    boolean differ =
        !Cover.leaves(one.components(), hanging).equals(Cover.leaves(other.components(), hanging));
    compare(takesCold ? List.of("cold", "aged") : List.of("hot", "cold", "aged"));
    return differ;
  }

  /** The aged weighings that the boning weight rests on. */
  List<Cover.Component> agedUsed() {
    return boning == null
        ? List.of()
        : boning.components().stream().filter(c -> c.step().equals("aged")).toList();
  }

  /** Cold weight of the parts that were aged; null where that of one is not known apart. */
  BigFraction coldOfAged() {
    var used = new ArrayList<Row>();
    agedUsed().forEach(component -> used.addAll(component.rows()));
    var all = resolve(Tree.ROOT, part -> steps.get("aged").get(part));
    return used.containsAll(all.rows()) ? coldOfAged(Tree.ROOT) : null;
  }

  private BigFraction coldOfAged(String part) {
    var aged = agedUsed().stream().filter(c -> hanging.isUnder(c.part(), part)).toList();
    if (aged.isEmpty()) {
      return BigFraction.ZERO;
    }
    var chilled = resolve(part, p -> steps.get("cold").get(p));
    if (chilled != null
        && Cover.leaves(chilled.components(), hanging).equals(Cover.leaves(aged, hanging))) {
      return chilled.weight();
    }
    if (aged.stream().anyMatch(c -> c.part().equals(part))) {
      return null;
    }
    var sum = BigFraction.ZERO;
    for (var child : hanging.children(part)) {
      var one = coldOfAged(child);
      if (one == null) {
        return null;
      }
      sum = sum.add(one);
    }
    return sum;
  }
}
