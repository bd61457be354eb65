package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.cause.Cause;
import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.cause.Suggestion;
import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.views.MorningView;
import gambrel.pages.views.MorningView.Issued;
import gambrel.pages.views.MorningView.Item;
import gambrel.pages.views.MorningView.Waits;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.account.CustomerMoney;
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
    assertEquals("Morning sheet, Wednesday 15 July 2026", sheet.heading());
    assertEquals(
        List.of("All is well: nothing waits for you.", "No statement was issued."), sheet.story());
    assertEquals(
        List.of("4 rows were read from 1 file: used 4, repeated 0, void 0, set aside 0."),
        sheet.notes());
    assertEquals(List.of(), sheet.waits());
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
    assertEquals(
        List.of("Statements that wait", "Weighings left out", "To look at"),
        sheet.waits().stream().map(Waits::title).toList());
    assertEquals("B2, beef · Bob Teasel", things(sheet, "Statements that wait").get(0).who());
  }

  @Test
  void aRemarkAloneLeavesAllWell() {
    var sheet = sheet(List.of(notice(NoticeCode.CORRECTION_UNUSED, "corrections.csv", 2)));
    assertEquals("Nothing waits for you. 1 thing to look at.", sheet.story().get(0));
  }

  @Test
  void aThingToDoHasItsCureAndTheRow() {
    var notice = code("5", 1234).aboutTicket("bench", "77").quoting("bench,77,5,,");
    assertEquals(
        List.of(
            new Item(
                "",
                "codes.csv has no code 5.",
                "Add it to codes.csv. The row, in the columns code,item,step (the command cuts"
                    + " prints the items; step: hot or cold on the rail, pack goes home, bin does"
                    + " not): 5,?,?. Or correct code in corrections.csv.",
                List.of("exports/day.csv:1234 · bench,77,5"),
                List.of())),
        things(sheet(List.of(notice)), "Weighings left out"));
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
            "The output folder has no statement from before this night, which is right on a first night.",
            "codes.csv has no code 5.",
            "No row of scale bench has ticket 9."),
        messages(sheet));
    assertEquals("1 note for the record is in data/notices.csv.", sheet.notes().get(1));
  }

  @Test
  void fiveOfAKindInAFileAreToldOneByOneAndSixAreOneThingToDo() {
    assertEquals(5, messages(sheet(unlike(5))).size());
    var six = things(sheet(unlike(6)), "Weighings left out");
    assertEquals(1, six.size());
    assertEquals("6 of this kind; the first: codes.csv has no code 1.", six.get(0).message());
    assertEquals(List.of("exports/day.csv:1"), six.get(0).rows());
  }

  @Test
  void whatIsSaidTwiceInTheSameWordsIsOneThingToDo() {
    assertEquals(
        List.of("codes.csv has no code 5. The same for 2 rows; the first is shown."),
        messages(sheet(List.of(code("5", 4), code("5", 8)))));
  }

  /** Ticket 900 says 4.00 in one file and 4.50 in another: B1 waits for one of the two rows. */
  @Test
  void theTwoRowsOfAConflictAreOneThingWithALineToVoidEach() {
    shop.add("exports/more.csv", "scale,ticket,time,body,code,net");
    shop.add("exports/more.csv", "bench,900,2026-07-09T10:00:00,B1,mince,4.00,,");
    shop.add("exports/most.csv", "scale,ticket,time,body,code,net");
    shop.add("exports/most.csv", "bench,900,2026-07-09T10:00:00,B1,mince,4.50");
    var waiting = things(night(), "Statements that wait");
    assertEquals(1, waiting.size());
    assertEquals("B1, beef · Ann Lowry", waiting.get(0).who());
    assertEquals(
        List.of(
            "exports/more.csv:2 · bench,900,2026-07-09T10:00:00,B1,mince,4.00",
            "exports/most.csv:2 · bench,900,2026-07-09T10:00:00,B1,mince,4.50"),
        waiting.get(0).rows());
    assertEquals(
        List.of(
            "bench,exports/more.csv:2,,status,void,,,the other row is right",
            "bench,exports/most.csv:2,,status,void,,,the other row is right"),
        waiting.get(0).likely().get(0).lines());
  }

  /** The line that the sheet prints settles the conflict when it is pasted. */
  @Test
  void aLineOfTheSheetWithNameAndTimeSettlesWhatItIsFor() {
    theTwoRowsOfAConflictAreOneThingWithALineToVoidEach();
    String line = things(night(), "Statements that wait").get(0).likely().get(0).lines().get(0);
    shop.add("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
    shop.add("corrections.csv", line.replace(",,,the", ",Ann,2026-07-14T09:00,the"));
    assertEquals(List.of(), shop.at(NOW).ledger().setAside());
  }

  @Test
  void aRowThatHoldsTwoBodiesIsOneThingThatNamesBoth() {
    shop.beef("B2", "2026-07-06", "c-bob").hung("B2", "2026-07-06", "204", "200");
    shop.cut("B2", "2026-07-09", "156", "40");
    shop.add("exports/more.csv", "scale,ticket,time,body,code,net");
    shop.add("exports/more.csv", "bench,900,2026-07-09T10:00:00,B1,mince,4.00");
    shop.add("exports/more.csv", "bench,900,2026-07-09T10:00:00,B2,mince,4.00");
    var waiting = things(night(), "Statements that wait");
    assertEquals(
        List.of("B1 (Ann Lowry), B2 (Bob Teasel)"), waiting.stream().map(Item::who).toList());
  }

  /** A body is held for its loss and for a row: two things, since two things are to be done. */
  @Test
  void whatNoNoticeTellsOfAHeldBodyIsAThingOfItsOwn() {
    holdABody();
    shop.row("bench", "2026-07-09T10:00", "B2", "nothing", "4.00");
    var waiting = things(night(), "Statements that wait");
    assertEquals(
        List.of("B2, beef · Bob Teasel", "B2, beef · Bob Teasel"),
        waiting.stream().map(Item::who).toList());
    assertEquals("codes.csv has no code nothing.", waiting.get(0).message());
    assertTrue(waiting.get(1).message().startsWith("60.00\u00a0kg is missing"), waiting::toString);
  }

  @Test
  void nothingOnTheSheetSendsItsReaderToTheSheet() {
    holdABody();
    shop.add("releases.csv", "body,by,on,reason\nB2,Ann,,no moment");
    shop.row("bench", "2026-07-09T10:00", "B1", "nothing", "4.00");
    var sheet = night();
    assertEquals(
        2, things(sheet, "Statements that wait").stream().map(Item::who).distinct().count());
    assertFalse(sheet.waits().toString().contains("morning"), sheet.waits()::toString);
  }

  /** As the statement does: liver is among the packs and in the weight. */
  @Test
  void listsWhomToRingWithPacksKilosAndWhatIsOwed() {
    shop.add("codes.csv", "liver,liver,pack");
    shop.row("bench", "2026-07-09T10:00", "B1", "mince", "2.00");
    shop.row("bench", "2026-07-09T10:01", "B1", "liver", "3.00");
    shop.add("bodies.csv", "B3,beef,2026-07-06,,,c-ann");
    shop.add("exports/more.csv", "scale,ticket,time,body,code,net,customer");
    shop.add("exports/more.csv", "bench,501,2026-07-09T10:00:00,B3,mince,4.00,c-bob");
    var issued =
        List.of(
            statement("c-ann", "B1", 2, 158_000, 10_000), statement("c-bob", "B3", 1, 4_000, 0));
    var accounts = List.of(account("c-ann", "B1", "2026-07-15", 13_000), account("c-bob"));
    var sheet = sheet(shop.at(NOW), issued, accounts, List.of(), false);
    assertEquals(
        List.of(
            new Issued(
                "Ann Lowry",
                "B1, beef",
                "revision 2",
                "3",
                "161.00\u00a0kg",
                "$100.00",
                "$130.00",
                "on paper"),
            new Issued("Bob Teasel", "B3, beef", "", "1", "4.00\u00a0kg", "", "", "on paper")),
        sheet.ring().issued());
    assertEquals("2 statements were issued.", sheet.story().get(1));
  }

  @Test
  void namesTheThreeWhoOweLongestAndCountsTheOthers() {
    var accounts =
        List.of(
            account("c-ann", "B1", "2026-07-01", 100),
            account("c-bob", "B2", "2025-12-31", 200),
            account("c-cy", "B3", "2026-07-01", 300),
            account("c-di", "B4", "2026-07-02", 400),
            account("c-ed"));
    var ring = sheet(shop.at(NOW), List.of(), accounts, List.of(), false).ring();
    assertEquals(
        "Bob Teasel, $2.00, the oldest since 31 December 2025 · c-cy, $3.00, the oldest since 1 Jul ·"
            + " Ann Lowry, $1.00, the oldest since 1 Jul · 1 more",
        ring.owing());
  }

  @Test
  void ofTheStatementsOfManyYearsTheFirstAreListedAndTheRestCounted() {
    var issued = new ArrayList<RegisterRow>();
    for (int i = 0; i < 300; i++) {
      issued.add(statement("c-ann", "B" + i, 1, 4_000, 0));
    }
    var full = sheet(shop.at(NOW), issued, List.of(), List.of(), false);
    assertEquals(300, full.ring().issued().size());
    assertEquals("", full.ring().issuedMore());

    issued.add(statement("c-bob", "B1", 1, 4_000, 0));
    var over = sheet(shop.at(NOW), issued, List.of(), List.of(), false);
    assertEquals(full.ring().issued(), over.ring().issued());
    assertEquals("1 more statement is in data/statements.csv.", over.ring().issuedMore());
    assertEquals("301 statements were issued.", over.story().get(1));
  }

  /** B1 was cut on 9 July, B5 on 6 July: on the 15th the first is 6 days ago, the other 9. */
  @Test
  void ofAFirstNightWithManyStatementsThoseOfBodiesCutInTheLastSevenDaysAreListed() {
    shop.beef("B5", "2026-07-02", "c-bob").hung("B5", "2026-07-02", "204", "200");
    shop.cut("B5", "2026-07-06", "156", "40");
    var issued = new ArrayList<>(List.of(statement("c-ann", "B1", 1, 156_000, 10_000)));
    for (int i = 1; i <= 19; i++) {
      issued.add(statement("c-bob", "B5", i, 156_000, 10_000));
    }
    assertEquals(
        20, sheet(shop.at(NOW), issued, List.of(), List.of(), true).ring().issued().size());

    issued.add(statement("c-bob", "B5", 20, 156_000, 10_000));
    var ring = sheet(shop.at(NOW), issued, List.of(), List.of(), true).ring();
    assertEquals(List.of("Ann Lowry"), ring.issued().stream().map(Issued::customer).toList());
    assertEquals(
        "Of bodies cut earlier: 20 statements, see data/statements.csv.", ring.issuedMore());
    assertEquals(
        21, sheet(shop.at(NOW), issued, List.of(), List.of(), false).ring().issued().size());
  }

  /** Of 300 kg 20 are missing, of each. */
  @Test
  void ofVeryManyBodiesThatWaitTheFirstAreListedAndTheRestCounted() {
    var shop = new SmallShop(folder.resolve("many"));
    for (int i = 0; i < 302; i++) {
      String body = "H" + i;
      shop.beef(body, "2026-07-06", "c-ann").hung(body, "2026-07-06", "306", "300");
      shop.cut(body, "2026-07-13", "200", "80");
    }
    var sheet = sheet(shop.at("2026-09-15T02:00:00Z"), List.of(), List.of(), List.of(), false);
    assertEquals(300, sheet.waits().get(0).items().size());
    assertEquals(
        "2 more things are in data/bodies.csv or data/notices.csv.", sheet.waits().get(0).more());
    assertTrue(sheet.story().get(0).startsWith("302 bodies wait for you."), sheet.story().get(0));
  }

  @Test
  void aRegisterThatWasNotThereIsSaid() {
    var notes = sheet(shop.at(NOW), List.of(), List.of(), List.of(), true).notes();
    assertTrue(notes.get(1).startsWith("The output folder had"), notes::toString);
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
    var report =
        new MorningReport(night, List.of(), List.of(), List.of(), causes.notices(), causes, false);
    var sheet = MorningComposer.compose(report, SmallShop.wording(night));
    assertEquals(
        List.of(
            new MorningView.Likely(
                "the scale cannot weigh so much",
                "If so, put this line into corrections.csv with your name and the time:",
                List.of("bench,7,2026-07-09,status,void,,,printed twice"))),
        things(sheet, "Statements that wait").get(0).likely());
    assertEquals(1, sheet.waits().size());
    assertEquals(1, sheet.notes().size());
  }

  private void holdABody() {
    shop.beef("B2", "2026-07-06", "c-bob").hung("B2", "2026-07-06", "204", "200");
    shop.cut("B2", "2026-07-09", "100", "40");
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
    return sheet(shop.at(NOW), List.of(), List.of(), new ArrayList<>(notices), false);
  }

  /** The sheet with the notices of the night. */
  private MorningView night() {
    var night = shop.at(NOW);
    var notices = new ArrayList<>(shop.inputs().notices());
    notices.addAll(night.notices());
    night.ledger().setAside().forEach(row -> notices.add(row.notice()));
    return sheet(night, List.of(), List.of(), notices, false);
  }

  private static MorningView sheet(
      Night night,
      List<RegisterRow> issued,
      List<CustomerAccount> accounts,
      List<Notice> notices,
      boolean newRegister) {
    var report =
        new MorningReport(
            night, issued, accounts, List.of(), notices, LikelyCauses.NONE, newRegister);
    return MorningComposer.compose(report, SmallShop.wording(night));
  }

  private static List<Item> things(MorningView sheet, String group) {
    return sheet.waits().stream()
        .filter(waits -> waits.title().equals(group))
        .flatMap(waits -> waits.items().stream())
        .toList();
  }

  private static List<String> messages(MorningView sheet) {
    return sheet.waits().stream()
        .flatMap(waits -> waits.items().stream())
        .map(Item::message)
        .toList();
  }

  /** A customer with a statement that is not paid, of so many cents. */
  private static CustomerAccount account(String customer, String body, String since, long cents) {
    var money = new CustomerMoney(new Money(cents), Money.ZERO, Money.ZERO);
    var statement = new CustomerAccount.Statement(body, LocalDate.parse(since), money);
    return new CustomerAccount(customer, List.of(statement), Money.ZERO);
  }

  /** A customer who owes nothing. */
  private static CustomerAccount account(String customer) {
    return new CustomerAccount(customer, List.of(), Money.ZERO);
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
