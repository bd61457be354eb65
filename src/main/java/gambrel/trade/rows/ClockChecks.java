package gambrel.trade.rows;

import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds scale clocks that were wrong. */
public final class ClockChecks {
  private static final Duration SMALLEST_JUMP = Duration.ofHours(1);
  private static final int ONE_IN = 10;
  private static final int FEWEST_STEPS = 3;
  private static final int HOURS_AHEAD = 6;

  private ClockChecks() {}

  /**
   * One notice for each jump of a scale's clock: from one row of a file to the next the ticket
   * number rises and the time falls by more than an hour. A scale has no notice for a file that is
   * in another order than its counter and clock, which is so if more than one step and more than a
   * tenth of the steps go back.
   *
   * @param rows of one file in line order, without repeats
   */
  public static List<Notice> jumpsBack(Stream<ReadRow> rows) {
    var numbered = rows.filter(row -> row.time().isPresent() && Tickets.isNumber(row.ticket()));
    var scales = Groups.inOrder(numbered, ReadRow::scale).values();
    return scales.stream().flatMap(ClockChecks::jumpsOfScale).toList();
  }

  private static Stream<Notice> jumpsOfScale(List<ReadRow> rows) {
    int steps = rows.size() - 1;
    int back = 0;
    var jumps = new ArrayList<Notice>();
    for (int i = 1; i <= steps; i++) {
      var before = rows.get(i - 1);
      var after = rows.get(i);
      boolean counted = Tickets.compare(after.ticket(), before.ticket()) >= 0;
      boolean fallen = time(after).isBefore(time(before));
      if (!counted || fallen) {
        back++;
      }
      if (counted && fallen && time(after).plus(SMALLEST_JUMP).isBefore(time(before))) {
        jumps.add(jump(before, after));
      }
    }
    return steps >= FEWEST_STEPS && back <= Math.max(1, steps / ONE_IN)
        ? jumps.stream()
        : Stream.empty();
  }

  private static OffsetDateTime time(ReadRow row) {
    return row.time().orElseThrow();
  }

  private static Notice jump(ReadRow before, ReadRow after) {
    return after
        .about(Notice.of(NoticeCode.CLOCK_RESET))
        .with("before", time(before).toLocalDateTime())
        .with("ticketBefore", before.ticket())
        .with("after", time(after).toLocalDateTime());
  }

  /**
   * One notice for each scale with rows that are dated more than six hours after {@code asOf}: too
   * far ahead for a weighing of this night.
   *
   * @param used the used rows in file and line order
   */
  public static List<Notice> datedAhead(Stream<ReadRow> used, OffsetDateTime asOf) {
    var tonight = asOf.plusHours(HOURS_AHEAD);
    var ahead = used.filter(row -> row.time().filter(t -> t.isAfter(tonight)).isPresent());
    return Groups.inOrder(ahead, ReadRow::scale).values().stream().map(ClockChecks::ahead).toList();
  }

  private static Notice ahead(List<ReadRow> rows) {
    var first = rows.get(0);
    long files = rows.stream().map(row -> row.place().file()).distinct().count();
    var times =
        rows.stream().map(ClockChecks::time).sorted(OffsetDateTime.timeLineOrder()).toList();
    return Notice.of(
            NoticeCode.DATED_AHEAD,
            rows.size() == 1 ? "ONE" : files == 1 ? "SOME" : "FILES",
            first.place())
        .aboutTicket(first.scale(), first.ticket())
        .quoting(first.row().raw())
        .with("rows", rows.size())
        .with("files", files)
        .with("earliest", times.get(0).toLocalDateTime())
        .with("latest", times.get(times.size() - 1).toLocalDateTime());
  }
}
