package gambrel.cli;

import gambrel.night.LayoutHelp;
import gambrel.night.NightOutcome;
import gambrel.night.NightlyRun;
import gambrel.night.Preview;
import gambrel.night.RefusedException;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Reads and computes as a run does, and prints the notices. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Reads and computes like run, prints the notices, publishes nothing.")
final class CheckCommand extends ShopCommand {
  @Option(
      names = "--preview",
      paramLabel = "FILE",
      description = "writes the statement of the body that was cut last, to look at the templates")
  private Path preview;

  CheckCommand(DocumentMaker maker, Terminal terminal) {
    super(maker, terminal);
  }

  @Override
  int work() throws RefusedException {
    if (preview != null) {
      OutputPath.refuseExports(preview, shop());
    }
    Reading reading;
    NightOutcome outcome;
    try (var progress = progress()) {
      reading = read(progress);
      outcome =
          new NightlyRun(reading.inputs(), reading.documents(), progress)
              .check(shop().resolve("reports"), reading.asOf());
    }
    if (outcome instanceof NightOutcome.Done done) {
      var notices = done.report().notices();
      notices.forEach(notice -> print(out(), notice));
      LayoutHelp.lines(shop(), reading.inputs(), notices).forEach(out()::println);
      if (preview != null) {
        try {
          Preview.write(preview, done.report().night(), reading.documents());
        } catch (IOException e) {
          return finish(NightOutcome.Failed.of(e));
        }
      }
    }
    return finish(outcome);
  }

  private static void print(PrintWriter to, Notice notice) {
    var place = notice.place().toString();
    to.println(
        String.join(
            " ",
            Stream.of(
                    notice.severity().id(),
                    notice.code().id(),
                    place,
                    notice.scale().isEmpty() ? "" : "scale " + notice.scale(),
                    notice.ticket().isEmpty() ? "" : "ticket " + notice.ticket(),
                    notice.body().isEmpty() ? "" : "body " + notice.body())
                .filter(word -> !word.isEmpty())
                .toList()));
    to.println("  " + NoticeWords.ENGLISH.message(notice));
    to.println("  " + NoticeWords.ENGLISH.advice(notice));
  }
}
