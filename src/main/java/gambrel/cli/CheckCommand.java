package gambrel.cli;

import gambrel.files.guess.ExportAssistant;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.RefusedException;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Reads and computes as a run does, and prints the notices. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = GambrelCommand.Version.class,
    description = "Reads and computes like run, prints the notices, publishes nothing.")
final class CheckCommand extends ShopCommand {
  @Option(
      names = "--preview",
      paramLabel = "FILE",
      description = "writes the statement of the body that was cut last, to look at the templates")
  private Path preview;

  @Override
  int work() throws RefusedException {
    if (preview != null) {
      refuseExports(preview);
    }
    var reports = shop().resolve("reports");
    Reading reading;
    NightOutcome outcome;
    try (var progress = progress()) {
      reading = read(progress);
      outcome = reading.run().check(reports, reading.asOf());
    }
    if (outcome instanceof NightOutcome.Done done) {
      print(done.report().notices(), reading.inputs(), reading.asOf().toLocalDate());
      if (preview != null) {
        try {
          reading.run().preview(preview, done.report().night());
        } catch (IOException e) {
          return finish(NightOutcome.Stopped.failed(e, reports));
        }
      }
    }
    return finish(outcome);
  }

  /** Prints notices, then how the exports are read. */
  private void print(List<Notice> notices, Inputs inputs, LocalDate today) {
    notices.forEach(this::print);
    if (!notices.isEmpty()) {
      out().println();
    }
    ExportAssistant.lines(shop(), inputs.shop(), today).forEach(out()::println);
  }

  private void print(Notice notice) {
    var words =
        Stream.of(
                notice.severity().id(),
                notice.code().id(),
                notice.place().toString(),
                notice.scale().isEmpty() ? "" : "scale " + notice.scale(),
                notice.ticket().isEmpty() ? "" : "ticket " + notice.ticket(),
                notice.body().isEmpty() ? "" : "body " + notice.body())
            .filter(word -> !word.isEmpty());
    out().println(words.collect(Collectors.joining(" ")));
    out().println("  " + NoticeWords.ENGLISH.message(notice));
    out().println("  " + NoticeWords.ENGLISH.advice(notice));
  }
}
