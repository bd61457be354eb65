package gambrel.night;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The notices of a night and their severities. */
class NightNoticesTest {
  private static final String LATER = "2026-03-10T02:00";

  @TempDir private Path folder;
  private NightShop shop;

  @BeforeEach
  void openShop() {
    shop = new NightShop(folder.resolve("shop")).beef("B1", "ann");
    shop.add("releases.csv", "body,by,on,reason,action");
  }

  private List<Notice> notices(String asOf, NoticeCode code) {
    return shop.done(asOf).notices().stream().filter(n -> n.code() == code).toList();
  }

  private Notice only(String asOf, NoticeCode code) {
    var notices = notices(asOf, code);
    assertEquals(1, notices.size(), notices::toString);
    return notices.get(0);
  }

  @Test
  void theyAreListedByFileThenLineThenCode() {
    shop.add("exports/a.csv", "bench,70,2026-03-05T10:00:00,B1,nothing,1,,,,");
    shop.add("exports/a.csv", "bench,71,soon,B1,rump,1,,,,");
    shop.add("exports/A.csv", shop.lines("exports/a.csv").get(0), "xx,72,2026-03-05T10:00:00,,,1");
    shop.add("scales.csv", "bench,0.01");

    shop.run(NightShop.NIGHT);

    assertEquals(
        List.of(
            "hold,held,,",
            "note,register-new,,",
            "hold,scale-unknown,exports/A.csv,2",
            "hold,code-unknown,exports/a.csv,8",
            "hold,time-bad,exports/a.csv,9",
            "mark,id-twice,scales.csv,4"),
        Trees.lines(shop.reports().resolve("data/notices.csv")).stream()
            .skip(1)
            .map(line -> String.join(",", List.of(line.split(",", -1)).subList(0, 4)))
            .toList());
  }

  @Test
  void aDayThatNoCalendarHasIsNoTime() {
    shop.add("exports/a.csv", "bench,70,2026-02-30T10:00:00,B1,rump,1,,,,");

    assertEquals("exports/a.csv:8", only(NightShop.NIGHT, NoticeCode.TIME_BAD).place().toString());
  }

  @Test
  void eachRowSetAsideHasOneWithItsScaleTicketBodyAndText() {
    shop.add("exports/a.csv", "bench,70,2026-03-05T10:00:00,B1,nothing,1,,,,");

    var notice = only(NightShop.NIGHT, NoticeCode.CODE_UNKNOWN);

    assertEquals("exports/a.csv:8", notice.place().toString());
    assertEquals(
        List.of("bench", "70", "B1", "bench,70,2026-03-05T10:00:00,B1,nothing,1,,,,"),
        List.of(notice.scale(), notice.ticket(), notice.body(), notice.raw()));
  }

  @Test
  void anUnknownBodyHasOneForAllItsRowsWithTheRowToPaste() {
    shop.weigh("bench", "05T10:00:00", "X,9", "lamb-leg", "2");
    shop.weigh("rail", "04T10:00:00", "X,9", "hot", "20");

    var notice = only(NightShop.NIGHT, NoticeCode.BODY_UNKNOWN);

    assertEquals("X,9", notice.body());
    assertTrue(ENGLISH.message(notice).endsWith("2 rows name it."), ENGLISH.message(notice));
    assertTrue(
        ENGLISH.advice(notice).contains("columns body,species,killed "), ENGLISH.advice(notice));
    assertTrue(ENGLISH.advice(notice).endsWith(": \"X,9\",,2026-03-04"), ENGLISH.advice(notice));
  }

  /** Beef alone has a rump; lamb, goat and others have a leg; everything has a carcase. */
  @ParameterizedTest
  @CsvSource({"rump-cap, beef", "leg, ''", "carcase, ''", "mince, ''"})
  void itsSpeciesIsGuessedWhereOneAloneHasTheItemsOfItsRows(String item, String species) {
    shop.add("codes.csv", "90*," + item + ",pack");
    shop.weigh("bench", "05T10:00:00", "X9", "9001", "2");

    var advice = ENGLISH.advice(only(NightShop.NIGHT, NoticeCode.BODY_UNKNOWN));

    assertTrue(advice.endsWith(": X9," + species + ",2026-03-05"), advice);
    assertEquals(species.isEmpty(), advice.contains("species is for you to fill in"), advice);
  }

  @Test
  void theRowToPasteSettlesIt() {
    shop.weigh("bench", "05T10:00:00", "X9", "rump", "2");
    shop.add("codes.csv", "91,rump-cap,pack").weigh("bench", "05T10:01:00", "X9", "91", "2");
    var advice = ENGLISH.advice(only(NightShop.NIGHT, NoticeCode.BODY_UNKNOWN));

    shop.add("bodies.csv", advice.substring(advice.lastIndexOf(": ") + 2));

    assertEquals(List.of(), notices(NightShop.NIGHT, NoticeCode.BODY_UNKNOWN));
  }

  @Test
  void aFileWhoseColumnsAreNotKnownHasOneForAllItsRows() {
    shop.add("exports/b.csv", "scale;weight", "bench;1", "bench;2");

    var report = shop.done(NightShop.NIGHT);

    assertEquals(
        List.of("exports/b.csv:1 EXPORT_UNREADABLE"),
        report.notices().stream()
            .filter(n -> n.place().file().equals("exports/b.csv"))
            .map(n -> n.place() + " " + n.code())
            .toList());
    var rows = Trees.lines(shop.reports().resolve("data/rows.csv"));
    assertTrue(rows.contains("exports/b.csv,2,0,0,0,2"), rows::toString);
  }

  @Test
  void aRowSetAsideWaitsUntilItIsReleasedWithItsBody() {
    shop.add("exports/a.csv", "bench,70,2026-03-05T10:00:00,B1,nothing,1,,,,");
    assertEquals(1, shop.run(NightShop.NIGHT).exitCode());
    shop.add("releases.csv", "B1,Hetty,2026-03-06T09:00,a slip,release");

    assertEquals(0, shop.run(LATER).exitCode());
    assertEquals(Severity.NOTE, only(LATER, NoticeCode.CODE_UNKNOWN).severity());
  }

  @Test
  void aScaleThatFailedItsTestIsWorthAMarkWhereItHoldsNothing() {
    shop.replace("codes.csv", "code,item,step", "code,item,step,nominal");
    shop.add("codes.csv", "t20,,test,20");
    shop.weigh("bench", "01T08:00:00", "", "t20", "20");
    shop.weigh("bench", "07T08:00:00", "", "t20", "20");
    shop.weigh("bench", "08T08:00:00", "", "t20", "20.5");

    assertEquals(0, shop.run(LATER).exitCode());
    assertEquals(Severity.MARK, only(LATER, NoticeCode.SCALE_FAILED).severity());
  }

  @Test
  void aScaleThatFailedItsTestWaitsForAPersonWhereItHoldsAStatement() {
    shop.replace("codes.csv", "code,item,step", "code,item,step,nominal");
    shop.add("codes.csv", "t20,,test,20");
    shop.weigh("bench", "05T18:00:00", "", "t20", "20.5");

    assertEquals(1, shop.run(LATER).exitCode());
    assertEquals(Severity.HOLD, only(LATER, NoticeCode.SCALE_FAILED).severity());
  }
}
