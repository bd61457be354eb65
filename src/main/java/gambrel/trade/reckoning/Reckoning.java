package gambrel.trade.reckoning;

import gambrel.trade.account.Bill;
import gambrel.trade.account.Billing;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BatchReader;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyReader;
import gambrel.trade.balance.BodyWeighings;
import gambrel.trade.decision.Judge;
import gambrel.trade.decision.ScaleTests;
import gambrel.trade.decision.UnreadRows;
import gambrel.trade.decision.UsualShares;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Shop;
import gambrel.trade.weighing.Ledger;
import gambrel.trade.weighing.SetAside;
import gambrel.trade.weighing.Weighing;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The figures of every body at one moment, without releases.
 *
 * @param shop the shop folder
 * @param ledger the exports
 * @param tests the test weighings of the scales
 * @param judge finds what holds a body
 * @param batches every batch, by id
 * @param balances every body, by id
 * @param bills what each body costs, by id
 */
record Reckoning(
    Shop shop,
    Ledger ledger,
    ScaleTests tests,
    Judge judge,
    SortedMap<String, BatchBalance> batches,
    SortedMap<String, BodyBalance> balances,
    Map<String, Bill> bills) {

  /** Computes the figures at {@code asOf}; {@code progress} counts the bodies. */
  static Reckoning of(Shop shop, Ledger ledger, OffsetDateTime asOf, Progress progress) {
    var tests = new ScaleTests(shop.settings(), ledger.weighings().tests());
    var batches = new BatchReader(shop, asOf).read(ledger.weighings());
    var reader = new BodyReader(shop.settings(), batches, asOf);
    var billing = new Billing(shop);
    var balanced = progress.begin(Progress.Stage.BODIES, shop.bodies().size());
    var balances = new TreeMap<String, BodyBalance>(ByteOrder.IDS);
    var bills = new HashMap<String, Bill>();
    // Each body is computed from its own weighings and the batches; their order does not matter.
    shop.bodies().values().parallelStream()
        .map(
            body -> {
              var balance = reader.read(weighings(shop, ledger, body));
              balanced.accept(1);
              return Map.entry(balance, billing.bill(balance));
            })
        .toList()
        .forEach(
            made -> {
              balances.put(made.getKey().body().id(), made.getKey());
              bills.put(made.getKey().body().id(), made.getValue());
            });
    var unread = new UnreadRows(shop, ledger, asOf);
    var setAside = setAsideByBody(ledger, batches);
    var usual = new UsualShares(shop.settings(), balances.values());
    var judge = new Judge(shop.settings(), asOf, setAside, tests, unread, usual);
    return new Reckoning(shop, ledger, tests, judge, batches, balances, bills);
  }

  /** A cancelled body has no weighings of its own. */
  private static BodyWeighings weighings(Shop shop, Ledger ledger, Body body) {
    boolean cancelled = body.outcome() == Outcome.CANCELLED;
    var own = cancelled ? List.<Weighing>of() : ledger.weighings().of(body.id());
    return new BodyWeighings(body, shop.cuts().of(body.species()), own);
  }

  private static Map<String, List<SetAside>> setAsideByBody(
      Ledger ledger, Map<String, BatchBalance> batches) {
    var byBody = new HashMap<String, List<SetAside>>();
    for (var row : ledger.setAside()) {
      if (row.effective()) {
        var bodies = new TreeSet<>(row.bodies());
        Optional.ofNullable(batches.get(row.batch()))
            .ifPresent(batch -> bodies.addAll(batch.meatInByBody().keySet()));
        bodies.forEach(b -> byBody.computeIfAbsent(b, k -> new ArrayList<>()).add(row));
      }
    }
    return byBody;
  }
}
