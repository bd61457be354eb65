package gambrel.cli;

import gambrel.notice.Notice;
import gambrel.run.LayoutHelp;
import gambrel.run.NightlyRun;
import gambrel.run.Outcome;
import gambrel.run.Preview;
import gambrel.run.RefusedException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reads and computes as a run does, and tells what a person should know. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Reads and computes like run, prints the notices, publishes nothing.")
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ShopArguments arguments;

  @Option(
      names = "--preview",
      paramLabel = "FILE",
      description = "writes the statement of the body that was cut last, to look at the templates")
  private Path preview;

  private final DocumentMaker maker;

  CheckCommand(DocumentMaker maker) {
    this.maker = maker;
  }

  @Override
  public Integer call() {
    var console = new Console(spec);
    try {
      if (preview != null) {
        OutputPath.refuseExports(preview, arguments.shop());
      }
      var inputs = arguments.read();
      var asOf = arguments.asOf(inputs);
      var documents = maker.of(arguments.shop(), inputs.shop().settings());
      var outcome =
          new NightlyRun(inputs, documents).check(arguments.shop().resolve("reports"), asOf);
      if (outcome instanceof Outcome.Done done) {
        var notices = done.report().notices();
        notices.forEach(notice -> print(console.out(), notice));
        LayoutHelp.lines(arguments.shop(), inputs, notices).forEach(console.out()::println);
        if (preview != null) {
          return Math.max(
              console.finish(Preview.write(preview, done.report().night(), documents)),
              console.finish(outcome));
        }
      }
      return console.finish(outcome);
    } catch (RefusedException e) {
      return console.finish(new Outcome.Refused(e.getMessage()));
    }
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
    to.println("  " + notice.message());
    to.println("  " + notice.advice());
  }
}
