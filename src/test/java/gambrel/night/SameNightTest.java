package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.publish.Disk;
import gambrel.files.publish.FailingDisk;
import gambrel.files.publish.OutputFolder;
import gambrel.trade.reckoning.Progress;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same shop folder at the same moment gives the same output, whatever was there before. */
class SameNightTest {
  private static final String LATER = "2026-03-07T02:00";

  @TempDir private Path folder;
  private NightShop shop;

  @BeforeEach
  void openShop() {
    shop = new NightShop(folder.resolve("shop"));
    shop.beef("B1", "ann").beef("B2", "bob").body("B3", "ann").packs("B3", "90");
    shop.add("releases.csv", "body,by,on,reason,action");
  }

  @Test
  void theFirstNightPublishesEverythingThatTheContractNames() {
    shop.run(NightShop.NIGHT);

    assertEquals(
        List.of(
            "data/accounts.csv",
            "data/batches.csv",
            "data/bodies.csv",
            "data/causes.csv",
            "data/charges.csv",
            "data/cuts.csv",
            "data/findings.csv",
            "data/month-charts.csv",
            "data/month-figures.csv",
            "data/notices.csv",
            "data/pieces.csv",
            "data/rail.csv",
            "data/rows.csv",
            "data/shrink.csv",
            "data/statements.csv",
            "morning.pdf",
            "statements/ann/B1-r1.pdf",
            "statements/bob/B2-r1.pdf",
            "summaries/2026-03.pdf",
            "to-print.pdf"),
        List.copyOf(Trees.published(shop.reports()).keySet()));
  }

  @Test
  void aRerunTouchesNoFile() {
    shop.run(NightShop.NIGHT);
    var first = Trees.published(shop.reports());
    Trees.age(shop.reports());
    var times = Trees.times(shop.reports());

    shop.run(NightShop.NIGHT);

    assertEquals(first, Trees.published(shop.reports()));
    assertEquals(times, Trees.times(shop.reports()));
  }

  @Test
  void aSecondRunWithTheSameInputsPublishesTheSame() throws Exception {
    shop.weigh("bench", "05T11:00:00", "B1", "nothing", "1");
    var run = new NightlyRun(Inputs.read(shop.write(), Progress.NONE), new TinyDocuments());
    var moment = NightShop.moment(NightShop.NIGHT);
    var first = folder.resolve("first");
    var second = folder.resolve("second");

    assertEquals(1, run.run(first, moment, List.of()).exitCode());
    assertEquals(1, run.run(second, moment, List.of()).exitCode());

    assertEquals(Trees.published(first), Trees.published(second));
  }

  @Test
  void aLaterNightWithNothingNewTouchesOnlyTheMorningSheetAndWhatIsSaidOfTheRegister() {
    shop.run(NightShop.NIGHT);
    var first = Trees.published(shop.reports());

    shop.run("2026-03-06T03:00");

    var changed = new TreeMap<>(Trees.published(shop.reports()));
    changed.entrySet().removeAll(first.entrySet());
    assertEquals(List.of("data/notices.csv", "morning.pdf"), List.copyOf(changed.keySet()));
  }

  @Test
  void twoFoldersRunFromTheSameShopAreAlike() {
    shop.run(folder.resolve("one"), NightShop.NIGHT);
    shop.run(folder.resolve("two/deeper"), NightShop.NIGHT);

    assertEquals(
        Trees.published(folder.resolve("one")), Trees.published(folder.resolve("two/deeper")));
  }

