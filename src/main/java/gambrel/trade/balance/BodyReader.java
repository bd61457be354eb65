package gambrel.trade.balance;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Computes the figures of a body from its weighings. */
public final class BodyReader {
  private final Settings settings;
  private final OffsetDateTime asOf;
  private final Uncertainty uncertainty;
  private final HungTrees hung = new HungTrees();
  private final Map<String, BatchBalance> batches;

  /** For a shop with these settings and batches, at the moment {@code asOf}. */
  public BodyReader(Settings settings, Map<String, BatchBalance> batches, OffsetDateTime asOf) {
    this.settings = settings;
    this.asOf = asOf;
    this.uncertainty = new Uncertainty(settings.unit());
    this.batches = batches;
  }

  /** The figures of one body. */
  public BodyBalance read(BodyWeighings weighings) {
    var rail = RailReader.read(hung, weighings, settings.railOf(weighings.body().species()));
    var trim = RailTrim.of(weighings, rail);
    var blocks = new BlockWeighings(weighings);
    var topmost = blocks.topmost();
    boolean fromBlock = rail.isEmpty() && !topmost.isEmpty();
    var into = fromBlock ? topmost : rail.boning().weighings();
    var out = trim.without(weighings.out()).stream().filter(w -> !weighings.isOffal(w)).toList();
    var cuts = trim.without(weighings.cuts());
    var batchesOf = batchesOf(weighings);
    var weights = weights(weighings, rail, trim, into);
    var reader = new OutputsReader(settings, uncertainty, weighings, batchesOf);
    boolean settled = isSettled(weighings);
    var outputs = reader.read(weights, into, out, settled);
    return new BodyBalance(
        weighings,
        rail,
        trim,
        fromBlock,
        into,
        topmost,
        cuts,
        out,
        blocks.balances(out, uncertainty),
        batchesOf,
        new BodyFigures(
            weights,
            outputs,
            outputs
                .filter(o -> weighings.body().outcome() == Outcome.CUT)
                .map(o -> reader.split(out)),
            BodyFigures.Shares.of(rail, weights, outputs),
            BodyFigures.Times.of(weighings, cuts, settled)));
  }

  /**
   * Whether quiet hours have passed since the last rail weighing of a body that is not cut. A body
   * left whole must have a weighing of the last step of the rail. Quiet hours of a condemned body
   * that never hung run from the end of the day of its kill.
   */
  private boolean isSettled(BodyWeighings weighings) {
    var body = weighings.body();
    var rail = weighings.rail();
    var steps = settings.railOf(body.species());
    boolean isHung =
        steps.isEmpty() ? !rail.isEmpty() : !weighings.of(Collections.max(steps)).isEmpty();
    var end =
        rail.stream()
            .reduce((first, second) -> second)
            .map(Weighing::time)
            .or(() -> body.killed().map(this::endOf));
    return switch (body.outcome()) {
      case CUT, CANCELLED -> false;
      case WHOLE -> isHung && end.filter(this::isQuietSince).isPresent();
      case CONDEMNED -> end.filter(this::isQuietSince).isPresent();
    };
  }

  private OffsetDateTime endOf(LocalDate day) {
    return day.plusDays(1).atStartOfDay(settings.zone()).toOffsetDateTime();
  }

  private boolean isQuietSince(OffsetDateTime time) {
    return !time.plusHours(settings.quietHours()).isAfter(asOf);
  }

  private static BodyFigures.Weights weights(
      BodyWeighings weighings, Rail rail, RailTrim trim, List<Weighing> into) {
    return new BodyFigures.Weights(
        weighings.body().liveWeight(),
        rail.hot().weight(),
        rail.cold().weight(),
        rail.aged().weight(),
        into.isEmpty() ? Optional.<Weight>empty() : Optional.of(Weighing.total(into)),
        Weighing.total(trim.beforeCold()),
        Weighing.total(trim.afterCold()));
  }

  private List<BatchBalance> batchesOf(BodyWeighings weighings) {
    var ids = new TreeSet<String>(ByteOrder.IDS);
    weighings.of(Step.TUB).stream().filter(Weighing::inBatch).forEach(w -> ids.add(w.batch()));
    return ids.stream().map(batches::get).toList();
  }
}
