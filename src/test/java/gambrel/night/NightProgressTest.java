package gambrel.night;

import static gambrel.trade.reckoning.Progress.Stage.BODIES;
import static gambrel.trade.reckoning.Progress.Stage.MONTHS;
import static gambrel.trade.reckoning.Progress.Stage.PUBLISHING;
import static gambrel.trade.reckoning.Progress.Stage.READING;
import static gambrel.trade.reckoning.Progress.Stage.RELEASES;
import static gambrel.trade.reckoning.Progress.Stage.ROWS;
import static gambrel.trade.reckoning.Progress.Stage.STATEMENTS;
import static gambrel.trade.reckoning.Progress.Stage.TABLES;
import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.files.publish.Disk;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A night reports its stages in order, and everything done in each. */
class NightProgressTest {
  @TempDir private Path folder;
  private NightShop shop;
  private final Notes notes = new Notes();

  /** Records what is reported. */
  private static final class Notes implements Progress {
    private final List<Stage> stages = new ArrayList<>();
    private final Map<Stage, Long> totals = new EnumMap<>(Stage.class);
    private final Map<Stage, AtomicLong> done = new EnumMap<>(Stage.class);

    @Override
    public LongConsumer begin(Stage stage, long total) {
      stages.add(stage);
      totals.put(stage, total);
      var parts = new AtomicLong();
      done.put(stage, parts);
      return parts::addAndGet;
    }

    private Map<Stage, Long> done() {
      var all = new EnumMap<Stage, Long>(Stage.class);
      done.forEach((stage, parts) -> all.put(stage, parts.get()));
      return all;
    }
  }

  /** Two bodies are cut, one of which is held; one hangs. */
  @BeforeEach
  void openShop() {
    shop = new NightShop(folder.resolve("shop"));
    shop.beef("B1", "ann").beef("B2", "bob").body("B3", "ann");
    shop.weigh("bench", "05T11:00:00", "B2", "nothing", "1");
    shop.add("exports/deep/b.csv", "scale,ticket,time,body,code,net");
    shop.add("exports/deep/b.csv", "bench,900,2026-03-05T11:30:00,B1,rump,0.5");
  }

  private NightlyRun night() throws RefusedException {
    return new NightlyRun(
        Inputs.read(shop.write(), notes), new TinyDocuments(), Disk.SYSTEM, notes);
  }

  private void run() throws RefusedException {
    NightShop.report(night().run(shop.reports(), NightShop.moment(NightShop.NIGHT), List.of()));
  }

  @Test
  void theStagesComeInTheirOrder() throws Exception {
    run();

    assertEquals(
        List.of(READING, ROWS, BODIES, STATEMENTS, MONTHS, TABLES, PUBLISHING), notes.stages);
  }

  @Test
  void allThatIsToBeDoneIsToldAsDone() throws Exception {
    run();

    assertEquals(notes.totals, notes.done());
  }

  @Test
  void eachStageIsCountedInItsUnit() throws Exception {
    run();

    long bytes =
        Files.size(folder.resolve("shop/exports/a.csv"))
            + Files.size(folder.resolve("shop/exports/deep/b.csv"));
    long headers = 2;
    long rows =
        shop.lines("exports/a.csv").size() + shop.lines("exports/deep/b.csv").size() - headers;
    // A statement, a draft, a month, the morning sheet, the file to print, the list of pages, the
    // register's digest and the data files.
    long published = 1 + 1 + 1 + 1 + 1 + 1 + 1 + 15;
    assertEquals(
        Map.of(
            READING, bytes,
            ROWS, rows,
            BODIES, 3L,
            STATEMENTS, 2L,
            MONTHS, 1L,
            TABLES, 15L,
            PUBLISHING, published),
        notes.totals);
  }

  @Test
  void eachMomentOfAReleaseIsCountedOnceWhoeverWasReleasedThen() throws Exception {
    shop.add("releases.csv", "body,by,on,reason,action");
    for (String release :
        List.of(
            "B1,Hetty,2026-03-05T15:00,fine,release",
            "B2,Hetty,2026-03-05T15:00,fine,release",
            "B2,Hetty,2026-03-05T16:00,fine,release",
            "B2,Hetty,2026-03-05T17:00,fine,close",
            "B3,Hetty,2026-03-09T15:00,later,release",
            "B9,Hetty,2026-03-05T18:00,unknown,release")) {
      shop.add("releases.csv", release);
    }

    run();

    assertEquals(2, notes.totals.get(RELEASES));
    assertEquals(2, notes.done().get(RELEASES));
    assertEquals(notes.stages.indexOf(BODIES) + 1, notes.stages.indexOf(RELEASES));
    assertEquals(3, notes.totals.get(BODIES), "a moment before is no new stage");
  }

  @Test
  void aCheckPublishesNothing() throws Exception {
    NightShop.report(night().check(shop.reports(), NightShop.moment(NightShop.NIGHT)));

    assertEquals(List.of(READING, ROWS, BODIES, STATEMENTS, MONTHS, TABLES), notes.stages);
    assertEquals(notes.totals, notes.done());
  }

  @Test
  void aNightWithNothingNewPublishesWhatChangedAlone() throws Exception {
    run();
    run();

    assertEquals(0, notes.totals.get(PUBLISHING));
  }
}
