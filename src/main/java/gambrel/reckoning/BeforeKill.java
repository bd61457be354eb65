package gambrel.reckoning;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.shop.Body;
import gambrel.shop.Shop;
import gambrel.weighing.Weighing;
import gambrel.weighing.Weighings;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Finds bodies that were weighed on a day before their kill: one notice a body. */
final class BeforeKill {
  private BeforeKill() {}

  /** The notices. */
  static List<Notice> of(Shop shop, Weighings weighings) {
    var notices = new ArrayList<Notice>();
    for (var body : shop.bodies().values()) {
      body.killed()
          .map(killed -> before(killed, weighings.of(body.id())))
          .filter(early -> !early.isEmpty())
          .ifPresent(early -> notices.add(notice(body, early)));
    }
    return notices;
  }

  private static List<Weighing> before(LocalDate killed, List<Weighing> weighings) {
    return weighings.stream().filter(w -> w.date().isBefore(killed)).toList();
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
