package gambrel.night;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Makes notices of bodies that were weighed again after their last statement was issued, one for
 * each body. Offal is left out, since it changes no figure of what hung. Statements of this very
 * moment do not count as issued before, so that a rerun has the same notices as the first run.
 */
final class LateWeighings {
  private LateWeighings() {}

  static List<Notice> of(Night night, Register register) {
    var now = night.asOf().toLocalDateTime().withNano(0);
    var issued =
        register.rows().stream()
            .map(row -> Map.entry(row.body(), row.issued()))
            .filter(entry -> entry.getValue().isBefore(now))
            .sorted(Map.Entry.comparingByValue())
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> b));
    return night.bodies().values().stream()
        .filter(account -> issued.containsKey(account.body().id()))
        .flatMap(account -> notice(night, account, issued.get(account.body().id())).stream())
        .toList();
  }

  /** The notice about a body; empty if it was not weighed after {@code issued}. */
  private static Optional<Notice> notice(Night night, BodyAccount account, LocalDateTime issued) {
    // The balance of a cancelled body has no weighings.
    var late =
        night.ledger().weighings().of(account.body().id()).stream()
            .filter(weighing -> weighing.ofBody() && weighing.step().movesMass())
            .filter(weighing -> weighing.time().toLocalDateTime().isAfter(issued))
            .filter(weighing -> !account.balance().weighings().isOffal(weighing))
            .toList();
    return late.stream()
        .findFirst()
        .map(
            first ->
                Notice.of(NoticeCode.WEIGHED_AFTER_ISSUE, first.place())
                    .aboutTicket(first.scale().id(), first.ticket())
                    .aboutBody(first.body())
                    .with("weighed", first.time().toLocalDateTime())
                    .with("issued", issued)
                    .with("count", late.size())
                    .with("follows", Phrase.of("REVISION." + account.decision().state())));
  }
}
