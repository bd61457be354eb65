package gambrel.files.tables;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import java.util.Collection;
import java.util.Optional;

/** {@code data/notices.csv}: everything that a person should know. */
public final class NoticesTable {
  private NoticesTable() {}

  /** The table of {@code notices}, in its own order. */
  public static Table of(Collection<Notice> notices) {
    return new Columns<Notice>()
        .add("severity", notice -> notice.severity().id())
        .add("code", notice -> notice.code().id())
        .add("file", notice -> notice.place().file())
        .add("line", notice -> Optional.of(notice.place().line()).filter(line -> line > 0))
        .add("scale", Notice::scale)
        .add("ticket", Notice::ticket)
        .add("body", Notice::body)
        .add("message", NoticeWords.ENGLISH::message)
        .add("advice", NoticeWords.ENGLISH::advice)
        .add("raw", Notice::raw)
        .table("notices.csv", () -> notices.stream().sorted(Notice.ORDER));
  }
}
