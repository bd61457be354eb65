package gambrel.pages.owner.morning;

import gambrel.pages.words.Wording;
import gambrel.trade.decision.State;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The night in a few sentences, and what needs nothing yet. */
final class NightStory {
  private static final int MOST_NAMES = 12;

  private final MorningReport report;
  private final Wording wording;

  NightStory(MorningReport report, Wording wording) {
    this.report = report;
    this.wording = wording;
  }

  /** Whether anybody is needed, then what went out and what was read. */
  List<String> sentences(int held, TodoPart todo) {
    var lead = new ArrayList<String>();
    if (held > 0) {
      lead.add(counted("morning.held", held));
    }
    if (todo.urgent() > 0) {
      lead.add(counted("morning.todo", todo.urgent()));
    }
    if (lead.isEmpty()) {
      lead.add(wording.say("morning.well"));
    }
    if (todo.toLookAt() > 0) {
      lead.add(counted("morning.look", todo.toLookAt()));
    }
    int issued = report.issued().size();
    return List.of(
        String.join(" ", lead),
        issued == 0 ? wording.say("morning.issued.none") : counted("morning.issued", issued),
        read());
  }

  private String read() {
    var files = report.night().ledger().rows();
    var rows = FilesPart.sum(files);
    if (rows.read() == 0) {
      return wording.say("morning.read.none");
    }
    return wording.count(
        "morning.read",
        rows.read(),
        count(rows.read()),
        counted("morning.files", files.size()),
        count(rows.used()),
        count(rows.repeat()),
        count(rows.voided()),
        count(rows.setAside()));
  }

  /** Open bodies, notes for the record, and a register that was not there. */
  List<String> notes() {
    var notes = new ArrayList<String>();
    var open =
        report.night().bodies().values().stream()
            .filter(account -> account.decision().state() == State.OPEN)
            .map(account -> account.body().id())
            .toList();
    if (!open.isEmpty()) {
      notes.add(counted("morning.open", open.size()) + " " + names(open));
    }
    long noted =
        report.notices().stream()
            .filter(n -> n.severity() == Severity.NOTE && !isTold(n.code()))
            .count();
    if (noted > 0) {
      notes.add(counted("morning.notes", noted));
    }
    if (report.newRegister()) {
      notes.add(wording.say("morning.register.new"));
    }
    return notes;
  }

  /** What the sheet tells in a place of its own. */
  private static boolean isTold(NoticeCode code) {
    return code == NoticeCode.REGISTER_NEW || code == NoticeCode.LIKELY_CAUSE;
  }

  private String names(List<String> bodies) {
    String shown = bodies.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
    int more = bodies.size() - MOST_NAMES;
    return wording.say(
        "morning.open.names", more > 0 ? wording.say("summary.more", shown, count(more)) : shown);
  }

  private String counted(String key, long number) {
    return wording.count(key, number, count(number));
  }

  private String count(long number) {
    return wording.formats().count(number);
  }
}
