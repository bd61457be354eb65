package gambrel.cli;

import gambrel.reckoning.Night;
import gambrel.register.MorningReport;
import gambrel.run.NightlyRun;
import gambrel.run.Outcome;
import gambrel.run.RefusedException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The nightly job. */
@Command(
    name = "run",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = "Reads the shop folder, makes the night's documents and publishes them.")
final class RunCommand extends ShopCommand {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "the output folder; default SHOP/reports")
  private Path out;

  @Option(
      names = "--month",
      paramLabel = "YYYY-MM",
      description = "a month to summarise, instead of every month that has a body; may be repeated")
  private List<String> months = new ArrayList<>();

  RunCommand(DocumentMaker maker, Terminal terminal) {
    super(maker, terminal);
  }

  @Override
  int call(Console console) throws RefusedException {
    var wanted = months();
    var root = out == null ? arguments().shop().resolve("reports") : out;
    OutputPath.checkFolder(root, arguments().shop());
    Outcome outcome;
    try (var progress = progress(console)) {
      var reading = read(progress);
      outcome =
          new NightlyRun(reading.inputs(), reading.documents(), progress)
              .run(root, reading.asOf(), wanted);
    }
    if (outcome instanceof Outcome.Done done && !arguments().isQuiet()) {
      tell(console.out(), root, done.report());
      console.warn(done.report());
    }
    return console.finish(outcome);
  }

  private List<YearMonth> months() throws RefusedException {
    var wanted = new ArrayList<YearMonth>();
    for (String month : months) {
      try {
        wanted.add(YearMonth.parse(month));
      } catch (DateTimeException e) {
        throw new RefusedException("\"" + month + "\" is no month like 2026-07");
      }
    }
    return wanted;
  }

  private static void tell(PrintWriter to, Path root, MorningReport report) {
    Night night = report.night();
    int read = night.ledger().rows().stream().mapToInt(row -> row.read()).sum();
    int aside = night.ledger().setAside().size();
    int files = night.ledger().rows().size();
    to.printf("%d rows read from %d exports, %d set aside%n", read, files, aside);
    to.printf("%d statements issued  %s%n", report.issued().size(), root.resolve("statements"));
    to.printf("%d statements held    %s%n", report.held().size(), root.resolve("held"));
    to.printf("summaries             %s%n", root.resolve("summaries"));
    to.printf("morning sheet         %s%n", root.resolve("morning.pdf"));
    to.printf("data files            %s%n", root.resolve("data"));
  }
}
