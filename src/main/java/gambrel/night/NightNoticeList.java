package gambrel.night;

import gambrel.files.export.ExportReader;
import gambrel.insight.cause.LikelyCauses;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.SetAside;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All notices of a night but those about publishing. An unknown body makes one, however many rows
 * name it; a file whose columns are not known makes one for all its rows.
 */
final class NightNoticeList {
  /** The one table of the shop folder on which no statement rests. */
  private static final String OWNERS_VALUES = "values.csv";

  private final List<Notice> notices = new ArrayList<>();
  private final LikelyCauses causes;
  private boolean stopsIssuing;

  private NightNoticeList(LikelyCauses causes) {
    this.causes = causes;
  }

  static NightNoticeList of(Inputs inputs, Night night) {
    var list = new NightNoticeList(LikelyCauses.of(night, inputs.exports()));
    inputs.notices().forEach(list::addReading);
    var consequences = new NightSeverity(night);
    night.notices().forEach(notice -> list.notices.add(consequences.of(notice)));
    list.notices.addAll(night.ledger().notices());
    list.addSetAside(night.ledger().setAside(), inputs, consequences);
    list.notices.addAll(list.causes.notices());
    return list;
  }

  /** The notices, in no particular order. */
  List<Notice> all() {
    return notices;
  }

  /** What probably went wrong with the bodies that do not balance. */
  LikelyCauses causes() {
    return causes;
  }

  /** Whether a table or an export could not be read without which any statement may be wrong. */
  boolean stopsIssuing() {
    return stopsIssuing;
  }

  private void addReading(Notice notice) {
    boolean stops =
        notice.code() == NoticeCode.EXPORT_UNFINISHED
            || notice.code() == NoticeCode.COLUMN_MISSING
                && !notice.place().file().equals(OWNERS_VALUES);
    stopsIssuing |= stops;
    notices.add(
        stops && notice.code() == NoticeCode.COLUMN_MISSING
            ? Notice.of(notice.code(), "STOPS", notice.place())
                .withAll(notice.saying())
                .quoting(notice.raw())
            : notice);
  }

  private void addSetAside(List<SetAside> rows, Inputs inputs, NightSeverity consequences) {
    Map<String, List<SetAside>> unknown = new LinkedHashMap<>();
    for (var row : rows) {
      if (row.notice().code() == NoticeCode.BODY_UNKNOWN) {
        unknown.computeIfAbsent(row.notice().body(), b -> new ArrayList<>()).add(row);
      } else if (!isTheFiles(row)) {
        notices.add(consequences.of(row));
      }
    }
    if (!unknown.isEmpty()) {
      var bodies = new UnknownBodies(inputs);
      unknown.forEach((body, naming) -> notices.add(bodies.notice(body, naming)));
    }
  }

  private static boolean isTheFiles(SetAside row) {
    return row.notice().code() == NoticeCode.ROW_BROKEN
        && ExportReader.COLUMNS_UNKNOWN.equals(row.notice().saying().values().get("fault"));
  }
}
