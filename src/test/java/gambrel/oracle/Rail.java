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

  private final Hanging hanging;
  private final boolean takesCold;
  private final Map<String, Map<String, Cover.Component>> steps = new TreeMap<>();

  Rail(Tree tree, Standing standing, boolean takesCold) {
    this.takesCold = takesCold;
    hanging = Hanging.of(tree, standing.rows());
    for (var step : List.of("hot", "cold", "aged")) {
      Map<String, Cover.Component> parts = new TreeMap<>();
      for (var row : standing.rows(step)) {
        parts.merge(
            hanging.part(row.item),
            new Cover.Component(
                hanging.part(row.item), step, standing.number(row), List.of(row)),
            Rail::join);
      }
      steps.put(step, parts);
    }
    hot = resolve(Tree.ROOT, part -> steps.get("hot").get(part));
    cold = resolve(Tree.ROOT, part -> steps.get("cold").get(part));
    boning = resolve(Tree.ROOT, this::ownBoning);
  }

  private static Cover.Component join(Cover.Component a, Cover.Component b) {
    var rows = new ArrayList<>(a.rows());
    rows.addAll(b.rows());
    return new Cover.Component(a.part(), a.step(), a.number() + b.number(), rows);
  }

  private Cover.Component ownBoning(String part) {
    var aged = steps.get("aged").get(part);
    var chilled = steps.get("cold").get(part);
    if (aged != null && (chilled == null || aged.number() >= chilled.number())) {
      return aged;
    }
    return chilled != null || takesCold ? chilled : steps.get("hot").get(part);
  }

  private Cover resolve(String part, Function<String, Cover.Component> own) {
    var component = own.apply(part);
    var children = hanging.children(part);
    var covers = children.stream().map(child -> resolve(child, own)).toList();
    var joined = joined(part, children, covers);
    if (component == null) {
      return joined;
    }
    boolean replaced =
        joined != null
            && joined.number().compareTo(BigFraction.of(component.number())) >= 0
            && joined.rank() >= component.rank();
    return replaced
        ? joined
        : new Cover(BigFraction.of(component.number()), List.of(component));
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
    return hot != null
        && cold != null
        && !Cover.leaves(hot.components(), hanging)
            .equals(Cover.leaves(cold.components(), hanging));
  }

  /** The aged weighings that the boning weight rests on. */
  List<Cover.Component> agedUsed() {
    return boning == null
        ? List.of()
        : boning.components().stream().filter(c -> c.step().equals("aged")).toList();
  }

  /** Cold weight of the parts whose aged weight is used; null where it is not known apart. */
  BigFraction coldOfAged() {
    return coldOfAged(Tree.ROOT);
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
