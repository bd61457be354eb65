package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.publish.HastyDisk;
import gambrel.insight.month.MonthReport;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Numbers of statements: consecutive in order of issue, none used twice, none left out. */
class StatementNumbersTest {
  private static final String SECOND = "2026-03-07T02:00";

  @TempDir private Path folder;
  private NightShop shop;

  @BeforeEach
  void fourBodies() {
    shop = new NightShop(folder.resolve("shop"));
    shop.beef("B2", "ann").beef("B1", "bob").beef("B3", "ann").beef("B10", "ann");
  }

  /** The numbers of the register by customer, body and revision. */
  private Map<String, String> numbers() {
    var numbers = new TreeMap<String, String>();
    Trees.lines(shop.reports().resolve("data/statements.csv")).stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .forEach(c -> numbers.put(c[0] + ' ' + c[1] + " r" + c[2], c[c.length - 1]));
    return numbers;
  }

  @Test
  void aNightNumbersByCustomerThenBody() {
    shop.run(NightShop.NIGHT);

    assertEquals(
        Map.of("ann B10 r1", "1", "ann B2 r1", "2", "ann B3 r1", "3", "bob B1 r1", "4"), numbers());
  }

  @Test
  void theFirstNumberIsTheShopsOwnAndLaterOnesFollowWhateverItIsThen() {
    shop.add("shop.properties", "number_from=1001");
    shop.run(NightShop.NIGHT);
    assertEquals("1004", numbers().get("bob B1 r1"));
    shop.replace("shop.properties", "number_from=1001", "number_from=5").beef("B4", "ann");

    shop.run(SECOND);

    assertEquals("1005", numbers().get("ann B4 r1"));
  }

  @Test
  void aRevisionHasANumberOfItsOwnAndARerunHasNone() {
    shop.run(NightShop.NIGHT);
    shop.replace("exports/a.csv", "B2,rump,120", "B2,rump,119.9");

    shop.run(SECOND);
    shop.run(SECOND);

    assertEquals("2", numbers().get("ann B2 r1"));
    assertEquals("5", numbers().get("ann B2 r2"));
    assertEquals(5, numbers().size());
  }

  /** The statements about these bodies cannot be made; the others say their number. */
  private record Failing(Set<String> bodies) implements Documents {
    @Override
    public byte[] statement(
        Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
      if (bodies.contains(planned.body())) {
        throw TemplateProblem.of(
            "statement.ftlh", TemplateProblem.Fault.LANGUAGE, Map.of("message", "no"));
      }
      return ("number " + planned.number().orElseThrow()).getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public byte[] draft(Night night, Planned planned, byte[] figures) {
      return new byte[0];
    }

    @Override
    public byte[] summary(MonthReport month) {
      return new byte[0];
    }

    @Override
    public byte[] morning(MorningReport report) {
      return new byte[0];
    }

    @Override
    public byte[] toPrint(Night night, List<Printed> customers) {
      return new byte[0];
    }

    @Override
    public MailText mail(Night night, Register register, Letter letter) {
      throw new UnsupportedOperationException("nothing is mailed here");
    }
  }

  @Test
  void aStatementThatCannotBeMadeLeavesNoNumberOut() throws Exception {
    var documents = new Failing(Set.of("B10", "B3"));
    new NightlyRun(
            Inputs.read(shop.write(), Progress.NONE), documents, new HastyDisk(), Progress.NONE)
        .run(shop.reports(), NightShop.moment(NightShop.NIGHT), List.of());

    assertEquals(Map.of("ann B2 r1", "1", "bob B1 r1", "2"), numbers());
    assertTrue(
        Trees.text(shop.reports().resolve("statements/bob/B1-r1.pdf")).startsWith("number 2"));

    shop.run(SECOND);

    assertEquals("3", numbers().get("ann B10 r1"));
    assertEquals("4", numbers().get("ann B3 r1"));
  }
}
