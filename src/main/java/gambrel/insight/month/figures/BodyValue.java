package gambrel.insight.month.figures;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a body's take-home is worth at the shop's values: its packs, and its part of its batches at
 * the mean value of their packs. Offal and bins are left out.
 *
 * @param value money in the major unit for the part that has a value
 * @param valued weight of the take-home that has a value, in the shop's unit
 * @param takeHome weight of all take-home, in the shop's unit
 */
public record BodyValue(BigFraction value, BigFraction valued, BigFraction takeHome) {
  /** The least share of the take-home that must have a value before the body's worth is used. */
  private static final BigFraction ENOUGH = BigFraction.of(9, 10);

  private static final Comparator<BodyRate> LEAST_FIRST =
      Comparator.comparing(BodyRate::rate).thenComparing(rate -> rate.body().id());

  /**
   * The worth of take-home on cold weight, for every species of which it is known: the figure of
   * all bodies, then of each, least first.
   */
  public static List<MonthFigure> figures(MonthRecords records) {
    var name = FigureName.WORTH_OF_COLD;
    var figures = new ArrayList<MonthFigure>();
    for (var bodies : records.settled()) {
      var worths = bodies.map(all -> on(BodyBalance::cold, all, records.values()));
      var species = bodies.species();
      if (!worths.month().isEmpty()) {
        figures.add(BodyRate.figure(name, species, BodyGroup.ALL, worths.month(), worths.before()));
      }
      for (var body : worths.month().stream().sorted(LEAST_FIRST).toList()) {
        var group = new MonthFigure.OfBody(body.body());
        figures.add(MonthFigure.of(name, species, group, 1, Optional.of(body.rate())));
      }
    }
    return figures;
  }

  /** The value of bodies on a weight of theirs; those of which one is unknown are left out. */
  public static List<BodyRate> on(
      Function<BodyBalance, Optional<Weight>> weight,
      Collection<MonthBody> bodies,
      ItemValues values) {
    return bodies.stream()
        .flatMap(body -> of(body, values).on(weight.apply(body.balance()), body).stream())
        .toList();
  }

  private Optional<BodyRate> on(Optional<Weight> weight, MonthBody body) {
    return weight
        .filter(known -> !known.isZero() && isEnough())
        .map(known -> new BodyRate(body, value, known.fraction()));
  }

  /** The value of {@code body}. */
  public static BodyValue of(MonthBody body, ItemValues values) {
    var tree = body.balance().weighings().tree();
    var total = ofPacks(body.packs(), tree, values);
    for (var batch : body.balance().batches()) {
      var packs = batch.weighings().stream().filter(w -> w.step() == Step.PACK);
      var mean = ofPacks(Products.weights(packs, Weighing::item), tree, values).mean();
      var part = batch.partOf(body.id()).fraction();
      var valued = mean.isPresent() ? part : BigFraction.ZERO;
      var worth = valued.multiply(mean.orElse(BigFraction.ZERO));
      total = total.plus(new BodyValue(worth, valued, part));
    }
    return total;
  }

  private static BodyValue ofPacks(Map<String, Weight> packs, CutTree tree, ItemValues values) {
    var worth = BigFraction.ZERO;
    var valued = Weight.ZERO;
    for (var pack : packs.entrySet()) {
      var value = values.of(tree, pack.getKey());
      if (value.isPresent()) {
        worth = worth.add(value.get().multiply(pack.getValue().fraction()));
        valued = valued.plus(pack.getValue());
      }
    }
    return new BodyValue(worth, valued.fraction(), Weight.sum(packs.values()).fraction());
  }

  /** Money for a unit of weight of what has a value; empty where too little has one. */
  private Optional<BigFraction> mean() {
    return isEnough() ? Optional.of(value.divide(valued)) : Optional.empty();
  }

  /** The value of all take-home: what has no value counts at the mean of the rest. */
  public BigFraction whole() {
    return value.multiply(takeHome).divide(valued);
  }

  /** The value of two bodies together. */
  public BodyValue plus(BodyValue other) {
    return new BodyValue(
        value.add(other.value), valued.add(other.valued), takeHome.add(other.takeHome));
  }

  /** Whether at least nine tenths of the take-home have a value. */
  public boolean isEnough() {
    return takeHome.signum() > 0 && valued.compareTo(takeHome.multiply(ENOUGH)) >= 0;
  }
}
