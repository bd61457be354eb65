package gambrel.cli;

import gambrel.night.NightOutcome;
import gambrel.night.RefusedException;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.Night;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;

/** Makes a night and publishes it. */
final class RunCommand extends ShopCommand {
  private static final String MONTH = "month";

  RunCommand() {
    super("run", "Reads the shop folder, makes the night's documents and publishes them.");
    takesOut();
    option(
        MONTH,
        "YYYY-MM",
        "a month to summarise, instead of every month that has a body; may be repeated");
  }

  @Override
  int workOnShop() throws RefusedException {
    var wanted = months();
    var root = root();
    refuseExports(root);
    if (Files.exists(root) && !Files.isDirectory(root)) {
      throw new RefusedException(root + " is no folder");
    }
    NightOutcome outcome;
    try (var progress = progress()) {
      var reading = read(progress);
      outcome = reading.run().run(root, reading.asOf(), wanted);
    }
    if (outcome instanceof NightOutcome.Done done && !isQuiet()) {
      print(out(), root, done.report());
      warn(err(), done.report().notices());
    }
    return finish(outcome);
  }

  private List<YearMonth> months() throws RefusedException {
    var wanted = new ArrayList<YearMonth>();
    for (String month : values(MONTH)) {
      try {
        wanted.add(YearMonth.parse(month));
      } catch (DateTimeException e) {
        throw new RefusedException("\"" + month + "\" is no month like 2026-07");
      }
    }
    return wanted;
  }

  private static void print(PrintWriter to, Path root, MorningReport report) {
    Night night = report.night();
    int read = night.ledger().rows().stream().mapToInt(row -> row.read()).sum();
    int aside = night.ledger().setAside().size();
    int files = night.ledger().rows().size();
    to.println(
        "%s read from %s, %d set aside"
            .formatted(count(read, "row"), count(files, "export"), aside));
    to.printf(
        "%-20s  %s%n",
        count(report.issued().size(), "statement") + " issued", root.resolve("statements"));
    to.printf(
        "%-20s  %s%n", count(report.held().size(), "statement") + " held", root.resolve("held"));
    to.printf("summaries             %s%n", root.resolve("summaries"));
    to.printf("morning sheet         %s%n", root.resolve("morning.pdf"));
    to.printf("data files            %s%n", root.resolve("data"));
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** Prints the notices that stop statements, and how many others wait for a person. */
  private static void warn(PrintWriter to, List<Notice> notices) {
    notices.stream()
        .filter(notice -> notice.severity() == Severity.STOP)
        .map(n -> (n.code().id() + " " + n.place()).strip() + ": " + NoticeWords.ENGLISH.message(n))
        .forEach(line -> to.println("gambrel: " + line));
    long waiting = notices.stream().filter(n -> n.severity() == Severity.HOLD).count();
    if (waiting > 0) {
      to.println("gambrel: see the morning sheet; notices that wait for a person: " + waiting);
    }
  }
}
