package gambrel.trade.rows;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Tells of rows dated so far after the run's clock that no weighing of tonight explains it: one
 * notice a scale.
 */
public final class RowsAhead {
  private static final int HOURS = 6;

  private RowsAhead() {}

  /**
   * The notices.
   *
   * @param used rows that count as used, in file and line order
   */
  public static List<Notice> notices(Stream<ReadRow> used, OffsetDateTime asOf) {
    var tonight = asOf.plusHours(HOURS);
    return used
        .filter(row -> row.time().isPresent() && time(row).isAfter(tonight))
        .collect(Collectors.groupingBy(ReadRow::scale, LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(RowsAhead::notice)
        .toList();
  }

  private static OffsetDateTime time(ReadRow row) {
    return row.time().orElseThrow();
  }

  private static Notice notice(List<ReadRow> rows) {
    var first = rows.get(0);
    long files = rows.stream().map(row -> row.place().file()).distinct().count();
    var times = rows.stream().map(RowsAhead::time).sorted(OffsetDateTime.timeLineOrder()).toList();
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
