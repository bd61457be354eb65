package gambrel.insight.month.figures;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyWeighings;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** A figure of a body that months average: a weight as a share of another weight. */
public enum BodyFigure {
  /** Lost in the chiller, of hot. */
  CHILL(of(BodyBalance.Shares::chillShrink)),
  /** Lost while hanging, of the cold weight of the same parts. */
  AGEING(of(BodyBalance.Shares::ageingShrink)),
  /** Lost on the bench, of the weight into the boning room. */
  BENCH(of(BodyBalance.Shares::cuttingLoss)),
  /** Lost in batches, of the green weight into them. */
  BATCH(of(BodyBalance.Shares::batchLoss)),
  /** Hot, of live; unknown if the live weight was guessed. */
  DRESSING(b -> b.body().liveGuessed() ? Optional.empty() : b.shares().dressing()),
  /** Take-home, of cold. */
  TAKE_HOME(of(BodyBalance.Shares::takeHomeOfCold)),
  /** Take-home, of hot. */
  TAKE_HOME_OF_HOT(of(BodyBalance.Shares::takeHomeOfHot)),
  /** Take-home, of the weight into the boning room. */
  TAKE_HOME_OF_BONING(of(BodyBalance.Shares::takeHomeOfBoning)),
  /** Fat in bins, of the weight into the boning room. */
  FAT(of(BodyBalance.Shares::fatOfBoning)),
  /** Bone in bins and in packs, of the weight into the boning room; empty without bone bins. */
  BONE(b -> Share.of(allBone(b), b.boning())),
  /** Trim in tubs and packs, and what was minced, of the weight into the boning room. */
  TRIM(b -> Share.of(trim(b), b.boning()));

  /** Where a body loses weight, in the order of its way. */
  public static final List<BodyFigure> LOSSES = List.of(CHILL, AGEING, BENCH, BATCH);

  /** The figures that the month compares as yields, in the order of their columns. */
  public static final List<BodyFigure> YIELDS = List.of(TAKE_HOME, BONE, FAT, TRIM);

  private final Function<BodyBalance, Optional<Share>> share;

  BodyFigure(Function<BodyBalance, Optional<Share>> share) {
    this.share = share;
  }

  private static Function<BodyBalance, Optional<Share>> of(
      Function<BodyBalance.Shares, Optional<Share>> figure) {
    return balance -> figure.apply(balance.shares());
  }

  /** Its name in data files and words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The figure of one body; empty if unknown. */
  public Optional<Share> of(BodyBalance balance) {
    return share.apply(balance);
  }

  /** Whether it is of weights on the rail: then it belongs to the month of the kill. */
  public boolean isOnRail() {
    return this == CHILL || this == AGEING || this == DRESSING;
  }

  /**
   * The bodies of some months that count: those killed in them, or those cut in them. A body that
   * hung on unweighed has no loss of the bench of its own: most of it is of the rail.
   */
  public List<MonthBody> in(MonthBodies months) {
    return all(months).stream()
        .filter(MonthBody::isCounted)
        .filter(body -> this != BENCH || !LossLimit.hungUnweighed(body.balance()))
        .toList();
  }

  /** The bodies that a chart of the months shows, or that count for its lines. */
  List<MonthBody> charted(MonthBodies months, boolean lines) {
    return all(months).stream()
        .filter(body -> lines ? body.isCounted() : body.isCharted())
        .toList();
  }

  private List<MonthBody> all(MonthBodies months) {
    return isOnRail() ? months.killed() : months.cut();
  }

  /** Whether the figure of a body is known from weighings on the rail up to {@code day}. */
  boolean isKnownBy(MonthBody body, LocalDate day) {
    var times = body.balance().times();
    var last =
        switch (this) {
          case CHILL -> times.lastCold();
          case AGEING -> times.lastAged();
          default -> Optional.<LocalDate>empty();
        };
    return body.share(this).isPresent() && last.filter(day::isBefore).isEmpty();
  }

  /** The figure of several bodies together. */
  public Ratio of(Collection<MonthBody> bodies) {
    return Ratio.sum(each(bodies));
  }

  /** The figure of the bodies of a species in some months. */
  public Ratio of(MonthBodies months, Species species) {
    return of(MonthBody.of(species, in(months)));
  }

  /** How the figure spreads over several bodies, in per cent; empty if it is unknown of all. */
  public Optional<Spread> spread(Collection<MonthBody> bodies) {
    return Spread.ofShares(each(bodies));
  }

  /** A percentage of the weight that a loss is a share of, by owner, without its sign. */
  public Map<Ownership, BigFraction> lost(Collection<MonthBody> bodies, BigFraction percent) {
    var lost = Ownership.weights(bodies, body -> body.share(this).map(Share::whole));
    lost.replaceAll((whose, whole) -> whole.multiply(percent).divide(100).abs());
    return lost;
  }

  private List<Share> each(Collection<MonthBody> bodies) {
    return bodies.stream().flatMap(body -> body.share(this).stream()).toList();
  }

  private static Optional<Weight> allBone(BodyBalance body) {
    return body.outputs()
        .flatMap(Outputs::bone)
        .map(bins -> bins.plus(takenHome(body, w -> isPackedBone(body.weighings(), w))));
  }

  private static Optional<Weight> trim(BodyBalance body) {
    return body.outputs().map(outputs -> takenHome(body, w -> isTrim(body.weighings(), w)));
  }

  private static boolean isPackedBone(BodyWeighings weighings, Weighing weighing) {
    return weighing.step() == Step.PACK && weighings.kind(weighing) == Kind.BONE;
  }

  private static boolean isTrim(BodyWeighings weighings, Weighing weighing) {
    return weighings.kind(weighing) == Kind.TRIM
        || weighings.tree().facts(weighing.item()).isMinced();
  }

  private static Weight takenHome(BodyBalance body, Predicate<Weighing> which) {
    return Weighing.total(
        body.outOfBoning().stream().filter(Products::isTakenHome).filter(which).toList());
  }
}
