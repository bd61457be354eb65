package gambrel.trade.balance;

import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Rail weights that add up to the weight of a body, or of its weighed parts. No part of the body is
 * in two of them.
 *
 * @param pieces the parts
 * @param beyond parts that lie under one of these and do not replace it whole; they do not count
 */
public record RailWeights(List<PartWeight> pieces, List<PartWeight> beyond) {
  /**
   * All weighings of one hung part at one step.
   *
   * @param item the part
   * @param step the step
   * @param number the number of the part that they cover
   * @param weighings the weighings
   */
  public record PartWeight(String item, Step step, int number, List<Weighing> weighings) {
    /** Copies the weighings. */
    public PartWeight {
      weighings = List.copyOf(weighings);
    }
  }

  /** No weights. */
  public static final RailWeights NONE = new RailWeights(List.of());

  /** Copies the lists. */
  public RailWeights {
    pieces = List.copyOf(pieces);
    beyond = List.copyOf(beyond);
  }

  /** Weights of parts none of which lies under another. */
  RailWeights(List<PartWeight> pieces) {
    this(pieces, List.of());
  }

  /** The parts of this and of {@code other}. */
  RailWeights and(RailWeights other) {
    return new RailWeights(Groups.both(pieces, other.pieces), Groups.both(beyond, other.beyond));
  }

  /** The same weights with all parts of {@code other} beyond them. */
  RailWeights over(RailWeights other) {
    return new RailWeights(pieces, Groups.both(beyond, Groups.both(other.pieces, other.beyond)));
  }

  /** Whether there are no weights. */
  public boolean isEmpty() {
    return pieces.isEmpty();
  }

  /** The sum; empty if nothing was weighed. */
  public Optional<Weight> weight() {
    return Weighing.sum(weighings());
  }

  /** The weighings, earliest first. */
  public List<Weighing> weighings() {
    return pieces.stream()
        .flatMap(piece -> piece.weighings().stream())
        .sorted(Weighing.BY_TIME)
        .toList();
  }

  /** When the first weighing was made. */
  public Optional<OffsetDateTime> first() {
    return weighings().stream().findFirst().map(Weighing::time);
  }

  /** When the last weighing was made. */
  public Optional<OffsetDateTime> last() {
    return Weighing.last(weighings()).map(Weighing::time);
  }

  /** The local date of the last weighing. */
  public Optional<LocalDate> lastDate() {
    return last().map(OffsetDateTime::toLocalDate);
  }
}
