package gambrel.trade.balance;

import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The rail weights of a body.
 *
 * @param hot standing hot weights (H)
 * @param cold standing cold weights (C)
 * @param aged standing aged weights
 * @param boning the weight into the boning room (W): each part's latest standing weight
 * @param ageing the parts whose ageing shrink is known
 * @param sameParts whether hot and cold cover the same parts
 */
public record Rail(
    RailWeights hot,
    RailWeights cold,
    RailWeights aged,
    RailWeights boning,
    Optional<Ageing> ageing,
    boolean sameParts) {

  /**
   * Cold and aged weight of the same parts.
   *
   * @param cold their cold weight
   * @param aged their aged weight
   */
  public record Ageing(Weight cold, Weight aged) {
    static final Ageing NONE = new Ageing(Weight.ZERO, Weight.ZERO);

    Ageing and(Ageing other) {
      return new Ageing(cold.plus(other.cold), aged.plus(other.aged));
    }
  }

  /** Weighings of parts that lie under a part which stands at their step; they do not count. */
  public List<Weighing> beyond() {
    return Stream.of(hot, cold, aged)
        .flatMap(weights -> weights.beyond().stream())
        .flatMap(piece -> piece.weighings().stream())
        .toList();
  }

  /** Whether aged weights stand for some parts of the weight into the boning room only. */
  boolean isAgedInPart() {
    return boning.pieces().stream().anyMatch(piece -> piece.step() != Step.AGED);
  }

  /** Whether the body has no rail weight. */
  public boolean isEmpty() {
    return hot.isEmpty() && cold.isEmpty() && aged.isEmpty();
  }
}
