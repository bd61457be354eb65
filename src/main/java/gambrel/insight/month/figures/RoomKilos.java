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
 * whole, from their first weight on the rail to what left the shop. The parts add up to that first
 * weight.
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
    var kilos = new RoomKilos(records.settings());
    int bodies = 0;
    for (var body : records.bodies().takenHome()) {
      if (body.isCounted() && kilos.add(body)) {
        bodies++;
      }
    }
    var figures = new ArrayList<MonthFigure>();
    for (var sum : kilos.sums.entrySet()) {
      if (sum.getValue().signum() != 0) {
        figures.add(MonthFigure.ofAll(sum.getKey(), BodyGroup.ALL, bodies, sum.getValue()));
      }
    }
    return figures;
  }

  /** Adds a body; false if its weight into the boning room is unknown or did not divide. */
  private boolean add(MonthBody body) {
    var balance = body.balance();
    var boning = balance.boning();
    var split = balance.boningSplit();
    boolean cut = body.body().isCut();
    if (boning.isEmpty() || cut && split.isEmpty()) {
      return false;
    }
    rail(body, boning.get());
    if (cut) {
      add(FigureName.ROOM_BONING, boning.get());
      split.ifPresent(this::add);
      balance.outputs().ifPresent(outputs -> lost(balance, outputs));
    } else {
      add(FigureName.ROOM_WHOLE, boning.get());
    }
    return true;
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
