package gambrel.trade.weighing;

import gambrel.trade.cuts.Item;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds rail weighings beyond the number of parts that a body has. The weighings of one part at one
 * step (for aged: on the latest day) count from the earliest; together they may be as many as the
 * part's count times the body's head.
 */
final class RailLimit {
  private RailLimit() {}

  /** The places of the rail weighings beyond the limit. */
  static Set<Place> beyond(Shop shop, Stream<Weighing> weighings) {
    var rail = weighings.filter(w -> w.step().isRail()).sorted(Weighing.BY_TIME);
    return Groups.inOrder(rail, RailLimit::part).values().stream()
        .flatMap(part -> beyond(shop, part).stream())
        .map(Weighing::place)
        .collect(Collectors.toSet());
  }

  private static List<Object> part(Weighing weighing) {
    return List.of(weighing.body(), weighing.step(), weighing.item());
  }

  /** The weighings beyond the limit among those of one part at one step, earliest first. */
  private static List<Weighing> beyond(Shop shop, List<Weighing> part) {
    var first = part.get(0);
    var body = shop.bodies().get(first.body());
    var item = shop.cuts().of(body.species()).find(first.item());
    int most = item.map(Item::count).orElse(1) * body.head();
    var beyond = new ArrayList<Weighing>();
    int taken = 0;
    for (var weighing : first.step() == Step.AGED ? Weighing.ofLastDay(part) : part) {
      if (taken + weighing.number(most) > most) {
        beyond.add(weighing);
      } else {
        taken += weighing.number(most);
      }
    }
    return beyond;
  }
}
