package gambrel.trade.weighing;

import gambrel.trade.cuts.Item;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds rail weighings beyond the number of parts that a body has. The weighings of one part at one
 * step (for aged: on the latest day) count from the earliest; together they may be as many as the
 * part's count times the body's head.
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
    var rail = weighings.filter(w -> w.step().isRail()).sorted(Weighing.BY_TIME).toList();
    var latest = new HashMap<List<Object>, LocalDate>();
    rail.forEach(weighing -> latest.put(part(weighing), weighing.date()));
    return rail.stream()
        .filter(w -> w.step() != Step.AGED || w.date().equals(latest.get(part(w))))
        .filter(weighing -> !limit.take(weighing))
        .map(Weighing::place)
        .collect(Collectors.toSet());
  }

  private static List<Object> part(Weighing weighing) {
    return List.of(weighing.body(), weighing.step(), weighing.item());
  }

  private boolean take(Weighing weighing) {
    var body = shop.bodies().get(weighing.body());
    var item = shop.cuts().of(body.species()).find(weighing.item());
    int most = item.map(Item::count).orElse(1) * body.head();
    int before = taken.getOrDefault(part(weighing), 0);
    int number = weighing.number(most);
    boolean fits = before + number <= most;
    if (fits) {
      taken.put(part(weighing), before + number);
    }
    return fits;
  }
}
