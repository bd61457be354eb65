package gambrel.weighing;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * Rows of one scale dated so far after the run's clock that no weighing of tonight explains it: one
 * notice a scale.
 *
 * @param first the first of them
 * @param rows how many there are
 * @param files in how many files
 * @param earliest the earliest time among them
 * @param latest the latest
 */
record RowsAhead(
    ReadRow first, int rows, int files, OffsetDateTime earliest, OffsetDateTime latest) {
  private static final int HOURS = 6;

  /**
   * What one file has of them, by scale.
   *
   * @param rows that count as used, in line order
   */
  static Collection<RowsAhead> of(List<ReadRow> rows, OffsetDateTime asOf) {
    var tonight = asOf.plusHours(HOURS);
    var byScale = new LinkedHashMap<String, RowsAhead>();
    for (var row : rows) {
      row.time()
          .filter(time -> time.isAfter(tonight))
          .ifPresent(
              time ->
                  byScale.merge(
                      row.scale(), new RowsAhead(row, 1, 1, time, time), RowsAhead::another));
    }
    return byScale.values();
  }

  /** The notices about all files together. */
  static List<Notice> notices(Collection<RowsAhead> ofFiles) {
    var byScale = new LinkedHashMap<String, RowsAhead>();
    ofFiles.forEach(ahead -> byScale.merge(ahead.first.scale(), ahead, RowsAhead::with));
    return byScale.values().stream().map(RowsAhead::notice).toList();
  }

  /** With another row of the same file. */
  private RowsAhead another(RowsAhead row) {
    var both = with(row);
    return new RowsAhead(first, both.rows, files, both.earliest, both.latest);
  }

  /** With those of a later file. */
  private RowsAhead with(RowsAhead later) {
    return new RowsAhead(
        first,
        rows + later.rows,
        files + later.files,
        earliest.isAfter(later.earliest) ? later.earliest : earliest,
        latest.isBefore(later.latest) ? later.latest : latest);
  }

  private Notice notice() {
    String variant = rows == 1 ? "ONE" : files == 1 ? "SOME" : "FILES";
    return Notice.of(NoticeCode.DATED_AHEAD, variant, first.place())
        .aboutTicket(first.scale(), first.ticket())
        .quoting(first.row().raw())
        .with("rows", rows)
        .with("files", files)
        .with("earliest", earliest.toLocalDateTime())
        .with("latest", latest.toLocalDateTime());
  }
}
