package gambrel.damage;

import gambrel.insight.month.MonthReport;
import gambrel.insight.usual.LikeBodies;
import gambrel.laws.XhtmlDocuments;
import gambrel.night.Documents;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightlyRun;
import gambrel.night.RefusedException;
import gambrel.night.Trees;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What one night says to customers and to the shop.
 *
 * @param exit the exit code
 * @param refusal why nothing was done; empty if the night was done
 * @param issued by customer and body: what the register says of a statement, and its page
 * @param states by body: its state in the table of bodies
 * @param notices what the shop is told
 */
record IssuedPages(
    int exit,
    String refusal,
    SortedMap<String, String> issued,
    Map<String, String> states,
    List<Notice> notices) {
  /** What the register says of a statement, without what depends on the order of issue. */
  private static final Set<String> ASIDE = Set.of("number", "sha256");

  /** Names the statement's number, and what other statements say, which may wait. */
  private static final String OWED = "(?s)<div class=\"part beside whole answer owe\">.*?</div>";

  /** Runs a night over a shop folder into a fresh output folder. */
  static IssuedPages of(Path shop, Path out, OffsetDateTime asOf) {
    new FolderCopy(new TreeMap<>()).writeTo(out);
    try {
      var inputs = Inputs.read(shop, Progress.NONE);
      var documents = new Pages(new XhtmlDocuments(inputs.shop().settings()));
      var months = List.of(YearMonth.of(2020, 1));
      var outcome = new NightlyRun(inputs, documents).run(out, asOf, months);
      return outcome instanceof NightOutcome.Done done
          ? done(done, out)
          : refused(outcome.exitCode(), outcome.toString());
    } catch (RefusedException e) {
      return refused(2, e.getMessage());
    }
  }

  private static IssuedPages refused(int exit, String why) {
    return new IssuedPages(exit, why, new TreeMap<>(), Map.of(), List.of());
  }

  private static IssuedPages done(NightOutcome.Done done, Path out) {
    var register = table(out, "statements.csv");
    var issued = new TreeMap<String, String>();
    for (int row = 0; row < register.rows().size(); row++) {
      var cells = new TreeMap<String, String>();
      for (int c = 0; c < register.header().size(); c++) {
        cells.put(register.header().get(c), register.cell(row, c));
      }
      var printedNumber = "<div>[^<>]* " + cells.get("number") + "( [^<>]*)?</div>(?=</td>)";
      var page =
          Trees.text(out.resolve(cells.get("file")))
              .replaceFirst(printedNumber, "")
              .replaceFirst(OWED, "");
      cells.keySet().removeAll(ASIDE);
      issued.put(cells.get("customer") + '/' + cells.get("body"), cells + "\n" + page);
    }
    var bodies = table(out, "bodies.csv");
    int state = bodies.header().indexOf("state");
    var states =
        bodies.rows().stream()
            .collect(Collectors.toMap(row -> row.get(0), row -> row.get(state), (a, b) -> a));
    return new IssuedPages(done.exitCode(), "", issued, states, done.report().notices());
  }

  private static TypedTable table(Path out, String file) {
    var text = String.join("\n", Trees.lines(out.resolve("data").resolve(file)));
    return TypedTable.read(file, text);
  }

  /** Statements of another night that are not here. */
  Set<String> missing(IssuedPages other) {
    var keys = new TreeMap<>(other.issued).keySet();
    keys.removeAll(issued.keySet());
    return keys;
  }

  /** Statements here that another night does not have, or has otherwise. */
  Set<String> different(IssuedPages other) {
    return issued.keySet().stream()
        .filter(key -> !issued.get(key).equals(other.issued.get(key)))
        .collect(Collectors.toSet());
  }

  /** Statements as text, all else as small as can be. */
  private record Pages(Documents full) implements Documents {
    @Override
    public Documents comparing(LikeBodies bodies) {
      return new Pages(full.comparing(bodies));
    }

    @Override
    public byte[] statement(
        Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
      return full.statement(night, planned, changes, figures);
    }

    @Override
    public byte[] draft(Night night, Planned planned, byte[] figures) {
      return "draft".getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public byte[] toPrint(Night night, List<Printed> customers) {
      return "to print".getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public MailText mail(Night night, Register register, Letter letter) {
      return full.mail(night, register, letter);
    }

    @Override
    public byte[] summary(MonthReport month) {
      return "summary".getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public byte[] morning(MorningReport report) {
      return "morning".getBytes(StandardCharsets.UTF_8);
    }
  }
}
