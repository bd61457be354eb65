package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.NoticeCode;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop folder and the output folder are restored from a copy. */
class RestoredFolderTest {
  private static final String NEXT = "2026-03-07T02:00";

  @TempDir private Path folder;
  private NightShop shop;
  private Path out;

  @BeforeEach
  void issueAndRevise() {
    shop = new NightShop(folder.resolve("shop")).beef("B1", "ann").beef("B2", "bob");
    out = folder.resolve("out");
    shop.run(out, NightShop.NIGHT);
    shop.replace("exports/a.csv", "B1,rump,120", "B1,rump,119.9");
    shop.run(out, NEXT);
  }

  private static Path copy(Path from, Path to) throws IOException {
    for (var file : Trees.files(from)) {
      Files.createDirectories(to.resolve(file).getParent());
      Files.copy(from.resolve(file), to.resolve(file));
    }
    return to;
  }

  private static NightOutcome run(Path shop, Path out, String asOf) throws Exception {
    return new NightlyRun(Inputs.read(shop, Progress.NONE), new TinyDocuments())
        .run(out, NightShop.moment(asOf), List.of());
  }

  @Test
  void aRerunOverTheCopyChangesNoFile() throws Exception {
    var shopCopy = copy(folder.resolve("shop"), folder.resolve("copy/shop"));
    var outCopy = copy(out, folder.resolve("copy/out"));
    var before = Trees.published(outCopy);
    Trees.age(outCopy);
    var times = Trees.times(outCopy);

    assertEquals(0, run(shopCopy, outCopy, NEXT).exitCode());

    assertEquals(before, Trees.published(outCopy));
    assertEquals(times, Trees.times(outCopy));
    assertEquals(Trees.published(out), Trees.published(outCopy));
  }

  @Test
  void aCopyOfTheNightBeforeIssuesAgainWhatCameAfterIt() throws Exception {
    var old = new NightShop(folder.resolve("shop")).beef("B1", "ann").beef("B2", "bob");
    var outCopy = folder.resolve("copy/out");
    old.run(outCopy, NightShop.NIGHT);

    assertEquals(0, run(shopAsNow(), outCopy, NEXT).exitCode());

    assertEquals(
        Trees.published(out.resolve("statements")), Trees.published(outCopy.resolve("statements")));
  }

  private Path shopAsNow() {
    return shop.write();
  }

  @Test
  void dataWithoutItsDocumentsIsToldAndNotPaperedOver() throws Exception {
    var outCopy = copy(out.resolve("data"), folder.resolve("copy/out/data")).getParent();

    var outcome = run(folder.resolve("shop"), outCopy, NEXT);

    var codes = NightShop.report(outcome).notices().stream().map(notice -> notice.code()).toList();
    long lost = codes.stream().filter(NoticeCode.DOCUMENT_LOST::equals).count();
    assertEquals(3, lost, codes::toString);
    assertTrue(Trees.files(outCopy).stream().noneMatch(file -> file.startsWith("statements/")));
    copy(out.resolve("statements"), outCopy.resolve("statements"));
    assertEquals(0, run(folder.resolve("shop"), outCopy, NEXT).exitCode());
    assertEquals(Trees.published(out), Trees.published(outCopy));
  }
}
