package gambrel.month;

import gambrel.balance.BodyBalance;
import gambrel.balance.Outputs;
import gambrel.balance.Rail;
import gambrel.measure.Weight;
import gambrel.weighing.Weighing;
import java.util.List;
import java.util.Optional;

/** The figures of which a month prints averages, each with what it is a part of. */
public final class BodyFigures {
  /** Lost in the chiller, of hot. */
  public static final Ratio.Figure CHILL = new Ratio.Figure(BodyFigures::chillLoss, BodyBalance::hot);

  /** Lost while hanging, of the cold weight of the same parts. */
  public static final Ratio.Figure AGEING =
      new Ratio.Figure(BodyFigures::ageingLoss, b -> b.rail().ageing().map(Rail.Ageing::cold));

  /** Bench loss, of the weight into the boning room. */
  public static final Ratio.Figure BENCH =
      new Ratio.Figure(b -> b.outputs().flatMap(Outputs::cuttingLoss), BodyBalance::boning);

  /** Lost in batches, of the green weight into them. */
  public static final Ratio.Figure BATCH =
      new Ratio.Figure(
          b -> b.outputs().flatMap(Outputs::batchLoss),
          b -> b.outputs().map(Outputs::tub).filter(w -> !w.isZero()));

  /** Hot, of a live weight that was weighed: a guess would pass for a yield. */
  public static final Ratio.Figure DRESSING =
      new Ratio.Figure(
          BodyBalance::hot,
          b -> b.body().liveGuessed() ? Optional.empty() : b.body().liveWeight());

  /** Take-home, of cold. */
  public static final Ratio.Figure TAKE_HOME =
      new Ratio.Figure(b -> b.outputs().map(Outputs::takeHome), BodyBalance::cold);

  /** Take-home, of the weight into the boning room. */
  public static final Ratio.Figure TAKE_HOME_OF_BONING =
      new Ratio.Figure(b -> b.outputs().map(Outputs::takeHome), BodyBalance::boning);

  /** Meat, of cold. */
  public static final Ratio.Figure MEAT =
      new Ratio.Figure(b -> b.outputs().flatMap(Outputs::meatHome), BodyBalance::cold);

  /** Bone, of the weight into the boning room. */
  public static final Ratio.Figure BONE =
      new Ratio.Figure(b -> b.outputs().flatMap(Outputs::bone), BodyBalance::boning);

  /** Fat, of the weight into the boning room. */
  public static final Ratio.Figure FAT =
      new Ratio.Figure(b -> b.outputs().flatMap(Outputs::fat), BodyBalance::boning);

  private BodyFigures() {}

  private static Optional<Weight> chillLoss(BodyBalance balance) {
    if (balance.chillShrinkPercent().isEmpty()) {
      return Optional.empty();
    }
    var lost = balance.hot().orElseThrow().minus(balance.cold().orElseThrow());
    return Optional.of(lost.minus(total(balance.trim().beforeCold())));
  }

  private static Optional<Weight> ageingLoss(BodyBalance balance) {
    return balance
        .rail()
        .ageing()
        .map(a -> a.cold().minus(a.aged()).minus(total(balance.trim().afterCold())));
  }

  private static Weight total(List<Weighing> weighings) {
    return Weight.sum(weighings.stream().map(Weighing::net).toList());
  }
}
