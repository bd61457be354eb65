package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * Tells of rows dated so far after the run's clock that no weighing of tonight explains it: one
 * notice a scale.
 */
final class RowsAhead {
  private static final int HOURS = 6;

  private RowsAhead() {}

  /**
   * The notices.
   *
   * @param rows that count as used, in file and line order
   */
  static List<Notice> of(List<ReadRow> rows, OffsetDateTime asOf) {
    var latest = asOf.plusHours(HOURS);
    var byScale = new LinkedHashMap<String, List<ReadRow>>();
    for (var row : rows) {
      if (row.time().filter(time -> time.isAfter(latest)).isPresent()) {
        byScale.computeIfAbsent(row.scale(), s -> new ArrayList<>()).add(row);
      }
    }
    return byScale.values().stream().map(RowsAhead::notice).toList();
  }

  private static Notice notice(List<ReadRow> rows) {
    var times =
        rows.stream()
            .map(row -> row.time().orElseThrow())
            .sorted(OffsetDateTime.timeLineOrder())
            .map(OffsetDateTime::toLocalDateTime)
            .toList();
    var first = rows.get(0);
    long files = rows.stream().map(row -> row.place().file()).distinct().count();
    boolean one = rows.size() == 1;
    return Notice.of(
            NoticeCode.DATED_AHEAD,
            first.place(),
            (one ? "1 row" : rows.size() + " rows")
                + " of scale "
                + first.scale()
                + (files == 1 ? "" : " in " + files + " files")
                + (one ? " is dated " : " are dated ")
                + times.get(0)
                + (one ? "" : " to " + times.get(times.size() - 1))
                + ", later than this run, and "
                + (one ? "has" : "have")
                + " no effect before then.")
        .aboutTicket(first.scale(), first.ticket())
        .quoting(first.row().raw());
  }
}
