package gambrel.trade.reckoning;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Shop;
import gambrel.trade.weighing.Weighing;
import gambrel.trade.weighing.Weighings;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Finds bodies that were weighed on a day before their kill: one notice a body. */
final class BeforeKill {
  private BeforeKill() {}

  /** The notices. */
  static List<Notice> of(Shop shop, Weighings weighings) {
    return shop.bodies().values().parallelStream()
        .flatMap(body -> of(body, weighings.of(body.id())).stream())
        .toList();
  }

  private static Optional<Notice> of(Body body, List<Weighing> weighings) {
    return body.killed()
        .map(killed -> before(killed, weighings))
        .filter(early -> !early.isEmpty())
        .map(early -> notice(body, early));
  }

  private static List<Weighing> before(LocalDate killed, List<Weighing> weighings) {
    return weighings.stream().filter(w -> w.date().isBefore(killed)).toList();
  }

  private static Notice notice(Body body, List<Weighing> early) {
    var first = early.get(0);
    return Notice.of(NoticeCode.WEIGHED_BEFORE_KILL, first.place())
        .aboutTicket(first.scale().id(), first.ticket())
        .aboutBody(body.id())
        .with("found", first.time().toLocalDateTime())
        .with("killed", body.killed().orElseThrow())
        .with("count", early.size());
  }
}
