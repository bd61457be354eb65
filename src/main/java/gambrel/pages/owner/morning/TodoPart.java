package gambrel.pages.owner.morning;

import gambrel.pages.views.MorningView.Todo;
import gambrel.pages.words.Wording;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import java.util.List;

/** What the night's notices ask for, worst first. */
final class TodoPart {
  private final Wording wording;
  private final List<List<Notice>> groups;

  TodoPart(List<Notice> notices, Wording wording) {
    this.wording = wording;
    this.groups = NoticeGroups.of(notices.stream().filter(TodoPart::asks).toList());
  }

  /** Notes ask for nothing; held bodies have a list of their own. */
  private static boolean asks(Notice notice) {
    return notice.severity() != Severity.NOTE && notice.code() != NoticeCode.HELD;
  }

  /** How many things to do are worse than a mark. */
  long urgent() {
    return groups.stream().filter(group -> group.get(0).severity() != Severity.MARK).count();
  }

  /** How many things to do are only marks. */
  long toLookAt() {
    return groups.size() - urgent();
  }

  /** Each thing to do. */
  List<Todo> todo() {
    return groups.stream().map(this::todo).toList();
  }

  private Todo todo(List<Notice> group) {
    var first = group.get(0);
    return new Todo(
        wording.say("morning.severity." + first.severity().id()),
        place(first),
        ticket(first),
        message(group),
        wording.notices().advice(first),
        first.raw());
  }

  private String message(List<Notice> group) {
    var first = group.get(0);
    String message = wording.notices().message(first);
    if (group.size() == 1) {
      return message;
    }
    boolean alike = group.stream().allMatch(n -> n.saying().equals(first.saying()));
    return wording.say(
        alike ? "morning.group.alike" : "morning.group.kind",
        wording.formats().count(group.size()),
        message);
  }

  private String place(Notice notice) {
    int line = notice.place().line();
    return line == 0
        ? notice.place().file()
        : wording.say("morning.place", notice.place().file(), Integer.toString(line));
  }

  private String ticket(Notice notice) {
    if (notice.scale().isEmpty()) {
      return "";
    }
    return notice.ticket().isEmpty()
        ? wording.say("morning.scale", notice.scale())
        : wording.say("morning.ticket", notice.scale(), notice.ticket());
  }
}
