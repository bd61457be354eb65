package gambrel.reckoning;

import gambrel.balance.BatchBalance;
import gambrel.balance.BatchReader;
import gambrel.balance.BodyBalance;
import gambrel.balance.BodyReader;
import gambrel.balance.BodyWeighings;
import gambrel.charge.Bill;
import gambrel.charge.Billing;
import gambrel.decision.Judge;
import gambrel.decision.Reason;
import gambrel.decision.ScaleTests;
import gambrel.measure.ByteOrder;
import gambrel.shop.Outcome;
import gambrel.shop.Shop;
import gambrel.weighing.Ledger;
import gambrel.weighing.Progress;
import gambrel.weighing.SetAside;
import gambrel.weighing.Weighing;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** The figures of every body at one moment, before anybody's release. */
final class Reckoning {
  private final Shop shop;
  private final OffsetDateTime asOf;
  private final Ledger ledger;
  private final ScaleTests tests;
  private final Judge judge;
  private final SortedMap<String, BatchBalance> batches;
  private final SortedMap<String, BodyBalance> balances = new TreeMap<>(ByteOrder.IDS);
  private final Map<String, Bill> bills = new HashMap<>();

  private Reckoning(Shop shop, Ledger ledger, OffsetDateTime asOf) {
    this.shop = shop;
    this.asOf = asOf;
    this.ledger = ledger;
    this.tests = new ScaleTests(shop.settings(), ledger.weighings().tests());
    this.judge = new Judge(shop.settings(), setAsideByBody(ledger), tests);
    this.batches = BatchReader.read(shop, ledger.weighings(), asOf);
  }

  /**
   * Reckons what the exports say by {@code asOf}, and reports bodies to {@code progress}.
   */
  static Reckoning of(Shop shop, Ledger ledger, OffsetDateTime asOf, Progress progress) {
    var reckoning = new Reckoning(shop, ledger, asOf);
    reckoning.balanceBodies(progress);
    return reckoning;
  }

  private void balanceBodies(Progress progress) {
    var reader = new BodyReader(shop.settings(), batches);
    var billing = new Billing(shop);
    var balanced = progress.begin(Progress.Stage.BODIES, shop.bodies().size());
    // A body's figures depend on nothing but its own weighings, so that order does not matter.
    var read =
        shop.bodies().values().parallelStream()
            .map(
                body -> {
                  var own =
                      body.outcome() == Outcome.CANCELLED
                          ? List.<Weighing>of()
                          : ledger.weighings().of(body.id());
                  var balance =
                      reader.read(new BodyWeighings(body, shop.cuts().of(body.species()), own));
                  balanced.accept(1);
                  return new Billed(balance, billing.bill(balance));
                })
            .toList();
    for (var made : read) {
      balances.put(made.balance().body().id(), made.balance());
      bills.put(made.balance().body().id(), made.bill());
    }
  }

  private record Billed(BodyBalance balance, Bill bill) {}

  private static Map<String, List<SetAside>> setAsideByBody(Ledger ledger) {
    var byBody = new HashMap<String, List<SetAside>>();
    for (var row : ledger.setAside()) {
      if (row.effective()) {
        row.bodies().forEach(b -> byBody.computeIfAbsent(b, k -> new ArrayList<>()).add(row));
      }
    }
    return byBody;
  }

  Shop shop() {
    return shop;
  }

  OffsetDateTime asOf() {
    return asOf;
  }

  Ledger ledger() {
    return ledger;
  }

  ScaleTests tests() {
    return tests;
  }

  Judge judge() {
    return judge;
  }

  SortedMap<String, BatchBalance> batches() {
    return batches;
  }

  SortedMap<String, BodyBalance> balances() {
    return balances;
  }

  Bill bill(String body) {
    return bills.get(body);
  }

  /** The reasons that would hold a finished body. */
  Set<Reason> reasons(String body) {
    return judge.reasons(balances.get(body), bills.get(body));
  }
}
