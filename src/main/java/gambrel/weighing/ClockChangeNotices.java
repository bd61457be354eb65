package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
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
    return notice(
            NoticeCode.HOUR_REPEATED,
            first,
            rows(group)
                + " in the hour that came twice on "
                + first.time().toLocalDate()
                + ": the order of the export does not tell in which, and the first was taken.")
        .advising(
            "Nothing to do if it was the first. If it was the second, give time in corrections.csv"
                + " with its offset, as in "
                + second
                + ".");
  }

  /** Weighings in an hour that does not exist. */
  static Notice skipped(List<ClockChanges.Seen> group, ZoneId zone) {
    var first = group.get(0);
    LocalDateTime taken = first.time().atZone(zone).toLocalDateTime();
    return notice(
        NoticeCode.HOUR_SKIPPED,
        first,
        rows(group)
            + " in the hour that was skipped on "
            + first.time().toLocalDate()
            + "; "
            + first.time()
            + " is taken as "
            + taken
            + ".");
  }

  private static Notice notice(NoticeCode code, ClockChanges.Seen seen, String message) {
    return Notice.of(code, seen.row().place(), message)
        .aboutTicket(seen.scale(), seen.row().get(Field.TICKET))
        .quoting(seen.row().raw());
  }

  private static String rows(List<ClockChanges.Seen> group) {
    String scale = " of scale " + group.get(0).scale();
    return group.size() == 1
        ? "1 weighing" + scale + " is dated"
        : group.size() + " weighings" + scale + " are dated";
  }
}
