package gambrel.reckoning;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.shop.Body;
import gambrel.shop.Shop;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds bodies that were weighed on a day before their kill: one notice a body. */
final class BeforeKill {
  private BeforeKill() {}

  /**
   * The notices.
   *
   * @param weighings earliest first
   */
  static List<Notice> of(Shop shop, List<Weighing> weighings) {
    Map<Body, List<Weighing>> early = new LinkedHashMap<>();
    for (var weighing : weighings) {
      var body = shop.bodies().get(weighing.body());
      if (body != null && body.killed().filter(weighing.date()::isBefore).isPresent()) {
        early.computeIfAbsent(body, b -> new ArrayList<>()).add(weighing);
      }
    }
    return early.entrySet().stream().map(e -> notice(e.getKey(), e.getValue())).toList();
  }

  private static Notice notice(Body body, List<Weighing> early) {
    var first = early.get(0);
    String rows = early.size() == 1 ? "" : " (" + early.size() + " weighings before that day)";
    return Notice.of(
            NoticeCode.WEIGHED_BEFORE_KILL,
            first.place(),
            "Body "
                + body.id()
                + " was weighed at "
                + first.time().toLocalDateTime()
                + " and killed on "
                + body.killed().orElseThrow()
                + rows
                + ".")
        .aboutTicket(first.scale().id(), first.ticket())
        .aboutBody(body.id());
  }
}
