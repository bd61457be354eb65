package gambrel.trade.weighing;

import gambrel.trade.cuts.Item;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds rail weighings beyond the number of parts that a body has: of one part at one step (for
 * aged: on one day), earliest first, they add up to the part's count times the head.
 */
final class RailLimit {
  private final Shop shop;

  RailLimit(Shop shop) {
    this.shop = shop;
  }

  /** The weighings beyond the limit; {@code weighings} are one body's, earliest first. */
  List<Weighing> beyond(List<Weighing> weighings) {
    var taken = new HashMap<String, Integer>();
    return weighings.stream()
        .filter(weighing -> weighing.step().isRail() && !take(weighing, taken))
        .toList();
  }

  private boolean take(Weighing weighing, Map<String, Integer> taken) {
    var body = shop.bodies().get(weighing.body());
    int most = count(body, weighing.item());
    int number = weighing.number(most);
    int before = taken.getOrDefault(key(weighing), 0);
    if (before + number > most) {
      return false;
    }
    taken.put(key(weighing), before + number);
    return true;
  }

  private int count(Body body, String item) {
    return shop.cuts().of(body.species()).find(item).map(Item::count).orElse(1) * body.head();
  }

  private static String key(Weighing weighing) {
    String day = weighing.step() == Step.AGED ? weighing.date().toString() : "";
    return weighing.step().toString() + '\n' + weighing.item() + '\n' + day;
  }
}
