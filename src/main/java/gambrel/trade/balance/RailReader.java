package gambrel.trade.balance;

import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Set;

/** Finds the standing rail weights of one body: of each step, and each part's latest. */
final class RailReader {
  private final HungTree.Cache trees;
  private final BodyWeighings body;
  private final List<Weighing> hot;
  private final List<Weighing> cold;
  private final List<Weighing> aged;

  private RailReader(HungTree.Cache trees, BodyWeighings weighings) {
    this.trees = trees;
    this.body = weighings;
    this.hot = weighings.of(Step.HOT);
    this.cold = weighings.of(Step.COLD);
    this.aged = latest(weighings.of(Step.AGED));
  }

  /**
   * The rail weights of a body.
   *
   * @param rail the rail weights that the shop takes of the species
   */
  static Rail read(HungTree.Cache trees, BodyWeighings weighings, Set<Step> rail) {
    return new RailReader(trees, weighings).read(rail.contains(Step.COLD));
  }

  private Rail read(boolean coldIsTaken) {
    var base = coldIsTaken ? cold : both(hot, cold);
    var parts = parts(both(base, aged));
    var chilled = parts.standing(Step.COLD, cold);
    var before =
        coldIsTaken ? chilled : parts.replace(parts.standing(Step.HOT, hot), chilled).cover();
    var later = parts.standing(Step.AGED, aged);
    var boning = parts.replace(before, later);
    boolean allUsed = boning.cover().pieces().containsAll(later.pieces());
    boolean fromCold = before.pieces().stream().allMatch(piece -> piece.step() == Step.COLD);
    return new Rail(
        parts(hot).standing(Step.HOT, hot),
        parts(cold).standing(Step.COLD, cold),
        parts(aged).standing(Step.AGED, aged),
        boning.cover(),
        boning.ageing().filter(ageing -> !later.isEmpty() && allUsed && fromCold),
        isSameParts());
  }

  private boolean isSameParts() {
    var parts = parts(both(hot, cold));
    return parts
        .coverage(parts.standing(Step.HOT, hot))
        .equals(parts.coverage(parts.standing(Step.COLD, cold)));
  }

  /** Left and right are apart only if every compared weighing names its side. */
  private RailResolver parts(List<Weighing> compared) {
    return new RailResolver(new HungParts(trees, body.tree(), body.body().head(), compared));
  }

  private static List<Weighing> both(List<Weighing> one, List<Weighing> other) {
    var both = new ArrayList<>(one);
    both.addAll(other);
    return both;
  }

  /** The weighings of each part's latest date. */
  private static List<Weighing> latest(List<Weighing> weighings) {
    var days = new HashMap<String, LocalDate>();
    weighings.forEach(weighing -> days.put(weighing.item(), weighing.date()));
    return weighings.stream().filter(w -> w.date().equals(days.get(w.item()))).toList();
  }
}
