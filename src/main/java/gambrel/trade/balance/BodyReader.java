package gambrel.trade.balance;

import gambrel.trade.measure.ByteOrder;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Computes the figures of a body from its weighings. */
public final class BodyReader {
  private final Settings settings;
  private final OffsetDateTime asOf;
  private final Uncertainty uncertainty;
  private final HungTree.Cache hung = new HungTree.Cache();
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
    var rail = Rail.of(hung, weighings, settings.railOf(weighings.body().species()));
    var trim = RailTrim.of(weighings, rail);
    var blocks = new BlockWeighings(weighings);
    var topmost = blocks.topmost();
    boolean fromBlock = rail.isEmpty() && !topmost.isEmpty();
    var into = fromBlock ? topmost : rail.boning().weighings();
    var out = trim.without(weighings.out()).stream().filter(w -> !weighings.isOffal(w)).toList();
    var cuts = trim.without(weighings.cuts());
    var batchesOf = batchesOf(weighings);
    var boning = Weighing.sum(into);
    var reader =
        new OutputsReader(settings.bins(), uncertainty, weighings, batchesOf, trim, into, out);
    boolean finished = isFinished(weighings, cuts);
    var outputs = reader.read(finished);
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
        finished,
        outputs,
        outputs.filter(o -> weighings.body().isCut()).map(o -> reader.split()),
        BodyBalance.Shares.of(weighings.body(), rail, trim, boning, outputs),
        BodyBalance.Times.of(weighings, cuts, finished));
  }

  /**
   * Whether all that is expected of a body is there and quiet hours have passed: for a body that is
   * cut, a pack, tub or bin; for one left whole, the last weighing that the rail takes. Quiet hours
   * of a condemned body that never hung run from the end of the day of its kill.
   */
  private boolean isFinished(BodyWeighings weighings, List<Weighing> cuts) {
    var body = weighings.body();
    var lastOfAll = Weighing.last(weighings.all()).map(Weighing::time);
    var lastOnRail = Weighing.last(weighings.rail()).map(Weighing::time);
    var last = settings.railOf(body.species()).stream().max(Comparator.naturalOrder());
    return switch (body.outcome()) {
      case CUT -> BodyBalance.isPacked(cuts) && isQuietSince(lastOfAll);
      case WHOLE ->
          last.filter(step -> weighings.of(step).isEmpty()).isEmpty() && isQuietSince(lastOnRail);
      case CONDEMNED -> isQuietSince(lastOnRail.or(() -> body.killed().map(this::endOf)));
      case CANCELLED -> false;
    };
  }

  private OffsetDateTime endOf(LocalDate day) {
    return day.plusDays(1).atStartOfDay(settings.zone()).toOffsetDateTime();
  }

  private boolean isQuietSince(Optional<OffsetDateTime> time) {
    return time.filter(t -> !t.plusHours(settings.quietHours()).isAfter(asOf)).isPresent();
  }

  private List<BatchBalance> batchesOf(BodyWeighings weighings) {
    var ids = new TreeSet<String>(ByteOrder.IDS);
    weighings.of(Step.TUB).stream().filter(Weighing::inBatch).forEach(w -> ids.add(w.batch()));
    return ids.stream().map(batches::get).toList();
  }
}
