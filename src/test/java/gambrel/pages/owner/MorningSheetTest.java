package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.cause.Cause;
import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.cause.Suggestion;
import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.views.Held;
import gambrel.pages.views.MorningView;
import gambrel.pages.views.MorningView.FileRow;
import gambrel.pages.views.MorningView.Todo;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.shop.Correction;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MorningSheetTest {
  private static final String NOW = "2026-07-15T02:00:00Z";

  @TempDir private Path folder;
  private SmallShop shop;

  @BeforeEach
  void startAShopWithABodyThatBalances() {
    shop = new SmallShop(folder);
    shop.beef("B1", "2026-07-06", "c-ann").hung("B1", "2026-07-06", "204", "200");
    shop.cut("B1", "2026-07-09", "156", "40");
  }

  @Test
  void saysThatAllIsWellWhereNothingWaits() {
    var sheet = sheet(List.of());
    assertEquals("Wednesday 15 July 2026", sheet.heading());
    assertEquals(
        List.of(
            "All is well: nothing waits for you.",
            "No statement was issued.",
            "4 rows were read from 1 file: 4 used, 0 repeats, 0 void, 0 set aside."),
        sheet.story());
    assertEquals(List.of(), sheet.todo());
    assertEquals(List.of(), sheet.notes());
  }

  @Test
  void beginsWithWhatWaitsAndTellsWhatOnlyNeedsALook() {
    holdABody();
    var sheet =
        sheet(
            List.of(
                notice(NoticeCode.HELD, "", 0),
                code("5", 9),
                notice(NoticeCode.CORRECTION_UNUSED, "corrections.csv", 2)));
    assertEquals("1 body waits for you. 1 thing to do. 1 thing to look at.", sheet.story().get(0));
    assertEquals("B2, beef", sheet.held().get(0).body());
  }

  @Test
  void aRemarkAloneLeavesAllWell() {
    var sheet = sheet(List.of(notice(NoticeCode.CORRECTION_UNUSED, "corrections.csv", 2)));
    assertEquals("All is well: nothing waits for you. 1 thing to look at.", sheet.story().get(0));
  }

  @Test
  void aThingToDoHasItsPlaceItsTicketItsCureAndTheRow() {
    var notice = code("5", 1234).aboutTicket("bench", "77").quoting("bench,77,5");
    assertEquals(
        List.of(
            new Todo(
                "Waits",
                "exports/day.csv, line 1234",
                "scale bench, ticket 77",
                "codes.csv has no code 5.",
                "Add it to codes.csv. The row, in the columns code,item,step (the command cuts"
                    + " prints the items): 5,?,pack. Or correct code in corrections.csv.",
                "bench,77,5")),
        sheet(List.of(notice)).todo());
  }

  @Test
  void theWorstComesFirstAndNotesAreNoWork() {
    var sheet =
        sheet(
            List.of(
                notice(NoticeCode.CORRECTION_UNUSED, "a.csv", 1).aboutTicket("bench", "9"),
                code("5", 1),
                notice(NoticeCode.REGISTER_NEW, "", 0).as(Severity.STOP),
                notice(NoticeCode.WEIGHED_ON_BLOCK, "", 0)));
    assertEquals(
        List.of(
            "There is no register of statements from before this night: revisions start at 1.",
            "codes.csv has no code 5.",
            "No row of scale bench has ticket 9."),
        sheet.todo().stream().map(Todo::message).toList());
    assertEquals(List.of("1 note for the record is in data/notices.csv."), sheet.notes());
  }

  @Test
  void fiveOfAKindInAFileAreToldOneByOneAndSixAreOneThingToDo() {
    assertEquals(5, sheet(unlike(5)).todo().size());
    var six = sheet(unlike(6)).todo();
    assertEquals(1, six.size());
    assertEquals("6 of this kind; the first: codes.csv has no code 1.", six.get(0).message());
    assertEquals("exports/day.csv, line 1", six.get(0).place());
  }

  @Test
  void whatIsSaidTwiceInTheSameWordsIsOneThingToDo() {
    var alike = List.of(code("5", 4), code("5", 8));
    var todo = sheet(alike).todo();
    assertEquals(1, todo.size());
    assertEquals(
        "codes.csv has no code 5. The same of 2 rows; the first is shown.", todo.get(0).message());
  }

  @Test
  void listsWhatWasIssuedWithWhatIsToPay() {
    shop.add("bodies.csv", "B3,beef,2026-07-06,,,c-ann");
    shop.add("exports/more.csv", "scale,ticket,time,body,code,net,customer");
    shop.add("exports/more.csv", "bench,501,2026-07-09T10:00:00,B3,mince,4.00,c-bob");
    var issued =
        List.of(
            statement("c-ann", "B1", 2, 156_000, 10_000), statement("c-bob", "B3", 1, 4_000, 0));
    var sheet = sheet(shop.at(NOW), issued, List.of(), false);
    assertEquals(
        List.of(
            new MorningView.Issued("Ann Lowry", "B1", "revision 2", "156.00\u00a0kg", "$100.00"),
            new MorningView.Issued("Bob Teasel", "B3", "", "4.00\u00a0kg", "")),
        sheet.issued());
    assertEquals("2 statements were issued.", sheet.story().get(1));
  }

  @Test
  void ofTheStatementsOfManyYearsTheFirstAreListedAndTheRestCounted() {
    var issued = new ArrayList<RegisterRow>();
    for (int i = 0; i < MorningComposer.MOST_ROWS; i++) {
      issued.add(statement("c-ann", "B" + i, 1, 4_000, 0));
    }
    var full = sheet(shop.at(NOW), issued, List.of(), false);
    assertEquals(MorningComposer.MOST_ROWS, full.issued().size());
    assertEquals("", full.issuedMore());

    issued.add(statement("c-bob", "B1", 1, 4_000, 0));
    var over = sheet(shop.at(NOW), issued, List.of(), false);
    assertEquals(full.issued(), over.issued());
    assertEquals("1 statement more stands in data/statements.csv.", over.issuedMore());
    assertEquals("301 statements were issued.", over.story().get(1));
  }

  /** Of 300 kg 20 are missing, of each. */
  @Test
  void ofVeryManyBodiesThatWaitTheFirstAreListedAndTheRestCounted() {
    var shop = new SmallShop(folder.resolve("many"));
    for (int i = 0; i < MorningComposer.MOST_ROWS + 2; i++) {
      String body = "H" + i;
      shop.beef(body, "2026-07-06", "c-ann").hung(body, "2026-07-06", "306", "300");
      shop.cut(body, "2026-07-13", "200", "80");
    }
    var sheet = sheet(shop.at("2026-09-15T02:00:00Z"), List.of(), List.of(), false);
    assertEquals(MorningComposer.MOST_ROWS, sheet.held().size());
    assertEquals("2 bodies more wait; they stand in data/bodies.csv.", sheet.heldMore());
    assertTrue(sheet.story().get(0).startsWith("302 bodies wait for you."), sheet.story().get(0));
  }

  @Test
  void upToTwentyFilesAreListedOneByOne() {
    files(19);
    assertEquals(20, sheet(List.of()).files().size());
  }

  @Test
  void ofManyFilesTheOldOnesThatNeedNothingAreOneLine() {
    files(30);
    shop.add("exports/f07.csv", "bench,999,2026-07-07T10:00:00,B1,nothing,4.00");
    shop.add("exports/new.csv", "scale,ticket,time,body,code,net");
    shop.add("exports/new.csv", "rail,801,2026-07-14T10:00:00,B1,aged,198");
    var sheet = sheet(List.of());
    assertEquals(
        List.of(
            new FileRow("exports/f07.csv", "1", "0", "0", "0", "1"),
            new FileRow("exports/new.csv", "1", "1", "0", "0", "0"),
            new FileRow("30 other files, with nothing new", "4", "4", "0", "0", "0")),
        sheet.files());
    assertEquals(new FileRow("Total", "6", "5", "0", "0", "1"), sheet.fileTotal());
  }

  @Test
  void namesOpenBodiesAndARegisterThatWasNotThere() {
    shop.beef("B4", "2026-07-14", "c-ann").row("rail", "2026-07-14T08:00", "B4", "hot", "204");
    var sheet = sheet(shop.at(NOW), List.of(), List.of(), true);
    assertEquals("1 body is still open and needs nothing yet. Open: B4.", sheet.notes().get(0));
    assertTrue(sheet.notes().get(1).startsWith("There was no register"));
  }

  @Test
  void saysUnderAHeldBodyWhatProbablyWentWrong() {
    holdABody();
    var night = shop.at(NOW);
    var suggestion =
        new Suggestion(
            Cause.DOUBLE_PRESS,
            Notice.of(NoticeCode.LIKELY_CAUSE, Phrase.of("CAUSE.CAPACITY"), Place.NONE)
                .aboutBody("B2"),
            List.of(),
            List.of(
                new Correction(
                    "bench",
                    "7",
                    Optional.of(LocalDate.of(2026, 7, 9)),
                    "status",
                    "void",
                    "",
                    night.asOf(),
                    "",
                    Place.NONE)),
            Optional.empty(),
            Optional.empty());
    var causes = new LikelyCauses(new TreeMap<>(Map.of("B2", List.of(suggestion))), 0);
    var report = new MorningReport(night, List.of(), List.of(), causes.notices(), causes, false);
    var sheet = MorningComposer.compose(report, SmallShop.wording(night));
    assertEquals(
        List.of(
            new Held.Likely(
                "the scale cannot weigh so much",
                "If so, put this line into corrections.csv with your name and the time:",
                List.of("bench,7,2026-07-09,status,void,,,printed twice"))),
        sheet.held().get(0).likely());
    assertEquals(List.of(), sheet.todo());
    assertEquals(List.of(), sheet.notes());
  }

  private void holdABody() {
    shop.beef("B2", "2026-07-06", "c-bob").hung("B2", "2026-07-06", "204", "200");
    shop.cut("B2", "2026-07-09", "100", "40");
  }

  private void files(int number) {
    String head = "scale,ticket,time,body,code,net";
    IntStream.rangeClosed(1, number).forEach(i -> shop.add("exports/f%02d.csv".formatted(i), head));
  }

  private static List<Notice> unlike(int number) {
    return IntStream.rangeClosed(1, number).mapToObj(i -> code(Integer.toString(i), i)).toList();
  }

  private static Notice notice(NoticeCode code, String file, int line) {
    return Notice.of(code, new Place(file, line));
  }

  private static Notice code(String code, int line) {
    return notice(NoticeCode.CODE_UNKNOWN, "exports/day.csv", line).with("code", code);
  }

  private MorningView sheet(List<Notice> notices) {
    return sheet(shop.at(NOW), List.of(), new ArrayList<>(notices), false);
  }

  private static MorningView sheet(
      Night night, List<RegisterRow> issued, List<Notice> notices, boolean newRegister) {
    var report =
        new MorningReport(night, issued, List.of(), notices, LikelyCauses.NONE, newRegister);
    return MorningComposer.compose(report, SmallShop.wording(night));
  }

  private static RegisterRow statement(
      String customer, String body, int revision, long takeHome, long charges) {
    return new RegisterRow(
        customer,
        body,
        revision,
        LocalDateTime.parse("2026-07-15T02:00:00"),
        Weight.ofThousandths(takeHome),
        new Money(charges),
        Money.ZERO,
        Money.ZERO,
        Optional.empty(),
        "statements/" + customer + "/" + body + "-r" + revision + ".pdf",
        "",
        "",
        Optional.empty(),
        List.of());
  }
}
