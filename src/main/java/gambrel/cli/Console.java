package gambrel.cli;

import gambrel.notice.NoticeWords;
import gambrel.notice.Severity;
import gambrel.register.MorningReport;
import gambrel.run.Outcome;
import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;

/** A command's own streams, and how it ends. */
final class Console {
  private final CommandSpec spec;

  Console(CommandSpec spec) {
    this.spec = spec;
  }

  PrintWriter out() {
    return spec.commandLine().getOut();
  }

  PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /** Says on stderr what was not done, and how much waits for a person. */
  void warn(MorningReport report) {
    var notices = report.notices();
    notices.stream()
        .filter(notice -> notice.severity() == Severity.STOP)
        .forEach(
            n ->
                err()
                    .println(
                        ("gambrel: " + n.code().id() + " " + n.place()).strip()
                            + ": "
                            + NoticeWords.ENGLISH.message(n)));
    long waiting = notices.stream().filter(n -> n.severity() == Severity.HOLD).count();
    if (waiting > 0) {
      err().println("gambrel: things that wait for a person, on the morning sheet: " + waiting);
    }
  }

  /** Says on stderr why nothing came of it, if so; returns the exit code. */
  int finish(Outcome outcome) {
    if (outcome instanceof Outcome.Refused refused) {
      err().println("gambrel: " + refused.why() + ".");
    } else if (outcome instanceof Outcome.Busy) {
      err().println("gambrel: another run holds this output folder.");
    } else if (outcome instanceof Outcome.Failed failed) {
      err()
          .println(
              "gambrel: failed, and the last published state stands: "
                  + failed.why()
                  + ". See that the disk has room and may be written to, then run again.");
    }
    return outcome.exitCode();
  }
}