  /**
   * The run fails at each operation in turn; the last state is unchanged or a rerun completes it.
   */
  @Test
  void aRunAfterACrashEndsAsAnUndisturbedOne() throws Exception {
    shop.run(folder.resolve("whole"), NightShop.NIGHT);
    var yesterday = Trees.published(folder.resolve("whole"));
    shop.add("releases.csv", "B1,Hetty,2026-03-06T09:00,price,reissue").packs("B3", "30");
    shop.run(folder.resolve("whole"), LATER);
    var today = Trees.published(folder.resolve("whole"));
    var written = shop.write();

    var disk = new FailingDisk(0);
    int crashes = 0;
    while (!disk.isWhole() || crashes == 0) {
      var out = folder.resolve("crash" + crashes);
      copy(yesterday, out);
      disk = new FailingDisk(crashes);
      var outcome =
          night(Inputs.read(written, Progress.NONE), disk)
              .run(out, NightShop.moment(LATER), List.of());
      if (disk.isWhole()) {
        break;
      }
      assertEquals(4, outcome.exitCode(), outcome::toString);
      if (!Files.exists(out.resolve(".journal")) && !isTodays(out, today)) {
        assertEquals(yesterday, visible(out), "after " + crashes + " operations");
      }
      night(Inputs.read(written, Progress.NONE), Disk.SYSTEM)
          .run(out, NightShop.moment(LATER), List.of());
      assertEquals(today, Trees.published(out), "after " + crashes + " operations");
      crashes++;
    }
    assertTrue(crashes > 20, crashes + " crashes tried");
  }

  private static NightlyRun night(Inputs inputs, Disk disk) {
    return new NightlyRun(inputs, new TinyDocuments(), disk, Progress.NONE);
  }

  private static boolean isTodays(Path out, Map<String, String> today) {
    return visible(out).equals(today);
  }

  private static Map<String, String> visible(Path out) {
    var tree = new TreeMap<>(Trees.published(out));
    tree.keySet().removeIf(path -> path.startsWith("."));
    return tree;
  }

  private static void copy(Map<String, String> tree, Path out) throws Exception {
    for (var file : tree.entrySet()) {
      var path = out.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue().getBytes(StandardCharsets.ISO_8859_1));
    }
  }

  @Test
  void aDiskFullFromTheStartLeavesNothingPublished() throws Exception {
    var inputs = Inputs.read(shop.write(), Progress.NONE);
    var out = folder.resolve("full");

    var outcome =
        night(inputs, new FailingDisk(3)).run(out, NightShop.moment(NightShop.NIGHT), List.of());

    assertEquals(4, outcome.exitCode(), outcome::toString);
    assertEquals(Map.of(), visible(out));
  }

  @Test
  void aRunThatFindsTheFolderHeldChangesNothing() throws Exception {
    shop.run(NightShop.NIGHT);
    var before = Trees.published(shop.reports());
    shop.packs("B3", "30");

    try (var held = OutputFolder.open(shop.reports(), Disk.SYSTEM)) {
      assertEquals(List.of(), held.changes().list("held"));
      assertEquals(3, shop.run(LATER).exitCode());
    }

    assertEquals(before, Trees.published(shop.reports()));
  }

  @Test
  void aCheckFindsWhatARunWouldAndWritesNothing() {
    shop.write();

    var outcome = shop.night().check(shop.reports(), NightShop.moment(NightShop.NIGHT));

    assertFalse(Files.exists(shop.reports()));
    var run = shop.run(NightShop.NIGHT);
    assertEquals(run.exitCode(), outcome.exitCode());
    assertEquals(NightShop.report(run).notices(), NightShop.report(outcome).notices());
  }

  @Test
  void noOutputTellsWhereWhenOrByWhomItWasMade() throws Exception {
    shop.add("exports/a.csv", "bench,77,2026-03-05T11:00:00,B9,rump,1,,,,");
    shop.run(NightShop.NIGHT);
    var host = InetAddress.getLocalHost().getHostName();
    var user = System.getProperty("user.name");

    Trees.published(shop.reports())
        .forEach(
            (file, text) -> {
              assertFalse(text.contains(folder.toString()), file);
              assertFalse(text.contains(host + " ") || text.contains(host + ","), file);
              assertFalse(text.contains("/" + user + "/"), file);
              assertFalse(text.contains(LocalDate.now(ZoneId.systemDefault()).toString()), file);
              boolean tellsOfExports =
                  List.of("data/notices.csv", "data/rows.csv", "morning.pdf").contains(file);
              assertTrue(tellsOfExports || !text.contains("exports/"), file);
            });
  }
}
