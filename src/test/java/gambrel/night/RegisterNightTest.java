package gambrel.night;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.NoticeCode;
import gambrel.trade.register.Digest;
import java.nio.charset.StandardCharsets;
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
            + "figures,number",
        lines.get(0));
    assertTrue(
        lines
            .get(1)
            .matches(
                "ann,B1,1,2026-03-06T02:00:00,200\\.000,130\\.00,13\\.00,0\\.00,143\\.00,,"
                    + STATEMENT
                    + ",[0-9a-f]{64},[0-9a-f]{64},1"),
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

    assertEquals(2, shop.run(NEXT).exitCode());
    assertEquals(2, shop.night().check(shop.reports(), NightShop.moment(NEXT)).exitCode());

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

    var outcome = assertInstanceOf(NightOutcome.Stopped.class, shop.run(NEXT));

    assertEquals(2, outcome.exitCode());
    assertTrue(outcome.why().startsWith("the register data/statements.csv is broken"));
    assertEquals(before, Trees.published(shop.reports()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\uFEFF", ";", "\r\n"})
  void oneThatASpreadsheetSavedUnchangedIsRead(String saved) throws Exception {
    String text = Files.readString(register);
    String crlf = text.replace("\n", "\r\n");
    Files.writeString(
        register,
        switch (saved) {
          case ";" -> crlf.replace(",", ";");
          case "\r\n" -> crlf;
          default -> saved + text;
        });

    assertEquals(List.of(), codes(shop.run(NEXT)));

    assertEquals(text, Files.readString(register));
  }

  /** The digits behind the point, the date, a row: all of them are on somebody's page. */
  @ParameterizedTest
  @ValueSource(strings = {"200.000>200", "2026-03-06T>2026-03-05T", "130.00,13.00>140.00,13.00"})
  void oneOfWhichACellWasChangedIsRefused(String change) throws Exception {
    var parts = change.split(">");
    Files.writeString(register, Files.readString(register).replace(parts[0], parts[1]));
    var before = Trees.published(shop.reports());

    var outcome = assertInstanceOf(NightOutcome.Stopped.class, shop.run(NEXT));

    assertEquals(2, outcome.exitCode());
    assertEquals(
        "the register data/statements.csv was changed, perhaps by a spreadsheet, since it was"
            + " written: restore the reports folder from the backup.",
        outcome.why());
    assertEquals(before, Trees.published(shop.reports()));
  }

  @Test
  void theChargesThatWentOutAreKeptAsTheyWere() throws Exception {
    var charges = shop.reports().resolve("data/charges.csv");
    var kept = Trees.lines(charges);
    assertEquals(
        List.of(
            "number,customer,body,revision,issued,charge,description,quantity,unit,price,amount,"
                + "tax_percent,tax",
            "1,ann,B1,1,2026-03-06T02:00:00,kill,Kill,1,head,130.00,130.00,10,13.00"),
        kept);
    shop.replace("charges.csv", "kill,Kill,head,130.00,10", "kill,Slaughter,head,150,0");

    assertEquals(List.of(), codes(shop.run(NEXT)));

    assertEquals(kept, Trees.lines(charges));
  }

  @Test
  void chargesOfWhichACellWasChangedAreRefused() throws Exception {
    var charges = shop.reports().resolve("data/charges.csv");
    Files.writeString(charges, Files.readString(charges).replace("head,130.00", "head,13.00"));
    var before = Trees.published(shop.reports());

    var outcome = assertInstanceOf(NightOutcome.Stopped.class, shop.run(NEXT));

    assertEquals(
        "the register data/charges.csv was changed, perhaps by a spreadsheet, since it was"
            + " written: restore the reports folder from the backup.",
        outcome.why());
    assertEquals(before, Trees.published(shop.reports()));
  }

  @Test
  void missingChargesAreMarkedEveryNightUntilARevision() throws Exception {
    Files.delete(shop.reports().resolve("data/charges.csv"));

    var notices = NightShop.report(shop.run(NEXT)).notices();

    assertEquals(
        List.of("data/charges.csv lacks the charges of statements that were issued with them: 1."),
        notices.stream().map(ENGLISH::message).toList());
    assertEquals(List.of(NoticeCode.DOCUMENT_LOST), codes(shop.run("2026-03-08T02:00")));
    shop.replace("exports/a.csv", "rump,120", "rump,119.9");
    shop.run("2026-03-09T02:00");
    assertEquals(List.of(), codes(shop.run("2026-03-10T02:00")));
  }

  /** As a version wrote it that knew neither numbers nor charges. */
  @Test
  void oneWithoutNumbersIsReadAndNumbersBeginWithTheNextStatement() throws Exception {
    var old = Files.readString(register).replace(",number\n", "\n").replaceFirst(",1\n$", "\n");
    Files.writeString(register, old);
    Files.writeString(
        shop.reports().resolve(".register"), Digest.of(old.getBytes(StandardCharsets.UTF_8)));
    Files.delete(shop.reports().resolve("data/charges.csv"));
    shop.beef("B2", "bob").add("shop.properties", "number_from=501");

    assertEquals(0, shop.run(NEXT).exitCode());

    assertEquals(List.of("", "501"), numbers());
    assertEquals(
        List.of("number", "501"),
        Trees.lines(shop.reports().resolve("data/charges.csv")).stream()
            .map(line -> line.substring(0, line.indexOf(',')))
            .toList());
  }

  private List<String> numbers() {
    return Trees.lines(register).stream()
        .skip(1)
        .map(line -> line.substring(line.lastIndexOf(',') + 1))
        .toList();
  }

  @Test
  void oneThatLostItsRowIsRefusedSoThatNothingGoesOutTwice() throws Exception {
    Files.writeString(register, Trees.lines(register).get(0) + "\n");

    assertEquals(2, shop.run(NEXT).exitCode());
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

  /** One bit of the attached figures is another: 120.000 would read 020.000. */
  @Test
  void figuresOfADocumentThatIsNotAsItWasIssuedAreNotRead() throws Exception {
    var statement = shop.reports().resolve(STATEMENT);
    String text = Trees.text(statement);
    Files.writeString(
        statement,
        text.replace("item:rump,120.000", "item:rump,020.000"),
        StandardCharsets.ISO_8859_1);
    assertFalse(Trees.text(statement).equals(text));
    shop.replace("exports/a.csv", "rump,120", "rump,119.9");

    assertEquals(List.of(NoticeCode.DOCUMENT_LOST), codes(shop.run(NEXT)));

    var second = Trees.text(shop.reports().resolve("statements/ann/B1-r2.pdf"));
    assertTrue(second.contains("changes not known"), second);
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
