package gambrel.night;

import gambrel.trade.cuts.Kind;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;

/**
 * Makes notices of bodies that were weighed again after their last statement was issued, one for
 * each body. Offal is left out, since it changes no figure of what hung. Statements of this very
 * moment do not count as issued before, so that a rerun has the same notices as the first run.
 */
final class LateWeighings {
  private LateWeighings() {}

  static List<Notice> of(Night night, Register register) {
    var now = night.asOf().toLocalDateTime().withNano(0);
    var issued = new HashMap<String, LocalDateTime>();
    register.rows().stream()
        .filter(row -> row.issued().isBefore(now) && night.bodies().containsKey(row.body()))
        .forEach(row -> issued.merge(row.body(), row.issued(), LateWeighings::later));
    var notices = new ArrayList<Notice>();
    issued.forEach(
        (body, moment) -> {
          var late =
              night.ledger().weighings().of(body).stream()
                  .filter(weighing -> isLate(night, weighing, moment))
                  .toList();
          if (!late.isEmpty()) {
            notices.add(notice(night.bodies().get(body), moment, late));
          }
        });
    return notices;
  }

  private static LocalDateTime later(LocalDateTime one, LocalDateTime other) {
    return one.isAfter(other) ? one : other;
  }

  private static boolean isLate(Night night, Weighing weighing, LocalDateTime issued) {
    var species = night.bodies().get(weighing.body()).body().species();
    boolean offal =
        night
            .shop()
            .cuts()
            .of(species)
            .find(weighing.item())
            .filter(item -> item.kind() == Kind.OFFAL)
            .isPresent();
    return weighing.ofBody()
        && weighing.step().movesMass()
        && weighing.time().toLocalDateTime().isAfter(issued)
        && !offal;
  }

  private static Notice notice(BodyAccount account, LocalDateTime issued, List<Weighing> late) {
    var first = late.get(0);
    return Notice.of(NoticeCode.WEIGHED_AFTER_ISSUE, first.place())
        .aboutTicket(first.scale().id(), first.ticket())
        .aboutBody(first.body())
        .with("weighed", first.time().toLocalDateTime())
        .with("issued", issued)
        .with("count", late.size())
        .with("follows", Phrase.of("REVISION." + account.decision().state()));
  }
}
