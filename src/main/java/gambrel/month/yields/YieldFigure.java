package gambrel.month.yields;

import gambrel.balance.BodyBalance;
import gambrel.balance.Outputs;
import gambrel.cuts.Kind;
import gambrel.measure.Share;
import gambrel.measure.Weight;
import gambrel.month.BodyFigures;
import gambrel.month.Ratio;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** What a body's yields are told by, each as a part of a whole. */
public enum YieldFigure {
  /** What goes home, of the cold weight. */
  TAKE_HOME(BodyFigures.TAKE_HOME),
  /** Bone in bins and in packs, of the weight into the boning room. */
  BONE(new Ratio.Figure(body -> Share.of(allBone(body), body.boning()))),
  /** Fat in bins, of the weight into the boning room. */
  FAT(BodyFigures.FAT),
  /** Trim in tubs and packs, and what was minced, of the weight into the boning room. */
  TRIM(new Ratio.Figure(body -> Share.of(trim(body), body.boning())));

  /** What trim is packed as where it does not go through a tub. */
  private static final Set<String> GROUND = Set.of("mince", "burgers", "sausages", "sausage-meat");

  private final Ratio.Figure figure;

  YieldFigure(Ratio.Figure figure) {
    this.figure = figure;
  }

  /** How it is reckoned. */
  public Ratio.Figure figure() {
    return figure;
  }

  /** Its name in data files and words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** All bone, binned or packed for stock and dogs; empty where bins are not weighed. */
  static Optional<Weight> allBone(BodyBalance body) {
    return body.outputs()
        .flatMap(Outputs::bone)
        .map(bins -> bins.plus(total(body, w -> isPackOf(body, w, Kind.BONE))));
  }

  private static Optional<Weight> trim(BodyBalance body) {
    return body.outputs().map(outputs -> total(body, w -> isTrim(body, w)));
  }

  private static boolean isTrim(BodyBalance body, Weighing weighing) {
    boolean tub = weighing.step() == Step.TUB && weighing.inBatch();
    return tub && body.weighings().kind(weighing) == Kind.TRIM
        || isPackOf(body, weighing, Kind.TRIM)
        || (tub || isPack(weighing)) && GROUND.contains(weighing.item());
  }

  private static boolean isPackOf(BodyBalance body, Weighing weighing, Kind kind) {
    return isPack(weighing) && body.weighings().kind(weighing) == kind;
  }

  private static boolean isPack(Weighing weighing) {
    return weighing.step() == Step.PACK;
  }

  private static Weight total(BodyBalance body, Predicate<Weighing> which) {
    List<Weighing> those = body.cuts().stream().filter(which).toList();
    return Weighing.total(those);
  }
}
