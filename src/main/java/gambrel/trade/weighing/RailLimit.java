package gambrel.trade.weighing;

import gambrel.trade.cuts.Item;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds rail weighings beyond the number of parts that a body has. The weighings of one part at one
 * step (for aged: on one day) count from the earliest; together they may be as many as the part's
 * count times the body's head.
 */
final class RailLimit {
  private final Shop shop;
  private final Map<List<Object>, Integer> taken = new HashMap<>();

  private RailLimit(Shop shop) {
    this.shop = shop;
  }

  /** The places of the rail weighings beyond the limit. */
  static Set<Place> beyond(Shop shop, Stream<Weighing> weighings) {
    var limit = new RailLimit(shop);
    return weighings
        .filter(weighing -> weighing.step().isRail())
        .sorted(Weighing.BY_TIME)
        .filter(weighing -> !limit.take(weighing))
        .map(Weighing::place)
        .collect(Collectors.toSet());
  }

  private boolean take(Weighing weighing) {
    var body = shop.bodies().get(weighing.body());
    var item = shop.cuts().of(body.species()).find(weighing.item());
    int most = item.map(Item::count).orElse(1) * body.head();
    String day = weighing.step() == Step.AGED ? weighing.date().toString() : "";
    List<Object> part = List.of(weighing.body(), weighing.step(), weighing.item(), day);
    int before = taken.getOrDefault(part, 0);
    int number = weighing.number(most);
    boolean fits = before + number <= most;
    if (fits) {
      taken.put(part, before + number);
    }
    return fits;
  }
}
