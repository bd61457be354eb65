package gambrel.trade.balance;

import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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

  /**
   * The rail weights of a body.
   *
   * @param taken the rail weights that the shop takes of the species
   */
  static Rail of(HungTree.Cache trees, BodyWeighings body, Set<Step> taken) {
    Function<List<Weighing>, RailResolver> parts = rows -> new RailResolver(trees, body, rows);
    var hot = body.of(Step.HOT);
    var cold = body.of(Step.COLD);
    var aged =
        Groups.inOrder(body.of(Step.AGED).stream(), Weighing::item).values().stream()
            .flatMap(part -> Weighing.ofLastDay(part).stream())
            .sorted(Weighing.BY_TIME)
            .toList();
    var hotAndCold = Groups.both(hot, cold);
    boolean coldIsTaken = taken.contains(Step.COLD);
    var all = parts.apply(Groups.both(coldIsTaken ? cold : hotAndCold, aged));
    var chilled = all.standing(Step.COLD, cold);
    var before = coldIsTaken ? chilled : all.replace(all.standing(Step.HOT, hot), chilled).cover();
    var later = all.standing(Step.AGED, aged);
    var boning = all.replace(before, later);
    boolean allUsed = boning.cover().pieces().containsAll(later.pieces());
    boolean fromCold = before.pieces().stream().allMatch(piece -> piece.step() == Step.COLD);
    var compared = parts.apply(hotAndCold);
    return new Rail(
        parts.apply(hot).standing(Step.HOT, hot),
        parts.apply(cold).standing(Step.COLD, cold),
        parts.apply(aged).standing(Step.AGED, aged),
        boning.cover(),
        boning.ageing().filter(ageing -> !later.isEmpty() && allUsed && fromCold),
        compared
            .coverage(compared.standing(Step.HOT, hot))
            .equals(compared.coverage(compared.standing(Step.COLD, cold))));
  }

  /** Weighings of parts that lie under a part which stands at their step; they do not count. */
  public List<Weighing> beyond() {
    return Stream.of(hot, cold, aged)
        .flatMap(weights -> weights.beyond().stream())
        .flatMap(piece -> piece.weighings().stream())
        .toList();
  }

  /** Whether the body has no rail weight. */
  public boolean isEmpty() {
    return hot.isEmpty() && cold.isEmpty() && aged.isEmpty();
  }
}
