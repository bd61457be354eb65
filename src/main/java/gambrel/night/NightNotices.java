package gambrel.night;

import gambrel.files.export.ExportReader;
import gambrel.trade.decision.Decision;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.SetAside;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The notices about the shop folder and its figures, with the severity of their consequences
 * tonight. An unknown body has one notice, however many rows name it. A file with unknown columns
 * has one for all its rows.
 */
final class NightNotices {
  private final Inputs inputs;
  private final Night night;
  private final Set<ReasonCode> holding;

  NightNotices(Inputs inputs, Night night) {
    this.inputs = inputs;
    this.night = night;
    this.holding =
        night.bodies().values().stream()
            .map(BodyAccount::decision)
            .filter(decision -> decision.state() == State.HELD)
            .flatMap(decision -> decision.reasons().stream())
            .map(Reason::code)
            .collect(Collectors.toSet());
  }

  /**
   * Whether nothing is issued: any statement may be wrong because a file, a column or a setting
   * could not be read.
   */
  static boolean stopsIssuing(Inputs inputs) {
    return inputs.notices().stream().anyMatch(notice -> notice.severity() == Severity.STOP);
  }

  /** The notices, in no particular order. */
  List<Notice> all() {
    var all = new ArrayList<>(inputs.notices());
    night.notices().forEach(notice -> all.add(ofFigures(notice)));
    all.addAll(night.ledger().notices());
    addSetAside(all);
    return all;
  }

  /** A notice about figures; a mark if it holds no statement tonight. */
  private Notice ofFigures(Notice notice) {
    boolean holds =
        switch (notice.code()) {
          case BATCH_OUT -> holding.contains(ReasonCode.BATCH_OUT);
          case BATCH_LATE -> holding.contains(ReasonCode.BATCH_LATE);
          case SCALE_FAILED -> holding.contains(ReasonCode.SCALE_FAILED);
          case SHARES_SUM ->
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
      } else if (!hasUnknownColumns(row)) {
        all.add(row.notice().as(isReleased(row) ? Severity.NOTE : row.notice().severity()));
      }
    }
    var bodies = new UnknownBodies(inputs);
    unknown.forEach((body, naming) -> all.add(bodies.notice(body, naming)));
  }

  /** Whether the notice of the row's file says it for the row. */
  private static boolean hasUnknownColumns(SetAside row) {
    return row.notice().code() == NoticeCode.ROW_BROKEN
        && ExportReader.COLUMNS_UNKNOWN.equals(row.notice().saying().values().get("fault"));
  }

  /** Whether every body that a row names was released from waiting for it. */
  private boolean isReleased(SetAside row) {
    var reason = new Reason(ReasonCode.ROW_SET_ASIDE, row.name());
    return !row.bodies().isEmpty()
        && row.bodies().stream()
            .allMatch(
                body -> decision(body).filter(d -> d.released().contains(reason)).isPresent());
  }
}
