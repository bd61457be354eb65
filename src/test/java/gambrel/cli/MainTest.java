package gambrel.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.publish.Disk;
import gambrel.files.publish.OutputFolder;
import gambrel.night.Documents;
import gambrel.night.NightShop;
import gambrel.night.TinyDocuments;
import gambrel.night.Trees;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  private static final String AS_OF = "--as-of=" + NightShop.NIGHT;

  @TempDir private Path folder;
  private NightShop shop;
  private String path;

  @BeforeEach
  void openShop() {
    shop = new NightShop(folder.resolve("shop")).beef("B1", "ann");
    path = shop.write().toString();
  }

  /** The output of a command line and its exit code. */
  private record Result(int code, String out, String err) {}

  private static Result gambrel(String... args) {
    return gambrel((folder, settings) -> new TinyDocuments(), args);
  }

  private static Result gambrel(Documents.Maker maker, String... args) {
    var out = new StringWriter();
    var err = new StringWriter();
    int code = Main.run(maker, () -> false, new PrintWriter(out), new PrintWriter(err), args);
    return new Result(code, out.toString(), err.toString());
  }

  private void assertRefused(Result result) {
    assertEquals(2, result.code(), result::toString);
    assertEquals("", result.out());
    assertFalse(result.err().isBlank());
    assertFalse(result.err().contains("Exception"), result.err());
    assertEquals(Map.of(), Trees.published(shop.reports()));
  }

  @Test
  void aNightWithNothingLeftToDoExitsWith0AndSaysWhereEverythingIs() {
    var result = gambrel("run", path, AS_OF);

    assertEquals(0, result.code(), result::toString);
    assertEquals("", result.err());
    var lines = result.out().lines().toList();
    assertEquals("6 rows read from 1 export, 0 set aside", lines.get(0));
    assertTrue(lines.get(1).startsWith("1 statement issued "), lines.get(1));
    assertTrue(result.out().contains(shop.reports().resolve("morning.pdf").toString()));
  }

  @Test
  void quietSaysNothing() {
    assertEquals(new Result(0, "", ""), gambrel("run", path, AS_OF, "--quiet"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"run", "check"})
  void workThatLastsShowsHowFarItIsOnATerminalAndClearsItInTheEnd(String command) {
    var out = new StringWriter();
    var err = new StringWriter();
    Documents.Maker lasting =
        (folder, settings) -> {
          await(() -> !err.toString().isEmpty());
          return new TinyDocuments();
        };

    int code =
        Main.run(
            lasting, () -> true, new PrintWriter(out), new PrintWriter(err), command, path, AS_OF);

    assertEquals(0, code);
    assertTrue(err.toString().startsWith("\rreading 100 %"), err.toString());
    assertTrue(err.toString().matches("(?s).*\r +\r"), err.toString());
  }

  private static void await(BooleanSupplier condition) {
    long end = System.nanoTime() + TimeUnit.MINUTES.toNanos(1);
    while (!condition.getAsBoolean() && System.nanoTime() < end) {
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(10));
    }
  }

  @Test
  void somethingThatWaitsExitsWith1AndIsCountedOnStderr() {
    shop.weigh("bench", "05T11:00:00", "B1", "nothing", "1").write();

    var result = gambrel("run", path, AS_OF);

    assertEquals(1, result.code());
    assertTrue(result.out().contains("1 statement held "), result.out());
    assertEquals(
        "gambrel: see the morning sheet; notices that wait for a person: 2", result.err().strip());
  }

  @Test
  void whatWasNotDoneIsSaidOnStderr() {
    shop.add("payments.csv", "customer,body").write();

    var result = gambrel("run", path, AS_OF);

    assertEquals(1, result.code());
    assertTrue(result.err().startsWith("gambrel: column-missing payments.csv:1: "), result.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"customers.csv", "bodies.csv"})
  void noCustomersNameIsSaidOnTheTerminalEvenWhereItStandsInTheHeadersPlace(String file) {
    shop.without(file).add(file, "ann,Ann Dorrin").write();

    var result = gambrel("run", path, AS_OF);

    assertTrue(result.err().contains(file), result.err());
    assertFalse((result.out() + result.err()).contains("Dorrin"), result::toString);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "run",
        "check",
        "explain",
        "publish SHOP",
        "run SHOP --out",
        "run SHOP --fast",
        "run SHOP SHOP",
        "run SHOP --out a --out b",
        "check SHOP --body B1",
        "cuts SHOP fish",
        "start SHOP --region mars",
        "run SHOP --as-of yesterday",
        "run SHOP --as-of 2026-02-30T02:00",
        "run SHOP --as-of 0000-01-01T02:00",
        "run SHOP --as-of 1899-12-31T02:00",
        "run SHOP --as-of 3000-01-01T02:00Z",
        "run SHOP --as-of 9999-12-31T23:59",
        "run SHOP --as-of -999999999-01-01T00:00",
        "check SHOP --as-of +999999999-12-31T23:59",
        "run SHOP --month 2026",
        "run SHOP --month 2026-13",
        "check SHOP --out=x",
        "check SHOP --as-of=",
        "explain SHOP",
        "explain SHOP B9",
        "run SHOP/nowhere",
        "run SHOP/customers.csv",
        "run SHOP --out SHOP/exports",
        "run SHOP --out SHOP/exports/a/b",
        "run SHOP --out SHOP/nowhere/../exports/a",
        "run SHOP --out SHOP/customers.csv",
        "check SHOP --preview SHOP/exports/a.csv"
      })
  void badUsageExitsWith2AndPublishesNothing(String line) {
    var args = line.isEmpty() ? new String[0] : line.replace("SHOP", path).split(" ");
    var before = Trees.published(folder);

    assertRefused(gambrel(args));

    assertEquals(before, Trees.published(folder));
    assertEquals(List.of("shop", "shop/exports"), Trees.folders(folder));
  }

  @Test
  void noLinkLeadsIntoTheExportsEither() throws Exception {
    var exports = folder.resolve("shop/exports");
    Files.createDirectories(exports.resolve("deep/er"));
    Files.createSymbolicLink(folder.resolve("link"), exports);
    Files.createSymbolicLink(folder.resolve("deep"), exports.resolve("deep/er"));
    Files.createSymbolicLink(shop.reports(), exports.resolve("deep"));
    var before = Trees.files(folder);

    assertEquals(2, gambrel("run", path, AS_OF).code());
    assertEquals(2, gambrel("run", path, AS_OF, "--out", folder + "/link").code());
    assertEquals(2, gambrel("run", path, AS_OF, "--out", folder + "/link/x").code());
    assertEquals(2, gambrel("run", path, AS_OF, "--out", folder + "/deep/../x").code());

    assertEquals(before, Trees.files(folder));
  }

  @Test
  void anOutputFolderBesideTheExportsIsFineWhateverItIsCalled() {
    var out = folder.resolve("shop/exports-out");

    assertEquals(0, gambrel("run", path, AS_OF, "--out", out.toString()).code());

    assertTrue(Files.exists(out.resolve("morning.pdf")));
    assertFalse(Files.exists(shop.reports()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"unit=lb", "currency=NZD"})
  void aChangedUnitOrCurrencyOverARegisterExitsWith2(String setting) {
    gambrel("run", path, AS_OF);
    var before = Trees.published(shop.reports());
    shop.replace("shop.properties", setting.startsWith("u") ? "unit=kg" : "currency=AUD", setting);
    shop.write();

    assertEquals(2, gambrel("run", path, AS_OF).code());
    assertEquals(2, gambrel("check", path, AS_OF).code());

    assertEquals(before, Trees.published(shop.reports()));
  }

  @Test
  void anotherRunInTheFolderExitsWith3() throws Exception {
    try (var held = OutputFolder.open(shop.reports(), Disk.SYSTEM)) {
      var result = gambrel("run", path, AS_OF);

      assertEquals(3, result.code());
      assertEquals("gambrel: another run holds this output folder.", result.err().strip());
      assertEquals(List.of(), held.changes().list("data"));
    }
  }

  @Test
  void aFailureHalfWayExitsWith4AndNoStackTrace() throws Exception {
    Files.createDirectories(shop.reports().resolve("data/statements.csv/in-the-way"));

    var result = gambrel("run", path, AS_OF);

    assertEquals(4, result.code());
    assertTrue(result.err().startsWith("gambrel: failed, and the last published state stands"));
    assertEquals(1, result.err().lines().count(), result.err());
  }

  @Test
  void aFaultOfTheProgramExitsWith4AndNoStackTrace() {
    var result =
        gambrel(
            (folder, settings) -> {
              throw new IllegalStateException("no fonts");
            },
            "run",
            path);

    assertEquals(4, result.code());
    assertEquals(1, result.err().lines().count(), result.err());
  }

  @Test
  void checkExitsAsRunWouldAndPrintsTheNoticesAndWritesNothing() {
    shop.weigh("bench", "05T11:00:00", "B1", "nothing", "1").write();

    var result = gambrel("check", path, AS_OF);

    assertEquals(1, result.code());
    assertTrue(
        result.out().endsWith("\nThen check again. (Until then: held (1), code-unknown (1).)\n"),
        result.out());
    assertFalse(Files.exists(shop.reports()));
    assertEquals(result.code(), gambrel("run", path, AS_OF).code());
  }

  @Test
  void checkPrintsNoticesOfOneKindTogetherWithEachLineToPaste() {
    for (int i = 1; i < 8; i++) {
      shop.weigh("bench", "05T11:00:0" + i, "B1", "zz" + (i % 3), "1");
    }
    shop.write();

    var lines = gambrel("check", path, AS_OF).out().lines().toList();

    assertEquals(
        "Then check again. (Until then: held (1), code-unknown (7).)", lines.get(lines.size() - 1));
    for (int i = 0; i < 3; i++) {
      String row = "    zz" + i + ",ITEM,STEP,";
      assertEquals(1, lines.stream().filter(row::equals).count(), lines::toString);
    }
  }

  @Test
  void rowsWithoutABodyComeWithTheirRowsForCorrections() {
    shop.weigh("bench", "05T11:00:00", "", "rump", "1")
        .weigh("bench", "05T11:01:00", "", "rump", "2");
    shop.write();

    var lines = gambrel("check", path, AS_OF).out().lines().toList();

    assertEquals(1, lines.stream().filter(line -> line.startsWith("hold owner-missing ")).count());
    assertEquals(1, lines.stream().filter(line -> line.startsWith("  also exports/")).count());
    assertEquals(
        2,
        lines.stream()
            .filter(line -> line.matches("    bench,[^,]+,,body,BODY,BY,ON,not keyed"))
            .count(),
        lines::toString);
  }

  @Test
  void aSideThatWasWeighedOnceTooOftenComesWithTheRowThatVoidsIt() {
    shop.weigh("rail", "01T10:00:00", "B1", "cold", "149");
    shop.write();

    var out = gambrel("check", path, AS_OF).out();

    assertTrue(
        out.lines()
            .anyMatch(line -> line.matches("    rail,[^,]+,,status,void,BY,ON,weighed twice")),
        out);
  }

  @Test
  void checkNamesEveryBodyOfNoticesThatAreAlike() {
    shop.beef("B2", "ann").replace("codes.csv", "rump,rump,", "rump,t-bone,");
    shop.replace("shop.properties", "region=au", "region=uk").write();

    var said = gambrel("check", path, AS_OF).out();

    assertTrue(said.contains("mark vertebra-packed body B1, B2\n"), said);
  }

  @Test
  void checkLeavesAnOutputFolderUntouchedToTheLastFile() {
    gambrel("run", path, AS_OF);
    Trees.age(shop.reports());
    var files = Trees.files(shop.reports());
    var times = Trees.times(shop.reports());
    shop.weigh("bench", "05T11:00:00", "B1", "nothing", "1").write();

    assertEquals(1, gambrel("check", path, AS_OF).code());

    assertEquals(files, Trees.files(shop.reports()));
    assertEquals(times, Trees.times(shop.reports()));
  }

  @Test
  void checkWritesAPreviewWhereItIsAskedFor() {
    var preview = folder.resolve("preview.pdf");

    assertEquals(0, gambrel("check", path, AS_OF, "--preview", preview.toString()).code());

    assertTrue(Trees.text(preview).startsWith("%PDF"));
    assertFalse(Files.exists(shop.reports()));
  }

  @Test
  void thePreviewIsOfTheBodyThatIsNamed() {
    shop.beef("B2", "ann").write();
    for (var body : List.of("B1", "B2")) {
      var preview = folder.resolve(body + ".pdf");

      gambrel("check", path, AS_OF, "--preview", preview.toString(), "--body", body);

      assertTrue(Trees.text(preview).contains("statement ann " + body), Trees.text(preview));
    }
  }

  @Test
  void thereIsNoPreviewOfABodyThatIsNotThere() {
    var preview = folder.resolve("preview.pdf");

    var result = gambrel("check", path, AS_OF, "--preview", preview.toString(), "--body", "B9");

    assertEquals(2, result.code());
    assertEquals(
        "gambrel: no body B9 of a customer has been cut yet, so there is no preview.",
        result.err().strip());
    assertFalse(Files.exists(preview));
  }

  @Test
  void explainPrintsOnStdoutAndWritesNothing() {
    var result = gambrel("explain", path, "B1", AS_OF);

    assertEquals(0, result.code());
    assertEquals("", result.err());
    assertTrue(result.out().startsWith("Body B1 (beef), issued"), result.out());
    assertFalse(Files.exists(shop.reports()));
  }

  @Test
  void explainNamesTheRowsThatHoldWhatWouldGoOut() throws IOException {
    var charges = "charge,description,basis,price\nkill,Kill,head,9O\n";
    Files.writeString(Path.of(path, "charges.csv"), charges);
    var result = gambrel("explain", path, "B1", AS_OF).out();

    assertTrue(result.startsWith("Body B1 (beef), held"), result);
    assertTrue(result.contains("waits: row-unread charges.csv:2: price \"9O\""), result);
  }

  @Test
  void explainOfAnUnknownBodySaysSo() {
    var result = gambrel("explain", path, "B9", AS_OF);

    assertEquals("gambrel: bodies.csv has no body B9.", result.err().strip());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "run --help", "check --help", "explain --help", "--version"})
  void helpAndVersionGoToStdout(String line) {
    var result = gambrel(line.split(" "));

    assertEquals(0, result.code());
    assertFalse(result.out().isBlank());
    assertEquals("", result.err());
  }

  @Test
  void helpNamesEveryCommandAndExitCode() {
    var help = gambrel("--help").out();

    for (var word : List.of("run", "check", "explain", "cuts", "start", "generate-completion")) {
      assertTrue(help.contains("  " + word + " "), help);
    }
    for (int code = 0; code <= 4; code++) {
      assertTrue(help.contains("  " + code + "  "), help);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "gambrel ex, explain",
    "gambrel check SHOP --p, --preview",
    "gambrel start --reg, --region",
    "gambrel run che, ''"
  })
  void theShellCompletesCommandsAndTheOptionsOfEach(String typed, String completed)
      throws Exception {
    var words = typed.split(" ");
    var script =
        "%sCOMP_WORDS=(%s); COMP_CWORD=%d; _gambrel; echo \"${COMPREPLY[@]}\""
            .formatted(gambrel("generate-completion").out(), typed, words.length - 1);

    var shell = new ProcessBuilder("bash", "-c", script).start();

    assertEquals(completed, new String(shell.getInputStream().readAllBytes(), UTF_8).strip());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1900-01-01T00:00+14:00", "2999-12-31T23:59-12:00"})
  void anyMomentOfACenturyNearIsMet(String moment) {
    var result = gambrel("run", path, "--as-of", moment);

    assertTrue(result.code() <= 1, result::toString);
  }

  @Test
  void theMomentIsTheShopsUnlessItCarriesAnOffset() {
    gambrel("run", path, "--as-of=2026-03-05T15:00Z");

    var register = Trees.lines(shop.reports().resolve("data/statements.csv"));
    assertTrue(register.get(1).contains(",2026-03-06T02:00:00,"), register.get(1));
  }
}
