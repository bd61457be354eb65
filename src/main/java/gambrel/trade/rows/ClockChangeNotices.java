package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;

/** Words about weighings in an hour that comes twice or never; one notice a scale and day. */
final class ClockChangeNotices {
  private ClockChangeNotices() {}

  /** Weighings of which nothing tells in which of the two hours they were. */
  static Notice unclear(List<ClockChanges.Seen> group, ZoneId zone) {
    var first = group.get(0);
    var second = first.time().atZone(zone).withLaterOffsetAtOverlap().toOffsetDateTime();
    return notice(NoticeCode.HOUR_REPEATED, group)
        .with("second", second.toString())
        .advising("OFFSET");
  }

  /** Weighings in an hour that does not exist. */
  static Notice skipped(List<ClockChanges.Seen> group, ZoneId zone) {
    var first = group.get(0);
    LocalDateTime taken = first.time().atZone(zone).toLocalDateTime();
    return notice(NoticeCode.HOUR_SKIPPED, group).with("time", first.time()).with("taken", taken);
  }

  private static Notice notice(NoticeCode code, List<ClockChanges.Seen> group) {
    var first = group.get(0);
    return Notice.of(code, first.row().place())
        .aboutTicket(first.scale(), first.row().get(Field.TICKET))
        .quoting(first.row().raw())
        .with("count", group.size())
        .with("date", first.time().toLocalDate());
  }
}
