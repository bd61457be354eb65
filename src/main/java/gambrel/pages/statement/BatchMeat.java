package gambrel.pages.statement;

import gambrel.pages.views.Fact;
import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A customer's part of a batch.
 *
 * @param subject the customer's part of a body
 * @param batch the batch
 * @param part the customer's part of the batch; zero while the batch is open
 */
record BatchMeat(StatementPart subject, BatchBalance batch, Entitlement.BatchPart part) {
  /** A batch that is still open, or of which nothing but the name is asked. */
  static BatchMeat open(StatementPart subject, BatchBalance batch) {
    String id = batch.batch().id();
    return new BatchMeat(subject, batch, new Entitlement.BatchPart(id, Weight.ZERO, Weight.ZERO));
  }

  /** The batch's product or, if the shop names none, the items of its packs. */
  String name() {
    if (!batch.batch().product().isEmpty()) {
      return batch.batch().product();
    }
    var items = packings().stream().map(Weighing::item).distinct().toList();
    return items.isEmpty()
        ? subject.say("batch.unnamed", batch.batch().id())
        : items.stream().map(subject::itemName).collect(Collectors.joining(", "));
  }

  /** The number of other bodies in the batch. */
  long others() {
    return batch.meatInByBody().keySet().stream()
        .filter(body -> !body.equals(subject.body.id()) && !body.equals(Customer.SHOP))
        .count();
  }

  /** Whether tubs without a body went into the batch: meat of the shop. */
  boolean hasShopMeat() {
    return batch.meatInByBody().containsKey(Customer.SHOP);
  }

  /** Whether all meat of the batch is from this body. */
  boolean isAlone() {
    return others() == 0 && !hasShopMeat();
  }

  /** The weight of the body's tubs in the batch. */
  Weight put() {
    return batch.meatInOf(subject.body.id());
  }

  /** The weighings of its packs, with everything added. */
  List<Weighing> packings() {
    return batch.weighings().stream().filter(w -> w.step() == Step.PACK).toList();
  }

  /** The meat in an open batch, and when it is due. */
  Fact pending() {
    String id = batch.batch().id();
    var tubs = subject.weighings.of(Step.TUB, tub -> tub.batch().equals(id));
    String owner = subject.isSharer() ? "pending.batch.share" : "pending.batch";
    String when =
        batch
            .batch()
            .due()
            .filter(day -> !batch.late())
            .map(day -> subject.say("pending.due", subject.formats.date(day)))
            .orElseGet(() -> subject.say("pending.late"));
    return new Fact(name(), subject.say(owner, subject.total(tubs)) + ' ' + when);
  }
}
