package gambrel.pages.owner.morning;

import gambrel.trade.decision.Reason;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.SetAside;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Which reasons to hold bodies a night's notices are about, and which bodies they concern. */
final class NoticedReasons {
  private final Night night;
  private final Map<Object, List<SetAside>> rows;

  NoticedReasons(Night night) {
    this.night = night;
    this.rows = Groups.inOrder(night.ledger().setAside().stream(), row -> Subject.of(row.notice()));
  }

  /** What the notices of set-aside rows are about: a row or, in one for all its rows, a body. */
  private record Subject(NoticeCode code, Object of) {
    static Subject of(Notice notice) {
      boolean all = notice.code() == NoticeCode.BODY_UNKNOWN;
      return new Subject(notice.code(), all ? notice.body() : notice.place());
    }
  }

  /** The rows set aside that a notice is about; none if it is about something else. */
  private List<SetAside> rows(Notice notice) {
    return rows.getOrDefault(Subject.of(notice), List.of());
  }

  /** A name for what holds a body. A notice about it has the same name among its own. */
  static String name(String body, Reason reason) {
    return switch (reason.code()) {
      case SHARES -> NoticeCode.SHARES_SUM + " " + body;
      default -> reason.code() + " " + reason.name();
    };
  }

  /** The names of what a notice is about. */
  Set<String> names(Notice notice) {
    var names = new LinkedHashSet<String>();
    rows(notice).forEach(row -> names.add("ROW_SET_ASIDE " + row.name()));
    names.add("ROW_UNREAD " + notice.place());
    names.add(notice.code() + " " + batch(notice));
    names.add(notice.code() + " " + notice.body());
    names.add(notice.code() + " " + notice.scale() + " " + notice.ticket());
    names.add(notice.code() + " " + notice.place());
    names.add(notice.code() + " " + notice.scale() + " " + notice.place());
    return names;
  }

  /** The bodies that a notice names, be they held or not. */
  Stream<String> bodies(Notice notice) {
    var batch = night.batches().get(batch(notice));
    return Stream.of(
            Stream.of(notice.body()),
            rows(notice).stream().flatMap(row -> row.bodies().stream()),
            Stream.ofNullable(batch).flatMap(b -> b.meatInByBody().keySet().stream()))
        .flatMap(ids -> ids)
        .filter(id -> night.bodies().containsKey(id));
  }

  private static String batch(Notice notice) {
    return notice.saying().values().get("batch") instanceof Value.Text batch ? batch.text() : "";
  }
}
