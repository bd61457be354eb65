package gambrel.trade.weighing;

import java.util.Set;

/**
 * What the rows of the exports are about that a correction names.
 *
 * @param bodies the bodies that they may name
 * @param batches the batches that they name
 */
public record NamedBodies(Set<String> bodies, Set<String> batches) {
  /** Copies the sets. */
  public NamedBodies {
    bodies = Set.copyOf(bodies);
    batches = Set.copyOf(batches);
  }
}
