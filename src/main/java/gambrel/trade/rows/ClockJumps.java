package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * Finds scale clocks that went back: from one row of a scale to the next in a file the ticket
 * number rises and the time falls by more than an hour. Files in another order than that of the
 * scale's own counter and clock say nothing: all but a tenth of the steps must go forward, except
 * that one step back is always allowed.
 */
public final class ClockJumps {
  private static final Duration LEAST = Duration.ofHours(1);
  private static final int ONE_IN = 10;
  private static final int FEWEST_STEPS = 3;

  private final List<Notice> notices = new ArrayList<>();

  private ClockJumps() {}

  /**
   * One notice a jump.
   *
   * @param rows of one file in line order, without repeats
   */
  public static List<Notice> of(List<ReadRow> rows) {
    var clocks = new LinkedHashMap<String, List<ReadRow>>();
    for (var row : rows) {
      if (row.time().isPresent() && RowOrder.isNumber(row.ticket())) {
        clocks.computeIfAbsent(row.scale(), s -> new ArrayList<>()).add(row);
      }
    }
    var jumps = new ClockJumps();
    clocks.values().forEach(jumps::look);
    return jumps.notices;
  }

  private void look(List<ReadRow> rows) {
    int steps = rows.size() - 1;
    int back = 0;
    var jumps = new ArrayList<Integer>();
    for (int i = 1; i <= steps; i++) {
      boolean counted = ticketRises(rows.get(i - 1), rows.get(i));
      var ago = Duration.between(time(rows.get(i)), time(rows.get(i - 1)));
      if (!counted || !ago.isNegative() && !ago.isZero()) {
        back++;
      }
      if (counted && ago.compareTo(LEAST) > 0) {
        jumps.add(i);
      }
    }
    if (steps >= FEWEST_STEPS && back <= Math.max(1, steps / ONE_IN)) {
      jumps.forEach(i -> tell(rows.get(i - 1), rows.get(i)));
    }
  }

  private static boolean ticketRises(ReadRow before, ReadRow after) {
    return RowOrder.compare(after.ticket(), before.ticket()) >= 0;
  }

  private static OffsetDateTime time(ReadRow row) {
    return row.time().orElseThrow();
  }

  private void tell(ReadRow before, ReadRow after) {
    notices.add(
        after
            .about(Notice.of(NoticeCode.CLOCK_RESET, after.place()))
            .with("before", time(before).toLocalDateTime())
            .with("ticketBefore", before.ticket())
            .with("after", time(after).toLocalDateTime()));
  }
}
