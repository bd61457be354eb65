package gambrel.trade.decision;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NamedValues;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import java.util.Comparator;
import java.util.Objects;

/**
 * One reason for which a body waits. Two reasons with one code and one name are the same reason,
 * whatever their values: a release covers a reason though its numbers have changed.
 *
 * @param code what kind
 * @param name what it names: a ticket, a batch, a charge, a scale; or empty
 * @param saying the numbers and names that decided, in words of the notices files
 */
public record Reason(ReasonCode code, String name, Phrase saying)
    implements Comparable<Reason>, NamedValues<Reason> {
  /**
   * The name of the weight that is still to be weighed for a body to balance: where bins are
   * weighed its loss less the limit, else the usual weight of packs and tubs less theirs so far. A
   * reason has none where the usual weight is not known.
   */
  public static final String REST = "rest";

  private static final Comparator<Reason> ORDER =
      Comparator.comparing(Reason::code).thenComparing(Reason::name, ByteOrder.IDS);

  /** A reason without values. */
  public Reason(ReasonCode code, String name) {
    this(code, name, Phrase.of("REASON." + code.name()));
  }

  @Override
  public Reason with(String name, Value value) {
    return new Reason(code, this.name, saying.with(name, value));
  }

  /** The value of a name; null if the reason has none. */
  public Value value(String name) {
    return saying.values().get(name);
  }

  /** A weight that the reason names; zero if it names none. */
  public Weight weight(String name) {
    return value(name) instanceof Value.Mass mass ? mass.weight() : Weight.ZERO;
  }

  /** A text that the reason names; empty if it names none. */
  public String text(String name) {
    return value(name) instanceof Value.Text text ? text.text() : "";
  }

  @Override
  public int compareTo(Reason other) {
    return ORDER.compare(this, other);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reason reason && code == reason.code && name.equals(reason.name);
  }

  @Override
  public int hashCode() {
    return Objects.hash(code, name);
  }
}
