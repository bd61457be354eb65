package gambrel.insight.month.money;

import gambrel.insight.month.figures.BodyValue;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.account.Billing;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a body of a class may cost at most for a unit of hot weight, so that its take-home brings
 * the money back. Of the shop's like bodies of the month and the twelve before: the worth of their
 * take-home at the values of the month's last day, less what the price list of that day asks for
 * the work on them, over their hot weight. What chilling, hanging, bone and the bench take is in
 * it, since the take-home is what they left.
 *
 * @param body a body whose hot weight, worth and work are known
 * @param hot its hot weight, in the shop's unit
 * @param takeHome its take-home weight, in the shop's unit
 * @param worth of the take-home, in the major unit
 * @param work what the price list asks, without tax, in the major unit
 */
public record Bid(
    MonthBody body, BigFraction hot, BigFraction takeHome, BigFraction worth, BigFraction work) {
  /** A class with fewer bodies has no bid. */
  private static final int FEWEST = 3;

  /** The figures of every species and class with enough bodies; the class may be empty. */
  public static List<MonthFigure> figures(MonthRecords records) {
    var bids = records.settledOfAll().stream().flatMap(body -> of(records, body).stream()).toList();
    var figures = new ArrayList<MonthFigure>();
    for (var species : Species.values()) {
      var own = bids.stream().filter(bid -> bid.body().species() == species);
      new TreeMap<>(Groups.inOrder(own, bid -> bid.body().body().category()))
          .forEach((category, some) -> add(figures, species, category, some));
    }
    return figures;
  }

  private static Optional<Bid> of(MonthRecords records, MonthBody body) {
    var balance = body.balance();
    var currency = records.settings().currency();
    var hot = balance.hot().filter(weight -> !weight.isZero()).map(Weight::fraction);
    var value = Optional.of(BodyValue.of(body, records.values())).filter(BodyValue::isEnough);
    var home = balance.outputs().map(Outputs::takeHome).map(Weight::fraction);
    var work = new Billing(records.night().shop()).asked(balance, records.lastDay());
    return hot.isEmpty() || value.isEmpty() || home.isEmpty() || work.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Bid(
                body, hot.get(), home.get(), value.get().whole(), work.get().fraction(currency)));
  }

  private static void add(
      List<MonthFigure> figures, Species species, String category, List<Bid> bids) {
    if (bids.size() < FEWEST) {
      return;
    }
    var group = new MonthFigure.Like(MonthFigure.By.CLASS, category);
    var hot = sum(bids, Bid::hot);
    var home = Exact.percent(sum(bids, Bid::takeHome), hot);
    var worth = sum(bids, Bid::worth).divide(hot);
    var work = sum(bids, Bid::work).divide(hot);
    var first =
        MonthFigure.of(
            FigureName.BID_TAKE_HOME_PCT, species, group, bids.size(), Optional.of(home));
    figures.add(first);
    figures.add(first.with(FigureName.BID_WORTH_OF_HOT, worth));
    figures.add(first.with(FigureName.BID_WORK_OF_HOT, work));
    figures.add(first.with(FigureName.BID_OF_HOT, worth.subtract(work)));
  }

  private static BigFraction sum(Collection<Bid> bids, Function<Bid, BigFraction> amount) {
    return bids.stream().map(amount).reduce(BigFraction.ZERO, BigFraction::add);
  }
}
