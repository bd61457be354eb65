package gambrel.insight.month.figures;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyBalance.BoningSplit;
import gambrel.trade.balance.Outputs;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where all weight of a month went: of the counted bodies of all owners that were cut in it or left
 * whole, from their first weight on the rail to what left the shop; then the same of each owner's.
 * The parts add up to that first weight; offal is on top of it.
 *
 * <p>The first weight is the hot one; it is a later one where the hot weight, or what was lost
 * after it, is unknown. What a body may lose while it hangs without being weighed again ({@link
 * LossLimit#hanging}) is not lost on the bench, up to all of its cutting loss.
 */
public final class RoomKilos {
  private final Settings settings;
  private final Map<FigureName, BigFraction> sums = new EnumMap<>(FigureName.class);

  private RoomKilos(Settings settings) {
    this.settings = settings;
  }

  /** The sums, in the order of the way; none without bodies. Sums of nothing are missing. */
  public static List<MonthFigure> of(MonthRecords records) {
    var bodies =
        records.bodies().takenHome().stream()
            .filter(body -> body.isCounted() && isKnown(body))
            .toList();
    var figures = new ArrayList<>(of(records.settings(), bodies));
    for (var whose : Ownership.in(bodies)) {
      of(records.settings(), whose.of(bodies)).forEach(sum -> figures.add(sum.with(whose)));
    }
    return figures;
  }

  /** Whether its weight into the boning room is known, and what that divided into. */
  private static boolean isKnown(MonthBody body) {
    var balance = body.balance();
    boolean divided = !body.body().isCut() || balance.boningSplit().isPresent();
    return balance.boning().isPresent() && divided;
  }

  private static List<MonthFigure> of(Settings settings, List<MonthBody> bodies) {
    var kilos = new RoomKilos(settings);
    bodies.forEach(kilos::add);
    return kilos.sums.entrySet().stream()
        .filter(sum -> sum.getValue().signum() != 0)
        .map(s -> MonthFigure.ofAll(s.getKey(), BodyGroup.ALL, bodies.size(), s.getValue()))
        .toList();
  }

  private void add(MonthBody body) {
    var balance = body.balance();
    var boning = balance.boning().orElseThrow();
    rail(body, boning);
    if (body.body().isCut()) {
      add(FigureName.ROOM_BONING, boning);
      balance.boningSplit().ifPresent(this::add);
      balance.outputs().ifPresent(outputs -> lost(balance, outputs));
    } else {
      add(FigureName.ROOM_WHOLE, boning);
    }
    balance.outputs().ifPresent(outputs -> add(FigureName.ROOM_OFFAL, outputs.offal()));
  }

  /** The way on the rail, from the first weight after which every loss is known. */
  private void rail(MonthBody body, Weight boning) {
    var balance = body.balance();
    var ageing = body.share(BodyFigure.AGEING);
    if (ageing.isEmpty() && !balance.weighings().of(Step.AGED).isEmpty()) {
      add(FigureName.ROOM_FIRST, boning);
      return;
    }
    var chill = body.share(BodyFigure.CHILL);
    add(FigureName.ROOM_FIRST, chill.map(Share::whole).or(balance::cold).orElse(boning));
    if (chill.isPresent()) {
      add(FigureName.ROOM_CHILL, chill.get().part());
      add(FigureName.ROOM_TRIM, balance.trim().weightBeforeCold());
    }
    if (ageing.isPresent()) {
      add(FigureName.ROOM_HANGING, ageing.get().part());
      add(FigureName.ROOM_TRIM, balance.trim().weightAfterCold());
    }
  }

  private void add(BoningSplit split) {
    add(FigureName.ROOM_HOME, split.home());
    add(FigureName.ROOM_BONE, split.bone());
    add(FigureName.ROOM_FAT, split.fat());
    add(FigureName.ROOM_WASTE, split.waste());
    add(FigureName.ROOM_BATCH, split.batchLoss());
  }

  private void lost(BodyBalance balance, Outputs outputs) {
    outputs.unweighed().ifPresent(weight -> add(FigureName.ROOM_UNWEIGHED, weight));
    var loss = outputs.cuttingLoss().map(Weight::fraction).orElse(BigFraction.ZERO);
    var allowed = LossLimit.hanging(settings, balance);
    var hung = Exact.max(BigFraction.ZERO, loss.compareTo(allowed) < 0 ? loss : allowed);
    add(FigureName.ROOM_HUNG_UNWEIGHED, hung);
    add(FigureName.ROOM_BENCH, loss.subtract(hung));
  }

  private void add(FigureName name, Weight weight) {
    add(name, weight.fraction());
  }

  private void add(FigureName name, BigFraction weight) {
    sums.merge(name, weight, BigFraction::add);
  }
}
