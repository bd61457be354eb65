package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.folder.NewShop;
import gambrel.night.TinyDocuments;
import gambrel.night.Trees;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The folder of a new shop, and the list of items for its codes. */
class StartTest {
  @TempDir private Path top;

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

  @ParameterizedTest
  @ValueSource(strings = {"Australia/Perth", "Europe/London", "America/Denver", "Etc/UTC"})
  void checkAcceptsANewShopWhereverItIs(String zone) throws Exception {
    NewShop.write(top.resolve("shop"), ZoneId.of(zone), Optional.empty());

    var result = gambrel("check", top.resolve("shop").toString(), "--as-of=2026-07-31T02:00");

    assertEquals(0, result.code(), result::toString);
    assertTrue(
        result.out().lines().filter(line -> !line.startsWith(" ")).allMatch(StartTest::isNew),
        result.out());
  }

  private static boolean isNew(String line) {
    return line.isBlank();
  }

  @Test
  void everyRowThatIsOfferedIsReadOnceItsCommentSignIsTakenAway() throws Exception {
    var shop = top.resolve("shop");
    NewShop.write(shop, ZoneId.of("Europe/London"), Optional.empty());
    for (String name :
        List.of("codes", "cuts", "customers", "scales", "bodies", "shares", "charges")) {
      var file = shop.resolve(name + ".csv");
      var lines = Files.readAllLines(file);
      Files.writeString(
          file,
          lines.stream()
              .map(line -> line.matches("# [\\w-]+,[^ ].*") ? line.substring(2) : line)
              .collect(Collectors.joining("\n", "", "\n")));
    }

    var result = gambrel("check", shop.toString(), "--as-of=2026-07-31T02:00");

    // Of two owners only the first is there.
    assertEquals(
        List.of("mark reference-unknown shares.csv:4 body B101"),
        result.out().lines().filter(line -> line.matches("\\w.*")).toList(),
        result::toString);
    assertTrue(gambrel("cuts", shop.toString()).out().startsWith("beef "));
  }

  @Test
  void namesAreThoseOfTheRegion() throws Exception {
    NewShop.write(top, ZoneId.of("America/Denver"), Optional.empty());

    assertTrue(
        Trees.lines(top.resolve("codes.csv"))
            .contains("# TOPSIDE-ROAST,topside-roast,pack,Top round roast"),
        () -> Trees.text(top.resolve("codes.csv")));
    assertTrue(Trees.lines(top.resolve("shop.properties")).contains("unit=lb"));
  }

  @ParameterizedTest
  @CsvSource({"au, schnitzel, gammon", "uk, gammon, schnitzel", "us, butt-steak, gammon"})
  void theCutsOfferedAreThoseUsualInTheRegion(String region, String usual, String strange) {
    var result = gambrel("start", top.toString(), "--region", region);

    assertEquals(0, result.code(), result::toString);
    var codes = Trees.text(top.resolve("codes.csv"));
    assertTrue(codes.contains(',' + usual + ','), codes);
    assertFalse(codes.contains(',' + strange + ','), codes);
    assertTrue(Trees.lines(top.resolve("shop.properties")).contains("region=" + region));
  }

  @Test
  void theStepsNameEveryTableThatAFirstStatementNeeds() {
    var said = gambrel("start", top.toString()).out();

    for (String file :
        List.of("shop.properties", "customers", "bodies", "charges", "exports/NAME/")) {
      assertTrue(said.contains(file), said);
    }
  }

  @Test
  void aFolderWithSomethingInItIsLeftAlone() throws Exception {
    Files.writeString(top.resolve("mine.txt"), "mine");

    assertEquals(2, gambrel("start", top.toString()).code());
    assertEquals(2, gambrel("start", top.resolve("mine.txt").toString()).code());
    assertEquals(0, gambrel("start", top.resolve("new/shop").toString()).code());
  }

  @ParameterizedTest
  @CsvSource({
    "rumpp, Did you mean rump",
    "tenderlion, Did you mean tenderloin",
    "standing rib, Did you mean op-rib",
    "unicorn, The command cuts prints every item;"
  })
  void anItemThatIsNoneIsAnsweredWithTheNearest(String item, String advice) throws Exception {
    NewShop.write(top, ZoneId.of("Australia/Sydney"), Optional.empty());
    Files.writeString(top.resolve("codes.csv"), "code,item,step\n7," + item + ",pack\n");

    var result = gambrel("check", top.toString(), "--as-of=2026-07-31T02:00");

    assertTrue(result.out().contains("  " + advice), result.out());
  }

  @Test
  void cutsPrintsTheTreeOfASpecies() throws Exception {
    NewShop.write(top, ZoneId.of("Europe/London"), Optional.empty());

    var lines = gambrel("cuts", top.toString(), "LAMB").out().lines().toList();

    assertTrue(lines.get(1).matches("  carcase +Carcase +carcase"), lines.get(1));
    assertTrue(lines.get(2).matches("    side +Side +carcase +2"), lines.get(2));
    assertEquals(2, gambrel("cuts", top.toString(), "unicorn").code());
    assertEquals(2, gambrel("cuts", top.resolve("nowhere").toString()).code());
  }

  @Test
  void aTableThatIsNotUtf8IsToldHowToSaveIt() throws Exception {
    NewShop.write(top, ZoneId.of("Australia/Sydney"), Optional.empty());
    Files.write(
        top.resolve("customers.csv"),
        "customer,name\nann,Jürgen\n".getBytes(StandardCharsets.ISO_8859_1));

    var result = gambrel("check", top.toString(), "--as-of=2026-07-31T02:00");

    assertTrue(result.out().contains("save the file as UTF-8"), result.out());
  }
}
