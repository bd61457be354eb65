package gambrel.trade.register;

import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Settings;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Takes the figures of a customer's statement from a body's account. */
public final class FigureReader {
  private final Map<String, String> values = new LinkedHashMap<>();

  private FigureReader() {}

  /** The figures of {@code customer}'s statement about a body. */
  public static Figures read(BodyAccount account, String customer, Settings settings) {
    var reader = new FigureReader();
    reader.values.put(FigureNames.UNIT, settings.unit().id());
    reader.values.put(FigureNames.CURRENCY, settings.currency().getCurrencyCode());
    reader.own(account, account.entitlements().get(customer));
    return new Figures(reader.values);
  }

  private void own(BodyAccount account, Entitlement own) {
    put(FigureNames.TAKE_HOME, own.takeHome());
    for (var line : own.lines()) {
      put(FigureNames.ITEM + line.item(), line.weight());
      line.packs().ifPresent(n -> values.put(FigureNames.PACKS + line.item(), String.valueOf(n)));
    }
    if (own.isOutrightOnly()) {
      return;
    }
    values.put("share", own.share().toString().replace(" ", ""));
    own.batchParts().forEach(part -> put(FigureNames.BATCH + part.batch(), part.weight()));
    for (var batch : account.balance().batches()) {
      String id = batch.batch().id();
      values.putIfAbsent(FigureNames.BATCH + id, "open");
      if (!batch.isOpen()) {
        values.put(FigureNames.BATCH_BODIES + id, String.valueOf(batch.meatInByBody().size()));
      }
    }
    body(account.balance());
  }

  private void body(BodyBalance balance) {
    values.put(FigureNames.BODY + "head", String.valueOf(balance.body().head()));
    put("live", balance.body().liveWeight());
    put("hot", balance.hot());
    put("cold", balance.cold());
    put("boning", balance.boning());
    balance.outputs().ifPresent(this::outputs);
    var shares = balance.shares();
    percent("dressing_pct", shares.dressing());
    percent("chill_shrink_pct", shares.chillShrink());
    percent("ageing_shrink_pct", shares.ageingShrink());
    percent("take_home_of_hot_pct", shares.takeHomeOfHot());
    percent("take_home_of_cold_pct", shares.takeHomeOfCold());
    percent("meat_of_cold_pct", shares.meatOfCold());
    balance
        .daysHung()
        .ifPresent(days -> values.put(FigureNames.BODY + "days_hung", String.valueOf(days)));
  }

  private void outputs(Outputs outputs) {
    put(FigureNames.BODY + "take_home", outputs.takeHome());
    put("meat_home", outputs.meatHome());
    put(FigureNames.BODY + "offal", outputs.offal());
    put(FigureNames.BODY + "tub", outputs.tub());
    put("bone", outputs.bone());
    put("fat", outputs.fat());
    put("waste", outputs.waste());
    put(FigureNames.BODY + "rail_trim", outputs.railTrim());
    put("cutting_loss", outputs.cuttingLoss());
    put("unweighed", outputs.unweighed());
    put("batch_loss", outputs.batchLoss());
  }

  private void put(String name, Weight weight) {
    values.put(name, weight.output().toPlainString());
  }

  private void put(String name, Optional<Weight> weight) {
    weight.ifPresent(w -> put(FigureNames.BODY + name, w));
  }

  private void percent(String name, Optional<Share> share) {
    share.ifPresent(
        s -> values.put(FigureNames.BODY + name, Exact.round(s.percent(), 3).toPlainString()));
  }
}
