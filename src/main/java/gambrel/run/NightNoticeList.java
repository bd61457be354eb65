package gambrel.run;

import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.reckoning.Night;
import gambrel.weighing.SetAside;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Puts together all notices of a night: an unknown body makes one, however many rows name it. */
final class NightNoticeList {
  private NightNoticeList() {}

  static List<Notice> of(Inputs inputs, Night night) {
    var notices = new ArrayList<>(inputs.notices());
    notices.addAll(night.notices());
    notices.addAll(night.ledger().notices());
    Map<String, List<SetAside>> unknown = new LinkedHashMap<>();
    for (var row : night.ledger().setAside()) {
      if (row.notice().code() == NoticeCode.BODY_UNKNOWN) {
        unknown.computeIfAbsent(row.notice().body(), b -> new ArrayList<>()).add(row);
      } else {
        notices.add(row.notice());
      }
    }
    unknown.forEach((body, rows) -> notices.add(unknownBody(body, rows)));
    return notices;
  }

  private static Notice unknownBody(String body, List<SetAside> rows) {
    var first = rows.get(0).notice();
    String message =
        rows.size() == 1
            ? first.message()
            : first.message() + " " + rows.size() + " rows name it.";
    return new Notice(
        first.severity(),
        first.code(),
        first.place(),
        first.scale(),
        first.ticket(),
        body,
        message,
        first.advice(),
        first.raw());
  }
}
