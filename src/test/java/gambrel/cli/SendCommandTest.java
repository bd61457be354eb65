package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.NightShop;
import gambrel.night.TinyDocuments;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code send} prints and how it ends; that mail arrives is tested with its server. */
class SendCommandTest {
  private static final String NIGHT = "--as-of=" + NightShop.NIGHT;
  private static final String MORNING = "--as-of=2026-03-06T08:00";

  @TempDir private Path folder;
  private NightShop shop;
  private String path;

  @BeforeEach
  void issue() {
    shop = new NightShop(folder.resolve("shop")).without("customers.csv").beef("B1", "a7");
    shop.add("customers.csv", "customer,name,email", "a7,Ann Dorrin,ann@dorrin.example");
    shop.add("mail.properties", "from=office@shop.example", "host=localhost", "port=9");
    path = shop.write().toString();
    assertEquals(0, gambrel("run", path, NIGHT).code());
  }

  private record Result(int code, String out, String err) {}

  private static Result gambrel(String... args) {
    var out = new StringWriter();
    var err = new StringWriter();
    int code =
        Main.run(
            (folder, settings) -> new TinyDocuments(),
            () -> false,
            new PrintWriter(out),
            new PrintWriter(err),
            args);
    return new Result(code, out.toString(), err.toString());
  }

  private static void assertNamesNobody(Result result) {
    var said = result.out() + result.err();
    assertFalse(said.contains("Dorrin") || said.contains("dorrin.example"), said);
  }

  @Test
  void aDryRunSaysHowManyMessagesItWroteAndWhere() {
    var result = gambrel("send", path, "--dry-run", MORNING);

    assertEquals(0, result.code(), result::toString);
    assertEquals("", result.err());
    assertEquals(
        "1 messages with 1 statements written to " + shop.reports().resolve("outbox") + "\n",
        result.out().replace("\r\n", "\n"));
    assertNamesNobody(result);
  }

  @Test
  void quietSaysNothing() {
    assertEquals(new Result(0, "", ""), gambrel("send", path, "--dry-run", "--quiet", MORNING));
  }

  @Test
  void anAddressThatCannotBeUsedIsNamedByTheCustomersIdAndExitsWith1() {
    shop.replace("customers.csv", "ann@dorrin.example", "ann@dorrin.example; jo@dorrin.example");
    shop.write();

    var result = gambrel("send", path, "--dry-run", MORNING);

    assertEquals(1, result.code(), result::toString);
    assertTrue(result.err().contains("Customer a7 "), result.err());
    assertNamesNobody(result);
  }

  @Test
  void aServerThatIsNotThereExitsWith4() {
    var result = gambrel("send", path, MORNING);

    assertEquals(4, result.code(), result::toString);
    assertTrue(result.err().contains("stopped: the mail server cannot be reached"), result.err());
    assertNamesNobody(result);
  }

  @Test
  void withoutMailSettingsItSaysHowToBegin() {
    shop.without("mail.properties").write();

    var result = gambrel("send", path, MORNING);

    assertEquals(2, result.code(), result::toString);
    assertTrue(result.err().contains("make one with the lines from="), result.err());
  }

  @Test
  void withoutStatementsItSaysSo() {
    var result = gambrel("send", path, "--out", folder.resolve("new").toString(), MORNING);

    assertEquals(2, result.code(), result::toString);
    assertTrue(result.err().contains("run first"), result.err());
    assertFalse(Files.exists(folder.resolve("new")));
  }

  @Test
  void aStatementThatThereIsNotCannotBeSentAgain() {
    assertEquals(2, gambrel("send", path, "--again", "a7/B9", MORNING).code());
  }

  @Test
  void aUserWithoutAPasswordIsRefused() {
    shop.add("mail.properties", "user=office").write();

    var result = gambrel("send", path, MORNING);

    assertEquals(2, result.code(), result::toString);
    assertTrue(result.err().contains("password_file"), result.err());
  }
}
