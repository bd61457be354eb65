package gambrel.trade.register;

import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Settings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The weights, counts and percentages of one customer's statement, by name. A statement is revised
 * when they change.
 *
 * @param values name to value, in the order of the page
 */
public record Figures(Map<String, String> values) {
  /** Unit of all weights. */
  public static final String UNIT = "unit";

  /** Currency of all charges of the shop. */
  public static final String CURRENCY = "currency";

  /** The customer's own take-home weight. */
  public static final String TAKE_HOME = "take_home";

  /** The customer's weight of an item. */
  public static final String ITEM = "item:";

  /** The customer's number of packs of an item. */
  public static final String PACKS = "packs:";

  /** The customer's part of a batch, or {@code open}. */
  public static final String BATCH = "batch:";

  /** How many animals went into a batch; absent while it is open. */
  public static final String BATCH_BODIES = "batch_bodies:";

  /** A figure of the whole body. */
  public static final String BODY = "body:";

  /** Copies the values. */
  public Figures {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** The figures of a customer's statement about a body. */
  public static Figures of(BodyAccount account, String customer, Settings settings) {
    var reader = new Reader();
    reader.values.put(UNIT, settings.unit().id());
    reader.values.put(CURRENCY, settings.currency().getCurrencyCode());
    reader.own(account, account.entitlements().get(customer));
    return new Figures(reader.values);
  }

  /**
   * A figure that differs between two statements.
   *
   * @param name the figure
   * @param was its former value, or empty
   * @param now its value, or empty
   */
  public record Change(String name, String was, String now) {}

  /** What is different from {@code earlier}, in the order of the page, then what is gone. */
  public List<Change> changesSince(Figures earlier) {
    var changes = new ArrayList<Change>();
    values.forEach(
        (name, now) -> {
          String was = earlier.values.getOrDefault(name, "");
          if (!was.equals(now)) {
            changes.add(new Change(name, was, now));
          }
        });
    var gone = new TreeSet<>(earlier.values.keySet());
    gone.removeAll(values.keySet());
    gone.forEach(name -> changes.add(new Change(name, earlier.values.get(name), "")));
    return changes;
  }

  /** Takes the figures of a statement from a body's account. */
  private static final class Reader {
    private final Map<String, String> values = new LinkedHashMap<>();

    private void own(BodyAccount account, Entitlement own) {
      put(TAKE_HOME, own.takeHome());
      for (var line : own.lines()) {
        put(ITEM + line.item(), line.weight());
        line.packs().ifPresent(n -> values.put(PACKS + line.item(), String.valueOf(n)));
      }
      if (own.isOutrightOnly()) {
        return;
      }
      values.put("share", own.share().toString().replace(" ", ""));
      own.batchParts().forEach(part -> put(BATCH + part.batch(), part.weight()));
      for (var batch : account.balance().batches()) {
        String id = batch.batch().id();
        values.putIfAbsent(BATCH + id, "open");
        if (!batch.isOpen()) {
          values.put(BATCH_BODIES + id, String.valueOf(batch.meatInByBody().size()));
        }
      }
      body(account.balance());
    }

    private void body(BodyBalance balance) {
      values.put(BODY + "head", String.valueOf(balance.body().head()));
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
      balance.daysHung().ifPresent(days -> values.put(BODY + "days_hung", String.valueOf(days)));
    }

    private void outputs(Outputs outputs) {
      put(BODY + "take_home", outputs.takeHome());
      put("meat_home", outputs.meatHome());
      put(BODY + "offal", outputs.offal());
      put(BODY + "tub", outputs.tub());
      put("bone", outputs.bone());
      put("fat", outputs.fat());
      put("waste", outputs.waste());
      put(BODY + "rail_trim", outputs.railTrim());
      put("cutting_loss", outputs.cuttingLoss());
      put("unweighed", outputs.unweighed());
      put("batch_loss", outputs.batchLoss());
    }

    private void put(String name, Weight weight) {
      values.put(name, weight.output().toPlainString());
    }

    private void put(String name, Optional<Weight> weight) {
      weight.ifPresent(w -> put(BODY + name, w));
    }

    private void percent(String name, Optional<Share> share) {
      share.ifPresent(s -> values.put(BODY + name, Exact.round(s.percent(), 3).toPlainString()));
    }
  }
}
