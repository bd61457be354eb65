package gambrel.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** What weighed parts stand for a part of the body, and how many of it they make up. */
record Cover(BigFraction number, List<Component> components) {

  /** The weighings of one part at one step. */
  record Component(String part, String step, int number, List<Row> rows) {
    BigFraction weight() {
      return rows.stream().map(row -> row.net).reduce(BigFraction.ZERO, BigFraction::add);
    }

    int rank() {
      return List.of("hot", "cold", "aged").indexOf(step);
    }
  }

  BigFraction weight() {
    return components.stream().map(Component::weight).reduce(BigFraction.ZERO, BigFraction::add);
  }

  int rank() {
    return components.stream().mapToInt(Component::rank).min().orElseThrow();
  }

  List<Row> rows() {
    var rows = new ArrayList<Row>();
    components.forEach(component -> rows.addAll(component.rows()));
    return rows;
  }

  /** How many of each smallest hung part the components take in. */
  static Map<String, BigFraction> leaves(List<Component> components, Hanging hanging) {
    var leaves = new TreeMap<String, BigFraction>();
    for (var component : components) {
      addLeaves(component.part(), BigFraction.of(component.number()), hanging, leaves);
    }
    return leaves;
  }

  private static void addLeaves(
      String part, BigFraction number, Hanging hanging, Map<String, BigFraction> leaves) {
    var children = hanging.children(part);
    if (children.isEmpty()) {
      leaves.merge(part, number, BigFraction::add);
    }
    for (var child : children) {
      addLeaves(child, number.multiply(hanging.ratio(child, part)), hanging, leaves);
    }
  }
}
