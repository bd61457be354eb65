package gambrel.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.folder.NewShop;
import gambrel.night.Trees;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** With {@code --save} a check saves what it else prints to be saved, and nothing more. */
class CheckSaveTest {
  private static final String HEADER = "Nr;Datum;Uhr;Tier;Art;Text;Netto;Stat\n";

  @TempDir private Path shop;

  private String said;

  @BeforeEach
  void start() throws IOException {
    NewShop.write(shop, ZoneId.of("Europe/Berlin"), Optional.empty());
    add("bodies.csv", "L1,lamb,2026-07-28\n");
    Files.createDirectories(shop.resolve("exports/hall"));
  }

  private int check(String... options) {
    var text = new StringWriter();
    var out = new PrintWriter(text);
    int code =
        Main.run(
            out,
            out,
            Stream.concat(
                    Stream.of("check", shop.toString(), "--as-of", "2026-08-05T02:00"),
                    Stream.of(options))
                .toArray(String[]::new));
    said = text.toString();
    return code;
  }

  private void add(String file, String rows) throws IOException {
    Files.writeString(
        shop.resolve(file), rows, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
  }

  /** Eight weighings of a lamb in steps of 0.02 kg; the words of two codes are those of items. */
  private static String rows(String status) {
    return HEADER
        + List.of(
                "1;28.07.2026;09:00:10;L1;1;hot;20,46;ok",
                "2;29.07.2026;09:00:10;L1;2;cold;20,08;ok",
                "3;30.07.2026;09:00:10;L1;3;leg;2,62;ok",
                "4;30.07.2026;09:01:10;L1;3;leg;2,66;" + status,
                "5;30.07.2026;09:02:10;L1;4;whatnot;3,14;ok",
                "6;30.07.2026;09:03:10;L1;5;bone;3,34;ok",
                "7;30.07.2026;09:04:10;L1;6;fat;1,02;ok",
                "8;30.07.2026;09:05:10;L1;4;whatnot;6,68;ok")
            .stream()
            .map(row -> row + '\n')
            .collect(Collectors.joining());
  }

  private String file(String name) throws IOException {
    return Files.readString(shop.resolve(name));
  }

  /** The lines that are printed below a line that ends so, without their blanks. */
  private List<String> below(String end) {
    return said.lines()
        .dropWhile(line -> !line.endsWith(end))
        .skip(1)
        .takeWhile(line -> line.startsWith("  "))
        .map(String::strip)
        .toList();
  }

  @Test
  void withoutTheOptionNothingIsWritten() throws IOException {
    add("exports/hall/a.txt", rows("ok"));
    var before = Trees.files(shop);

    check();

    assertEquals(before, Trees.files(shop));
  }

  @Test
  void theLayoutThatIsSavedIsTheOneThatIsElsePrinted() throws IOException {
    add("exports/hall/a.txt", rows("Q"));
    check();
    var printed = below("save as layouts/hall.properties:");
    assertFalse(printed.isEmpty(), said);

    check("--save");

    assertEquals(printed, file("layouts/hall.properties").lines().toList());
    assertTrue(said.contains("Saved in layouts/hall.properties.\n"), said);
    assertTrue(said.contains("What does \"Q\" in \"Stat\" mean"), said);
  }

  @Test
  void onlyRowsOfCodesWithTheWordsOfAnItemAreSaved() throws IOException {
    add("exports/hall/a.txt", rows("ok"));

    check("--save");

    assertEquals(
        List.of(
            "1,carcase,hot,hot",
            "2,carcase,cold,cold",
            "3,leg,pack,leg",
            "5,bone,bin,bone",
            "6,fat,bin,fat"),
        below("Saved in codes.csv; look at each row:"));
    assertTrue(file("codes.csv").contains("\n6,fat,bin,fat\n"));
  }

  /** Of code 4 no item is known, and code 7 is of a carcase on the day of its kill. */
  @Test
  void rowsOfOtherCodesAreSavedWithABlankForWhatDecides() throws IOException {
    add("exports/hall/a.txt", rows("ok") + "9;28.07.2026;09:06:10;L1;7;7;19,90;ok\n");

    check("--save");

    assertTrue(
        file("codes.csv")
            .matches("(?s).*\n# Behind the part [^\n]*\n4,,pack,whatnot\n7,carcase,,7\n"),
        file("codes.csv"));
    assertTrue(said.contains("Saved in codes.csv; rows at its end to be finished: 2."), said);
    assertFalse(said.contains("codes.csv lacks"), said);
    assertTrue(said.contains("codes.csv has rows to be finished: 2, from line "), said);
  }

  /** The eight weights are multiples of 0.02 kg, and not all of 0.05 kg. */
  @Test
  void anEmptyScalesFileGetsTheScaleWithTheStepOfItsWeights() throws IOException {
    add("exports/hall/a.txt", rows("ok"));

    check("--save");

    assertTrue(file("scales.csv").endsWith("\nhall,kg,0.02\n"), said);
  }

  @Test
  void aStepMayBeABinaryFraction() throws IOException {
    String eighths =
        rows("ok")
            .replaceAll("20,46|20,08", "325,125")
            .replaceAll("2,6[26]|3,14", "2,875")
            .replaceAll("3,34|1,02|6,68", "1,250")
            .replaceFirst("325,125", "340,500")
            .replaceFirst("2,875", "2,750")
            .replaceFirst("1,250", "4,500")
            .replaceFirst("1,250", "4,375")
            .replaceFirst("2,875", "2,125");
    add("exports/hall/a.txt", eighths);

    check("--save");

    assertTrue(file("scales.csv").endsWith("\nhall,kg,0.125\n"), said);
  }

  @Test
  void ofFewWeightsNoStepIsSaid() throws IOException {
    add("exports/hall/a.txt", rows("ok").replaceFirst("8;30[^\\n]*\\n", ""));

    check("--save");

    assertFalse(said.contains("Saved in scales.csv"), said);
    assertTrue(said.contains("    hall,kg,DIVISION\n"), said);
  }

  /** Which scale a row is of is not known, though nothing says that the column is of scales. */
  @Test
  void whereAColumnMayNameTheScalesNoneIsSaved() throws IOException {
    String text = rows("ok").replace("Stat", "Platz").strip();
    String places = text.replaceAll("(?m)^([1-4];.*);ok$", "$1;Schiene").replace(";ok", ";Tisch");
    add("exports/hall/a.txt", places + '\n');

    check("--save");

    assertTrue(said.contains("Does \"Platz\" (Schiene; Tisch) name the scales,"), said);
    assertFalse(said.contains("scales.csv"), said);

    add("layouts/hall.properties", "column.scale=Platz\n");
    check();

    assertTrue(said.contains("    Schiene,kg,DIVISION\n    Tisch,kg,DIVISION\n"), said);
  }

  /** Whether 328 is in pounds or grams is asked before a step in either is known. */
  @Test
  void noStepIsSavedOfWeightsWhoseUnitIsAsked() throws IOException {
    StringBuilder book = new StringBuilder("time,body,code,net\n");
    for (int i = 0; i < 9; i++) {
      book.append("2026-07-28 11:0%d,L1,9,%d\n".formatted(i, 328 + i));
    }
    add("exports/hall/book.csv", book.toString());

    check("--save");
    check("--save");

    assertTrue(said.contains("Are the whole numbers of"), said);
    assertFalse(file("scales.csv").contains("\nhall"), said);
  }

  /** The row is among the first, which are shown. */
  @Test
  void aBrokenRowThatACorrectionRemovesIsShownAsWell() throws IOException {
    add("exports/hall/a.txt", rows("ok").replace("L1;3;leg;2,62;ok", "L1;3"));
    add("scales.csv", "hall,kg,0.02\n");
    check("--save");
    add(
        "corrections.csv",
        "hall,exports/hall/a.txt:4,,status,void,Kit,2026-08-01T08:00,the row is broken\n");

    assertTrue(check() < 2, said);
  }

  @Test
  void aCodeWithoutABodyIsOfferedAsATestWeight() throws IOException {
    add(
        "exports/hall/a.txt",
        rows("ok")
            + "9;30.07.2026;09:06:10;;9;Check wt;20,00;ok\n"
            + "10;30.07.2026;09:06:40;;10;Bar;3,00;ok\n");

    check();

    assertTrue(said.contains("    10,,test,Bar,NOMINAL\n"), said);
    assertTrue(said.contains("    9,,test,Check wt,20\n"), said);
  }

  @Test
  void rowsForATableInAnotherFormArePrintedStill() throws IOException {
    Files.writeString(shop.resolve("codes.csv"), "code;item;step\n");
    add("exports/hall/a.txt", rows("ok"));

    check("--save");

    assertEquals("code;item;step\n", file("codes.csv"));
    assertTrue(said.contains("    3,leg,pack,leg\n"), said);
  }

  @Test
  void onceSavedNothingIsSavedAgain() throws IOException {
    add("exports/hall/a.txt", rows("ok"));
    check("--save");
    var files = Trees.files(shop);

    check("--save");

    assertFalse(said.contains("Saved in"), said);
    assertEquals(files, Trees.files(shop));
  }

  /** The steps of the first scale say nothing of the second one. */
  @Test
  void gramsAreOfferedThoughTheShopHasAScaleInKilograms() throws IOException {
    add("scales.csv", "rail,kg,0.2\n");
    Files.createDirectories(shop.resolve("exports/rail"));
    add("exports/rail/r.csv", "time,body,code,net\n2026-07-28 09:00,L1,hot,20.4\n");
    add(
        "exports/hall/a.txt",
        """
        No;When;Body;Code;Net;X
        1;28.07.2026 09:05;L1;21;2640;620
        2;28.07.2026 09:15;L1;22;2660;620
        3;28.07.2026 09:26;L1;23;3320;1480
        4;28.07.2026 09:39;L1;21;1620;0
        """);

    check();

    assertTrue(said.contains("    unit=g\n"), said);
    assertFalse(said.contains("name the scales"), said);
  }

  @Test
  void aCutOfTheShopsOwnComesWithItsRowForCuts() throws IOException {
    add("exports/hall/a.txt", rows("ok"));
    check("--save");
    String codes = file("codes.csv");
    Files.writeString(shop.resolve("codes.csv"), codes.replace("\n3,leg,", "\n3,Gran's roll,"));

    check();
    String row = "lamb,gran-s-roll,carcase,Gran's roll,meat";
    assertTrue(said.contains("    " + row + '\n'), said);

    add("cuts.csv", row + '\n');
    check();
    assertFalse(said.contains("Gran's roll"), said);
  }

  @Test
  void asLongAsItAsksOneReasonOfHeldBodiesIsGiven() throws IOException {
    add("bodies.csv", "L2,lamb,2026-07-28\n");
    add("exports/hall/a.txt", rows("ok"));
    add("exports/hall/b.txt", rows("ok").replace(";L1;", ";L2;").replaceAll("(?m)^(\\d)", "1$1"));

    check("--save");

    assertTrue(said.contains("(Until then: held (2), "), said);
    assertFalse(said.contains("hold held"), said);
  }
}
