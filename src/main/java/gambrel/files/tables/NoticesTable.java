package gambrel.files.tables;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** {@code data/notices.csv}: everything that a person should know. */
public final class NoticesTable {
  private static final List<String> COLUMNS =
      List.of(
          "severity",
          "code",
          "file",
          "line",
          "scale",
          "ticket",
          "body",
          "message",
          "advice",
          "raw");

  private NoticesTable() {}

  /** The table of {@code notices}, in its own order. */
  public static Table of(Collection<Notice> notices) {
    return new Table(
        "notices.csv",
        COLUMNS,
        notices.stream().sorted(Notice.ORDER).map(NoticesTable::row).toList());
  }

  private static List<String> row(Notice notice) {
    int line = notice.place().line();
    return new RowBuilder()
        .text(notice.severity().id())
        .text(notice.code().id())
        .text(notice.place().file())
        .number(line == 0 ? Optional.empty() : Optional.of(line))
        .text(notice.scale())
        .text(notice.ticket())
        .text(notice.body())
        .text(NoticeWords.ENGLISH.message(notice))
        .text(NoticeWords.ENGLISH.advice(notice))
        .text(notice.raw())
        .cells();
  }
}
