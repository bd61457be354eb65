package gambrel.night;

import gambrel.trade.cuts.Kind;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Tells of bodies that were weighed again after their last statement went out: one notice a body.
 * Offal changes no figure that hung and is left out. A statement of this very moment is none that
 * went out before, so that a rerun says what the first run said.
 */
final class LateWeighings {
  private final Night night;
  private final Map<String, LocalDateTime> issued = new HashMap<>();

  private LateWeighings(Night night, Register register) {
    this.night = night;
    var now = night.asOf().toLocalDateTime().withNano(0);
    for (RegisterRow row : register.rows()) {
      if (row.issued().isBefore(now)) {
        issued.merge(row.body(), row.issued(), (a, b) -> a.isAfter(b) ? a : b);
      }
    }
  }

  /** The notices of a night over what was issued before. */
  static List<Notice> of(Night night, Register register) {
    var late = new LateWeighings(night, register);
    return late.issued.keySet().stream()
        .map(body -> night.ledger().weighings().of(body).stream().filter(late::isLate).toList())
        .filter(weighings -> !weighings.isEmpty())
        .map(late::notice)
        .toList();
  }

  private boolean isLate(Weighing weighing) {
    var account = night.bodies().get(weighing.body());
    var went = issued.get(weighing.body());
    return account != null
        && went != null
        && weighing.ofBody()
        && weighing.step().movesMass()
        && weighing.time().toLocalDateTime().isAfter(went)
        && !isOffal(account, weighing);
  }

  private boolean isOffal(BodyAccount account, Weighing weighing) {
    return night
        .shop()
        .cuts()
        .of(account.body().species())
        .find(weighing.item())
        .filter(item -> item.kind() == Kind.OFFAL)
        .isPresent();
  }

  private Notice notice(List<Weighing> late) {
    var first = late.get(0);
    String body = first.body();
    var state = night.bodies().get(body).decision().state();
    return Notice.of(NoticeCode.WEIGHED_AFTER_ISSUE, first.place())
        .aboutTicket(first.scale().id(), first.ticket())
        .aboutBody(body)
        .with("weighed", first.time().toLocalDateTime())
        .with("issued", issued.get(body))
        .with("count", late.size())
        .with("follows", Phrase.of("REVISION." + state));
  }
}
