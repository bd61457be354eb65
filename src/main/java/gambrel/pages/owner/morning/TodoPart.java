package gambrel.pages.owner.morning;

import gambrel.pages.views.MorningView.Todo;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What the night's notices ask for, worst first. Notices with equal words and advice are one thing
 * to do, and so are many of one code in one file, since they mostly have one cause.
 */
final class TodoPart {
  private static final int MOST_OF_A_KIND = 5;
  private static final Comparator<Notice> WORST_FIRST =
      Comparator.comparing(Notice::severity).thenComparing(Notice.ORDER);

  private final Wording wording;
  private final List<List<Notice>> groups;

  TodoPart(List<Notice> notices, Wording wording) {
    this.wording = wording;
    this.groups = group(notices.stream().filter(TodoPart::asks).sorted(WORST_FIRST).toList());
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

  private static List<List<Notice>> group(List<Notice> notices) {
    var groups = new ArrayList<List<Notice>>();
    Groups.inOrder(notices.stream(), n -> List.of(n.severity(), n.code(), n.place().file()))
        .forEach(
            (kind, alike) -> {
              if (alike.size() > MOST_OF_A_KIND) {
                groups.add(alike);
              } else {
                groups.addAll(
                    Groups.inOrder(alike.stream(), n -> List.of(n.saying(), n.advice())).values());
              }
            });
    return groups;
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
