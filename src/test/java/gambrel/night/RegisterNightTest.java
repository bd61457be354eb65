package gambrel.night;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.NoticeCode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nights with a register that is whole, broken or of another shop. */
class RegisterNightTest {
  private static final String NEXT = "2026-03-07T02:00";
  private static final String STATEMENT = "statements/ann/B1-r1.pdf";

  @TempDir private Path folder;
  private NightShop shop;
  private Path register;

  @BeforeEach
  void issueOne() {
    shop = new NightShop(folder.resolve("shop")).beef("B1", "ann");
    shop.run(NightShop.NIGHT);
    register = shop.reports().resolve("data/statements.csv");
  }

  private static List<NoticeCode> codes(NightOutcome outcome) {
    return NightShop.report(outcome).notices().stream().map(n -> n.code()).toList();
  }

  @Test
  void theFirstRegisterIsSaidToBeNewOnThatNightOnly() {
    assertEquals(List.of(NoticeCode.REGISTER_NEW), codes(shop.run(NightShop.NIGHT)));
    assertEquals(List.of(), codes(shop.run(NEXT)));
  }

  @Test
  void aByteOrderMarkThatAnEditorAddedIsNoPartOfIt() throws Exception {
    Files.writeString(register, "\uFEFF" + Files.readString(register));

    assertEquals(List.of(), codes(shop.run(NEXT)));
    assertFalse(Files.readString(register).startsWith("\uFEFF"));
  }

  @Test
  void aRowSaysWhatWentOut() {
    var lines = Trees.lines(register);

    assertEquals(
        "customer,body,revision,issued,take_home_kg,charges,tax,paid,due,replaces,file,sha256,"
            + "figures",
        lines.get(0));
    assertTrue(
        lines
            .get(1)
            .matches(
                "ann,B1,1,2026-03-06T02:00:00,200\\.000,130\\.00,13\\.00,0\\.00,143\\.00,,"
                    + STATEMENT
                    + ",[0-9a-f]{64},[0-9a-f]{64}"),
        lines.get(1));
  }

  @Test
  void withoutItRevisionsStartAgainAndWhatWentOutIsKept() throws Exception {
    var sent = Trees.text(shop.reports().resolve(STATEMENT));
    Files.delete(register);
    shop.replace("exports/a.csv", "rump,120", "rump,119.9");

    var outcome = shop.run(NEXT);

    assertEquals(List.of(NoticeCode.REGISTER_NEW), codes(outcome));
    assertTrue(Trees.lines(register).get(1).startsWith("ann,B1,1,2026-03-07T02:00:00,"));
    var kept =
        Trees.published(shop.reports()).entrySet().stream()
            .filter(e -> e.getKey().matches("\\.kept/statements/ann/B1-r1\\.[0-9a-f]{16}\\.pdf"))
            .map(e -> e.getValue())
            .toList();
    assertEquals(List.of(sent), kept);
  }

  @Test
  void withoutItTheSameNightGivesTheSameAgain() throws Exception {
    var first = Trees.published(shop.reports());
    Files.delete(register);

    shop.run(NightShop.NIGHT);

    assertEquals(first, Trees.published(shop.reports()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"unit=lb", "currency=NZD"})
  void aShopThatChangesItsUnitOrCurrencyIsRefused(String setting) {
    var before = Trees.published(shop.reports());
    shop.replace("shop.properties", setting.startsWith("u") ? "unit=kg" : "currency=AUD", setting);

    assertInstanceOf(NightOutcome.Refused.class, shop.run(NEXT));
    assertInstanceOf(
        NightOutcome.Refused.class, shop.night().check(shop.reports(), NightShop.moment(NEXT)));

    assertEquals(before, Trees.published(shop.reports()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ann,B1,1",
        "ann,B1,one,2026-03-06T02:00:00,1.000,0.00,0.00,0.00,0.00,,statements/a/b-r1.pdf,x,y",
        "ann,B1,1,yesterday,1.000,0.00,0.00,0.00,0.00,,statements/a/b-r1.pdf,x,y",
        "ann,B1,1,2026-03-06T02:00:00,1.000,0.00,0.00,0.00,0.00,,../../shop.properties,x,y",
        "ann,B1,1,2026-03-06T02:00:00,1.000,0.00,0.00,0.00,0.00,,statements/../b-r1.pdf,x,y",
        "ann,B1,1,2026-03-06T02:00:00,1.000,0.00,0.00,0.00,0.00,,/etc/x-r1.pdf,x,y",
        "\"torn"
      })
  void aBrokenOneIsRefused(String row) throws Exception {
    Files.writeString(register, Trees.lines(register).get(0) + "\n" + row);
    var before = Trees.published(shop.reports());

    var outcome = assertInstanceOf(NightOutcome.Refused.class, shop.run(NEXT));

    assertTrue(outcome.why().startsWith("the register data/statements.csv is broken"));
    assertEquals(before, Trees.published(shop.reports()));
  }

  @Test
  void aMissingDocumentIsMarkedEveryNightAndNotMadeAgain() throws Exception {
    Files.delete(shop.reports().resolve(STATEMENT));

    var outcome = shop.run(NEXT);

    assertEquals(0, outcome.exitCode());
    var notice = NightShop.report(outcome).notices().get(0);
    assertEquals(NoticeCode.DOCUMENT_LOST, notice.code());
    assertEquals("The statement " + STATEMENT + " is missing.", ENGLISH.message(notice));
    assertEquals("B1", notice.body());
    assertFalse(Files.exists(shop.reports().resolve(STATEMENT)));
    assertEquals(List.of(NoticeCode.DOCUMENT_LOST), codes(shop.run(NEXT)));
  }

  @Test
  void aDocumentThatIsNotAsItWasIssuedIsMarked() throws Exception {
    Files.writeString(shop.reports().resolve(STATEMENT), "scribble");

    var notices = NightShop.report(shop.run(NEXT)).notices();

    assertEquals(
        List.of("The statement " + STATEMENT + " is not as it was issued."),
        notices.stream().map(ENGLISH::message).toList());
  }

  @Test
  void aRevisionOfALostDocumentGoesOutAndSaysThatWhatChangedIsNotKnown() throws Exception {
    Files.delete(shop.reports().resolve(STATEMENT));
    shop.replace("exports/a.csv", "rump,120", "rump,119.9");

    shop.run(NEXT);

    var second = Trees.text(shop.reports().resolve("statements/ann/B1-r2.pdf"));
    assertTrue(second.contains("changes not known"), second);
  }
}
