package gambrel.decision;

import gambrel.measure.ByteOrder;
import java.util.Comparator;

/**
 * One reason for which a body waits.
 *
 * @param code what kind
 * @param name what it names: a ticket, a batch, a charge, a scale; or empty
 */
public record Reason(ReasonCode code, String name) implements Comparable<Reason> {
  @Override
  public int compareTo(Reason other) {
    return Comparator.comparing(Reason::code).thenComparing(Reason::name, ByteOrder.IDS).compare(this, other);
  }
}
