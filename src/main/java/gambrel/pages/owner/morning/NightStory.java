package gambrel.pages.owner.morning;

import gambrel.pages.words.Wording;
import gambrel.trade.decision.State;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.weighing.RowCount;
import java.util.ArrayList;
import java.util.List;

/** The night in a few sentences, and notes that ask for nothing. */
record NightStory(MorningReport report, Wording wording) {
  private static final int MOST_NAMES = 12;

  /** What has to be done, then what was issued and what was read. */
  List<String> sentences(int held, TodoPart todo) {
    var lead = new ArrayList<String>();
    if (held > 0) {
      lead.add(wording.counted("morning.held", held));
    }
    if (todo.urgent() > 0) {
      lead.add(wording.counted("morning.todo", todo.urgent()));
    }
    if (lead.isEmpty()) {
      lead.add(wording.say("morning.well"));
    }
    if (todo.toLookAt() > 0) {
      lead.add(wording.counted("morning.look", todo.toLookAt()));
    }
    int issued = report.issued().size();
    return List.of(
        String.join(" ", lead),
        issued == 0
            ? wording.say("morning.issued.none")
            : wording.counted("morning.issued", issued),
        read());
  }

  private String read() {
    var formats = wording.formats();
    var files = report.night().ledger().rows();
    var rows = sum(files);
    return rows.read() == 0
        ? wording.say("morning.read.none")
        : wording.counted(
            "morning.read",
            rows.read(),
            wording.counted("morning.files", files.size()),
            formats.count(rows.used()),
            formats.count(rows.repeat()),
            formats.count(rows.voided()),
            formats.count(rows.setAside()));
  }

  /** The rows of some files together. */
  static RowCount sum(List<RowCount> counts) {
    return new RowCount(
        "",
        counts.stream().mapToInt(RowCount::used).sum(),
        counts.stream().mapToInt(RowCount::repeat).sum(),
        counts.stream().mapToInt(RowCount::voided).sum(),
        counts.stream().mapToInt(RowCount::setAside).sum());
  }

  /** Open bodies, the number of notices for the record, and that the register is new. */
  List<String> notes() {
    var notes = new ArrayList<String>();
    var open =
        report.night().bodies().values().stream()
            .filter(account -> account.decision().state() == State.OPEN)
            .map(account -> account.body().id())
            .toList();
    if (!open.isEmpty()) {
      String names = wording.names(open, MOST_NAMES);
      notes.add(
          wording.counted("morning.open", open.size())
              + " "
              + wording.say("morning.open.names", names));
    }
    long noted =
        report.notices().stream()
            .filter(n -> n.severity() == Severity.NOTE && !isShownElsewhere(n.code()))
            .count();
    if (noted > 0) {
      notes.add(wording.counted("morning.notes", noted));
    }
    if (report.newRegister()) {
      notes.add(wording.say("morning.register.new"));
    }
    return notes;
  }

  private static boolean isShownElsewhere(NoticeCode code) {
    return code == NoticeCode.REGISTER_NEW || code == NoticeCode.LIKELY_CAUSE;
  }
}
