package gambrel.oracle;

import java.util.List;
import java.util.Set;

/** The cut trees the calculation works on, filled by whoever calls it. */
public interface TreeSource {

  /** The species that have a tree. */
  List<String> species();

  /** A species' items in tree order (depth first, root first); empty for an unknown species. */
  List<Node> items(String species);

  /** One item; {@code parent} is empty for the root, {@code count} how many a body has. */
  record Node(String item, String parent, String kind, int count) {}

  /** The items of a species that are made of minced meat. */
  default Set<String> minced(String species) {
    return Set.of();
  }
}
