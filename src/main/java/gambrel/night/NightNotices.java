package gambrel.night;

import gambrel.trade.decision.Decision;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Register;
import gambrel.trade.weighing.SetAside;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The notices about the shop folder and its figures, with the severity of their consequences
 * tonight. An unknown body has one notice, however many rows name it.
 *
 * @param inputs the shop folder as read
 * @param night what was made of it
 */
record NightNotices(Inputs inputs, Night night) {
  /**
   * Whether nothing is issued: any statement may be wrong because a file, a column or a setting
   * could not be read.
   */
  static boolean stopsIssuing(Inputs inputs) {
    return inputs.notices().stream().anyMatch(notice -> notice.severity() == Severity.STOP);
  }

  /**
   * The notices, in no particular order.
   *
   * @param before the statements that were issued before the night
   */
  List<Notice> all(Register before) {
    var all = new ArrayList<>(inputs.notices());
    var holding =
        night.bodies().values().stream()
            .map(BodyAccount::decision)
            .filter(decision -> decision.state() == State.HELD)
            .flatMap(decision -> decision.reasons().stream())
            .map(Reason::code)
            .collect(Collectors.toSet());
    night.notices().forEach(notice -> all.add(ofFigures(notice, holding)));
    all.addAll(night.ledger().notices());
    addSetAside(all);
    addWeighedAfterIssue(before, all);
    return all;
  }

  /** A notice about figures; a mark if it holds no statement tonight. */
  private Notice ofFigures(Notice notice, Set<ReasonCode> holding) {
    boolean holds =
        switch (notice.code()) {
          case BATCH_OUT -> holding.contains(ReasonCode.BATCH_OUT);
          case BATCH_LATE -> holding.contains(ReasonCode.BATCH_LATE);
          case SCALE_FAILED -> holding.contains(ReasonCode.SCALE_FAILED);
          case SHARES_SUM, RAIL_TWICE ->
              decision(notice.body()).filter(d -> d.state() == State.HELD).isPresent();
          default -> true;
        };
    return holds ? notice : notice.as(Severity.MARK);
  }

  private Optional<Decision> decision(String body) {
    return Optional.ofNullable(night.bodies().get(body)).map(BodyAccount::decision);
  }

  private void addSetAside(List<Notice> all) {
    Map<String, List<SetAside>> unknown = new LinkedHashMap<>();
    for (var row : night.ledger().setAside()) {
      if (row.notice().code() == NoticeCode.BODY_UNKNOWN) {
        unknown.computeIfAbsent(row.notice().body(), b -> new ArrayList<>()).add(row);
      } else {
        all.add(row.notice().as(isReleased(row) ? Severity.NOTE : row.notice().severity()));
      }
    }
    var bodies = new UnknownBodies(inputs);
    unknown.forEach((body, naming) -> all.add(bodies.notice(body, naming)));
  }

  /** Whether bodies were released from waiting for a row, and none waits for it. */
  private boolean isReleased(SetAside row) {
    var reason = new Reason(ReasonCode.ROW_SET_ASIDE, row.name());
    var decisions = night.bodies().values().stream().map(BodyAccount::decision).toList();
    return decisions.stream().anyMatch(decision -> decision.released().contains(reason))
        && decisions.stream().noneMatch(decision -> decision.reasons().contains(reason));
  }

  /**
   * Adds a notice for each body that was weighed again after its last statement was issued. Offal
   * is left out, since it changes no figure of what hung. Statements of this very moment do not
   * count as issued before, so that a rerun has the same notices as the first run.
   */
  private void addWeighedAfterIssue(Register register, List<Notice> all) {
    var now = night.issueTime();
    var issued =
        register.rows().stream()
            .map(row -> Map.entry(row.body(), row.issued()))
            .filter(entry -> entry.getValue().isBefore(now))
            .sorted(Map.Entry.comparingByValue())
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (a, b) -> b));
    for (var account : night.bodies().values()) {
      var last = Optional.ofNullable(issued.get(account.body().id()));
      last.flatMap(time -> weighedAfter(account, time)).ifPresent(all::add);
    }
  }

  /** The notice about a body; empty if it was not weighed after {@code issued}. */
  private Optional<Notice> weighedAfter(BodyAccount account, LocalDateTime issued) {
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
