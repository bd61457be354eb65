package gambrel.pages.statement;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Customer;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a customer has in a batch.
 *
 * @param subject the customer's part of a body
 * @param batch the batch
 * @param part the customer's part of the meat in what was made; none while the batch is open
 */
record BatchMeat(StatementContext subject, BatchBalance batch, Weight part) {

  /** What was made: the batch's product, else what its packs are called. */
  String name() {
    if (!batch.batch().product().isEmpty()) {
      return batch.batch().product();
    }
    var items = packings().stream().map(Weighing::item).distinct().toList();
    return items.isEmpty()
        ? subject.wording().say("batch.unnamed", batch.batch().id())
        : items.stream().map(subject::itemName).collect(Collectors.joining(", "));
  }

  /** How many other animals are in it. */
  long others() {
    return batch.meatInByBody().keySet().stream()
        .filter(body -> !body.equals(subject.body().id()) && !body.equals(Customer.SHOP))
        .count();
  }

  /** Whether meat of the shop's, of no animal in particular, is in it. */
  boolean hasShopMeat() {
    return batch.meatInByBody().containsKey(Customer.SHOP);
  }

  /** Whether it comes from this body and nothing else. */
  boolean isAlone() {
    return others() == 0 && !hasShopMeat();
  }

  /** How many packs are the customer's: all of them, or not known. */
  Optional<Integer> packs() {
    return isAlone() && subject.own().isSoleOwner()
        ? Optional.of(packings().size())
        : Optional.empty();
  }

  /** What the body put in. */
  Weight put() {
    return batch.meatInOf(subject.body().id());
  }

  /** Whether its packs weigh more than the meat in them. */
  boolean hasMoreThanMeat() {
    return !batch.isOpen() && batch.out().thousandths() > batch.meatOut().thousandths();
  }

  /** What its packs weigh, with everything in them. */
  String packed() {
    return subject.total(packings());
  }

  /** What else is in it, as the shop lists it; or empty. */
  String added() {
    return batch.batch().added().replace(";", ",");
  }

  private List<Weighing> packings() {
    return batch.weighings().stream().filter(w -> w.step() == Step.PACK).toList();
  }
}
