package gambrel.night;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nights without exports or with a wrong time do not change what was issued. */
class LostExportsTest {
  private static final String NEXT = "2026-03-07T02:00";
  private static final String THIRD = "2026-03-08T02:00";
  private static final String EXPORT = "exports/a.csv";

  @TempDir private Path folder;
  private NightShop shop;
  private SortedMap<String, String> issued;

  @BeforeEach
  void issueTwo() {
    shop = new NightShop(folder.resolve("shop")).beef("B1", "ann").beef("B2", "bob");
    assertEquals(0, shop.run(NightShop.NIGHT).exitCode());
    issued = issued();
  }

  /** The register and the statements. */
  private SortedMap<String, String> issued() {
    var tree = Trees.published(shop.reports());
    tree.keySet()
        .removeIf(file -> !file.startsWith("statements/") && !file.equals("data/statements.csv"));
    return tree;
  }

  private static List<Notice> stops(NightOutcome outcome) {
    return NightShop.report(outcome).notices().stream()
        .filter(notice -> notice.severity() == Severity.STOP)
        .toList();
  }

  private static NoticeCode onlyStop(NightOutcome outcome) {
    var stops = stops(outcome);
    assertEquals(1, stops.size(), stops::toString);
    assertEquals(1, outcome.exitCode());
    return stops.get(0).code();
  }

  @Test
  void anEmptyExportsFolderIsToldAndAllThatWasIssuedStands() {
    var lines = shop.lines(EXPORT);
    shop.without(EXPORT);

    var outcome = shop.run(NEXT);

    assertEquals(NoticeCode.WEIGHINGS_GONE, onlyStop(outcome));
    assertTrue(ENGLISH.message(stops(outcome).get(0)).contains("about B1, B2, now open"));
    assertEquals(issued, issued());
    shop.add(EXPORT, lines.toArray(new String[0]));
    assertEquals(0, shop.run(THIRD).exitCode());
    assertEquals(issued, issued());
  }

  @Test
  void aFileThatTookHalfOfABodyWithItIsToldWhileTheBodyLooksPartCut() {
    shop.replace(EXPORT, "bench,4,2026-03-05T10:10:00,B1,mince,80", "");

    assertEquals(NoticeCode.WEIGHINGS_GONE, onlyStop(shop.run(NEXT)));

    assertEquals(issued, issued());
  }

  @Test
  void aBodyThatIsWeighedOnIsNoLoss() {
    shop.weigh("bench", "07T01:00:00", "B1", "rump", "1.5");

    assertEquals(List.of(), stops(shop.run(NEXT)));
  }

  @Test
  void whileAnExportCannotBeReadToItsEndNothingGoesOut() throws Exception {
    shop.beef("B3", "ann").replace(EXPORT, "B1,rump,120", "B1,rump,119.9");
    var read = Inputs.read(shop.write(), Progress.NONE);
    var notices = new ArrayList<>(read.notices());
    var place = new Place("exports/b.csv", 0);
    notices.add(Notice.of(NoticeCode.EXPORT_UNFINISHED, "WRITTEN", place));
    var inputs = new Inputs(read.shop(), read.exports(), notices);

    var outcome =
        new NightlyRun(inputs, new TinyDocuments())
            .run(shop.reports(), NightShop.moment(NEXT), List.of());

    assertEquals(NoticeCode.EXPORT_UNFINISHED, onlyStop(outcome));
    assertTrue(
        ENGLISH.message(stops(outcome).get(0)).endsWith("No statement goes out until it is read."));
    assertEquals(issued, issued());
    assertEquals(0, shop.run(THIRD).exitCode());
    assertEquals(4, Trees.files(shop.reports().resolve("statements")).size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1970-01-01T00:00", "2026-03-04T02:00", "2026-03-06T01:59:59"})
  void aClockThatWentBackIsToldAndAllThatWasIssuedStands(String asOf) {
    shop.replace(EXPORT, "B1,rump,120", "B1,rump,119.9");

    var outcome = shop.run(asOf);

    assertEquals(NoticeCode.CLOCK_BACK, onlyStop(outcome));
    assertEquals(issued, issued());
  }

  @Test
  void theClockIsRightAgainAtTheMomentOfTheLastIssue() {
    shop.run("1970-01-01T00:00");

    assertEquals(0, shop.run(NightShop.NIGHT).exitCode());
    assertEquals(issued, issued());
  }
}
