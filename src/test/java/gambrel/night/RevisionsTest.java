package gambrel.night;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An issued statement never changes silently. */
class RevisionsTest {
  private static final String NEXT = "2026-03-07T02:00";
  private static final String THIRD = "2026-03-08T02:00";

  @TempDir private Path folder;
  private NightShop shop;

  @BeforeEach
  void issueTheFirst() {
    shop = new NightShop(folder.resolve("shop"));
    shop.beef("B1", "ann").beef("B2", "bob");
    shop.add("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
    shop.add("releases.csv", "body,by,on,reason,action");
    shop.add("payments.csv", "customer,body,date,amount");
    assertEquals(0, shop.run(NightShop.NIGHT).exitCode());
  }

  private void correctRump(String net) {
    shop.add("corrections.csv", "bench,3,,net," + net + ",Hetty,2026-03-06T09:00,label misread");
  }

  /** Customer, body, revision and replaced revision, one line for each row. */
  private List<String> register() {
    return Trees.lines(shop.reports().resolve("data/statements.csv")).stream()
        .skip(1)
        .map(line -> line.split(","))
        .map(c -> String.join(" ", c[0], c[1], "r" + c[2], c[9]).strip())
        .toList();
  }

  private String file(String path) {
    return Trees.text(shop.reports().resolve(path));
  }

  @Test
  void aCorrectedWeightMakesARevisionThatSaysWhatItReplacesAndWhatChanged() {
    var first = file("statements/ann/B1-r1.pdf");
    correctRump("119.9");

    shop.run(NEXT);

    assertEquals(List.of("ann B1 r1", "ann B1 r2 1", "bob B2 r1"), register());
    assertEquals(first, file("statements/ann/B1-r1.pdf"));
    var second = file("statements/ann/B1-r2.pdf");
    assertTrue(second.contains("Change[name=item:rump, was=120.000, now=119.900]"), second);
    assertTrue(second.contains("Change[name=body:cutting_loss, was=6.000, now=6.100]"), second);
    assertFalse(second.contains("item:mince, was"), second);
  }

  @Test
  void aRevisionGoesOutOnce() {
    correctRump("119.9");
    shop.run(NEXT);

    shop.run(NEXT);
    shop.run(THIRD);

    assertEquals(List.of("ann B1 r1", "ann B1 r2 1", "bob B2 r1"), register());
  }

  @Test
  void aWeightThatIsCorrectedBackMakesAThird() {
    correctRump("119.9");
    shop.run(NEXT);
    shop.add("corrections.csv", "bench,3,,net,120,Hetty,2026-03-07T09:00,it was right");

    shop.run(THIRD);

    assertEquals(List.of("ann B1 r1", "ann B1 r2 1", "ann B1 r3 2", "bob B2 r1"), register());
  }

  @ParameterizedTest
  @CsvSource({
    "charges.csv,  130.00,          150.00",
    "charges.csv,  Kill,            Slaughter",
    "customers.csv, Ann Dorrin,     Anna Dorrin",
    "shop.properties, name=Hollow,  name=Hill",
    "shop.properties, region=au,    region=uk"
  })
  void pricesNamesAndWordsDoNotRevise(String file, String from, String to) {
    var first = Trees.published(shop.reports().resolve("statements"));
    shop.replace(file, from, to);

    assertEquals(0, shop.run(NEXT).exitCode());

    assertEquals(first, Trees.published(shop.reports().resolve("statements")));
  }

  @Test
  void paymentsDoNotRevise() {
    shop.add("payments.csv", "ann,B1,2026-03-06,50.00");

    shop.run(NEXT);

    assertEquals(List.of("ann B1 r1", "bob B2 r1"), register());
  }

  @Test
  void aReissueGoesOutOnceWithTodaysChargesAndPayments() {
    shop.replace("charges.csv", "130.00", "150.00");
    shop.add("payments.csv", "ann,B1,2026-03-06,50.00");
    shop.add("releases.csv", "B1,Hetty,2026-03-06T09:00,wrong price,reissue");

    shop.run(NEXT);
    shop.run(NEXT);
    shop.run(THIRD);

    assertEquals(List.of("ann B1 r1", "ann B1 r2 1", "bob B2 r1"), register());
    var rows = Trees.lines(shop.reports().resolve("data/statements.csv"));
    assertTrue(rows.get(1).contains(",130.00,13.00,0.00,143.00,,"), rows.get(1));
    assertTrue(rows.get(2).contains(",150.00,15.00,50.00,115.00,1,"), rows.get(2));
  }

  @Test
  void aReissueAtTheVeryMomentOfTheRunGoesOutOnce() {
    shop.add("releases.csv", "B1,Hetty," + NEXT + ",wrong price,reissue");

    shop.run(NEXT);
    shop.run(NEXT);

    assertEquals(List.of("ann B1 r1", "ann B1 r2 1", "bob B2 r1"), register());
  }

  @Test
  void aReissueThatIsNotDueYetWaits() {
    shop.add("releases.csv", "B1,Hetty," + THIRD + ",wrong price,reissue");

    shop.run(NEXT);

    assertEquals(List.of("ann B1 r1", "bob B2 r1"), register());
  }

  @Test
  void moreRevisionsThanTheShopExpectsStayAndFirstStatementsGo() {
    shop.add("shop.properties", "limit.revisions=1").beef("B3", "ann");
    correctRump("119.9");
    shop.add("corrections.csv", "bench,9,,net,119.8,Hetty,2026-03-06T09:00,label misread");

    var outcome = shop.run(NEXT);

    assertEquals(1, outcome.exitCode());
    assertEquals(List.of("ann B1 r1", "ann B3 r1", "bob B2 r1"), register());
    var stops = stops(outcome);
    assertEquals(List.of(NoticeCode.REVISIONS_STOPPED), stops);
    assertTrue(file("data/bodies.csv").contains("B1,beef,,2026-03-02,issued,"));
  }

  @Test
  void asManyRevisionsAsTheShopExpectsGo() {
    shop.add("shop.properties", "limit.revisions=1");
    correctRump("119.9");

    assertEquals(0, shop.run(NEXT).exitCode());

    assertEquals(List.of("ann B1 r1", "ann B1 r2 1", "bob B2 r1"), register());
  }

  @Test
  void reissuesAreNotCountedAmongRevisions() {
    shop.add("shop.properties", "limit.revisions=1");
    shop.add("releases.csv", "B1,Hetty,2026-03-06T09:00,price,reissue");
    shop.add("releases.csv", "B2,Hetty,2026-03-06T09:00,price,reissue");

    assertEquals(0, shop.run(NEXT).exitCode());

    assertEquals(List.of("ann B1 r1", "ann B1 r2 1", "bob B2 r1", "bob B2 r2 1"), register());
  }

  @Test
  void anIssuedBodyWhoseNewFiguresFailIsHeldAndItsLastRevisionStands() {
    correctRump("140");

    assertEquals(1, shop.run(NEXT).exitCode());

    assertEquals(List.of("ann B1 r1", "bob B2 r1"), register());
    assertTrue(file("held/ann/B1.pdf").contains("LOSS_NEGATIVE"));
    assertTrue(Files.exists(shop.reports().resolve("statements/ann/B1-r1.pdf")));
  }

  @Test
  void aStatementIssuedLaterThanTheRunsMomentIsLeftAloneAndSaidSo() {
    correctRump("119.9");
    shop.run(THIRD);

    var outcome = shop.run("2026-03-06T03:00");

    assertEquals(List.of("ann B1 r1", "ann B1 r2 1", "bob B2 r1"), register());
    assertEquals(List.of(NoticeCode.CLOCK_BACK), stops(outcome));
  }

  private static List<NoticeCode> stops(NightOutcome outcome) {
    return NightShop.report(outcome).notices().stream()
        .filter(n -> n.severity() == Severity.STOP)
        .map(n -> n.code())
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "shares.csv,      'body,customer'",
    "charges.csv,     'charge,price'",
    "corrections.csv, 'scale,ticket'",
    "payments.csv,    'customer,amount'",
    "customers.csv,   'customer,email'",
    "releases.csv,    'body,by'",
    "values.csv,      'item,from'"
  })
  void withoutARequiredColumnNothingGoesOut(String file, String header) {
    shop.beef("B3", "ann");
    shop.without(file).add(file, header);

    var outcome = shop.run(NEXT);

    assertEquals(1, outcome.exitCode());
    assertEquals(List.of("ann B1 r1", "bob B2 r1"), register());
    var stop =
        NightShop.report(outcome).notices().stream()
            .filter(n -> n.severity() == Severity.STOP)
            .findFirst()
            .orElseThrow();
    assertEquals(file + ":1", stop.place().toString());
    String message = ENGLISH.message(stop);
    assertTrue(message.endsWith("No statement goes out until it is there."), message);
    assertTrue(file("data/bodies.csv").contains("B3,beef"));
  }

  @Test
  void aStatementWhoseCustomerLostTheBodyIsToldToThePersonAndStands() {
    var first = file("statements/ann/B1-r1.pdf");
    shop.replace("bodies.csv", "B1,beef,2026-03-02,ann", "B1,beef,2026-03-02,bob");

    shop.run(NEXT);

    assertEquals(List.of("ann B1 r1", "bob B1 r1", "bob B2 r1"), register());
    assertEquals(first, file("statements/ann/B1-r1.pdf"));
    var notices = file("data/notices.csv");
    assertTrue(notices.contains("mark,statement-orphaned,,,,,B1,\"ann has a statement"), notices);
    shop.replace("bodies.csv", "B1,beef,2026-03-02,bob", "B1,beef,2026-03-02,ann");
    shop.run(THIRD);
    assertTrue(file("data/notices.csv").contains("B1,\"bob has a statement about B1"));
  }
}
