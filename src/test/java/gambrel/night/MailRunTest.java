package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.mail.MailFront;
import gambrel.files.mail.MailFront.Stage;
import gambrel.files.mail.MailFront.Way;
import gambrel.files.mail.TestCertificate;
import gambrel.files.publish.HastyDisk;
import gambrel.files.publish.OutputFolder;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.sending.MailSettings.Security;
import gambrel.trade.sending.Unsent;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import javax.net.ssl.SSLSocketFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Statements are mailed to a real server, with and without trouble on the way. */
@Timeout(120)
class MailRunTest {
  private static final Map<String, String> ALL_SENT =
      Map.of("ann B1", "sent", "ann B2", "sent", "bob B3", "sent", "cleo B4", "sent");

  @TempDir private static Path shared;
  private static TestCertificate certificate;

  @TempDir private Path folder;
  private MailFront front;
  private MailShop shop;

  @BeforeAll
  static void makeCertificate() throws Exception {
    certificate = TestCertificate.of("localhost", shared);
  }

  @BeforeEach
  void issue() throws IOException {
    open(Security.TLS);
  }

  private void open(Security security) throws IOException {
    if (front != null) {
      front.close();
    }
    front = new MailFront(certificate, security);
    shop = new MailShop(folder.resolve("shop" + security), front.port(), security).issued();
  }

  @AfterEach
  void close() {
    front.close();
  }

  private static SSLSocketFactory trusted() {
    return certificate.tls().getSocketFactory();
  }

  private NightOutcome.Mailed send() {
    return MailShop.mailed(shop.send(trusted()));
  }

  private static String said(Unsent unsent) {
    return NoticeWords.ENGLISH.message(unsent.notice());
  }

  @ParameterizedTest
  @EnumSource
  void everyCustomerGetsOneMessageWithAllHisStatements(Security security) throws Exception {
    open(security);

    var mailed = send();

    assertEquals(0, mailed.exitCode());
    assertEquals(3, mailed.sent().size());
    assertEquals(
        Map.of(
            "ann@dorrin.example B1-r1.pdf", 1,
            "ann@dorrin.example B2-r1.pdf", 1,
            "bob@tallow.example B3-r1.pdf", 1,
            "cleo@suet.example B4-r1.pdf", 1),
        front.documents());
    assertEquals(ALL_SENT, shop.states());
  }

  @Test
  void theAttachedDocumentIsTheIssuedOne() throws Exception {
    send();

    var cleo = front.taken().get(2);

    assertEquals("Cleo Suet <cleo@suet.example>", cleo.getAllRecipients()[0].toString());
    assertEquals("Hollow Lane Meats <office@shop.example>", cleo.getFrom()[0].toString());
    assertArrayEquals(
        Files.readAllBytes(shop.files().reports().resolve("statements/cleo/B4-r1.pdf")),
        MailFront.attachments(cleo).get("B4-r1.pdf"));
  }

  @Test
  void aSecondSendingSendsNothing() throws Exception {
    send();

    assertEquals(0, send().sent().size());
    assertEquals(3, front.taken().size());
  }

  @Test
  void aRevisionGoesOutAndTheStatementThatItReplacesDoesNot() throws Exception {
    shop.files().replace("exports/a.csv", ",rump,120", ",rump,119");
    shop.files().add("shop.properties", "limit.revisions=9");
    shop.files().done("2026-03-06T03:00");

    send();

    assertEquals(
        List.of("ann@dorrin.example B1-r2.pdf", "ann@dorrin.example B2-r2.pdf"),
        front.documents().keySet().stream().filter(d -> d.startsWith("ann")).toList());
  }

  @Test
  void aBodyThatIsHeldNowIsNotSent() throws Exception {
    shop.files().weigh("bench", "05T12:00:00", "B3", "nothing", "1");

    var mailed = send();

    assertEquals(1, mailed.exitCode());
    assertEquals(
        List.of("Not mailed: statements/bob/B3-r1.pdf for customer bob. The body is held."),
        mailed.unsent().stream().map(MailRunTest::said).toList());
    assertEquals(2, front.taken().size());
  }

  @Test
  void aStatementOfABodyThatIsSomebodyElsesNowIsNotSent() throws Exception {
    shop.files().replace("bodies.csv", "B3,beef,2026-03-02,bob", "B3,beef,2026-03-02,dan");

    var mailed = send();

    assertEquals(Unsent.Why.OWNER, mailed.unsent().get(0).why());
    assertEquals(2, front.taken().size());
  }

  @Test
  void aDocumentThatWasChangedIsNotSent() throws Exception {
    Files.writeString(shop.files().reports().resolve("statements/bob/B3-r1.pdf"), "changed");

    var mailed = send();

    assertEquals(1, mailed.exitCode());
    assertEquals(Unsent.Why.LOST, mailed.unsent().get(0).why());
    assertEquals(2, front.taken().size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bob@tallow.example, eve@x.example",
        "bob@tallow.example;eve@x.example",
        "Bob <bob@tallow.example>",
        "bob@tallow",
        "bob tallow@tallow.example",
        "bob",
        "\"bob@tallow.example\nBcc: eve@x.example\"",
        "bob@fa\u00df.example",
        "b\u00f6b@tallow.example",
        "bob@tallow\u202e.example"
      })
  void anAddressThatIsNotOnePlainOneIsRefused(String address) throws Exception {
    String cell = address.startsWith("\"") ? address : '"' + address + '"';
    shop.files().replace("customers.csv", "bob@tallow.example", cell);

    var mailed = send();

    assertEquals(Unsent.Why.ADDRESS, mailed.unsent().get(0).why());
    assertEquals(2, front.taken().size());
    assertFalse(said(mailed.unsent().get(0)).contains("@"));
  }

  @Test
  void theNightNamesAnAddressThatCannotBeUsed() {
    shop.files().replace("customers.csv", "bob@tallow.example", "bob at tallow");

    var notices = shop.files().done("2026-03-07T02:00").notices();

    assertTrue(notices.stream().anyMatch(n -> n.code() == NoticeCode.UNSENT));
  }

  @ParameterizedTest
  @EnumSource(names = {"RECIPIENT", "DATA", "END"})
  void aTemporaryRefusalIsTriedAgainTheNextTime(Stage stage) throws Exception {
    front.make((at, n, line) -> at == stage && n == 2 ? "452 4.2.2 mailbox full" : Way.ON);

    var first = send();

    assertEquals(0, first.exitCode());
    assertEquals(1, first.waiting());
    assertEquals("refused", shop.states().get("bob B3"));
    front.make((at, n, line) -> Way.ON);
    send();
    assertEquals(ALL_SENT, shop.states());
    assertEquals(3, front.taken().size());
  }

  @ParameterizedTest
  @EnumSource(names = {"RECIPIENT", "DATA", "END"})
  void aFinalRefusalIsNotTriedAgainAndStandsOnTheMorningSheet(Stage stage) throws Exception {
    front.make(
        (at, n, line) ->
            at == stage && n == 2 ? "550 5.1.1 <bob@tallow.example> unknown here" : Way.ON);
    assertEquals(1, send().exitCode());
    front.make((at, n, line) -> Way.ON);

    var second = send();

    assertEquals(1, second.exitCode());
    assertEquals(2, front.taken().size());
    var notices = shop.files().done("2026-03-07T02:00").notices();
    var notice = notices.stream().filter(n -> n.code() == NoticeCode.UNSENT).findFirst();
    String words = NoticeWords.ENGLISH.message(notice.orElseThrow());
    assertTrue(words.contains("550 5.1.1"), words);
    assertFalse(words.contains("@"), words);
  }

  @Test
  void aFinalRefusalIsTriedAgainWhenTheAddressIsCorrected() throws Exception {
    front.make((at, n, line) -> line.contains("bob@tallow") ? "550 unknown" : Way.ON);
    send();
    shop.files().replace("customers.csv", "bob@tallow.example", "bob@suet.example");

    assertEquals(0, send().exitCode());

    assertEquals(ALL_SENT, shop.states());
  }

  @Test
  void aRefusedSenderIsNoCustomersFault() throws Exception {
    front.make((at, n, line) -> at == Stage.SENDER ? "550 you may not send" : Way.ON);

    assertEquals(3, send().waiting());
  }

  @ParameterizedTest
  @CsvSource({
    "SENDER, BREAK_BEFORE, refused",
    "RECIPIENT, BREAK_BEFORE, refused",
    "DATA, BREAK_AFTER, refused",
    "END, BREAK_BEFORE, unknown",
    "END, BREAK_AFTER, unknown"
  })
  void aBrokenConnectionLeavesInDoubtOnlyWhatTheServerMayHaveTaken(
      Stage stage, Way way, String state) throws Exception {
    front.make((at, n, line) -> at == stage && n == 2 ? way : Way.ON);

    var first = send();

    assertEquals(state, shop.states().get("bob B3"));
    assertEquals(2, first.sent().size());
    front.make((at, n, line) -> Way.ON);
    var second = send();
    boolean unsure = state.equals("unknown");
    assertEquals(unsure ? 1 : 0, second.exitCode());
    assertEquals(
        unsure ? Unsent.Why.UNSURE : null,
        second.unsent().stream().map(Unsent::why).findFirst().orElse(null));
    assertTrue(front.documents().values().stream().allMatch(times -> times == 1));
  }

  @Test
  void whatIsUnsureGoesAgainOnlyWhenItIsAskedFor() throws Exception {
    front.make((at, n, line) -> at == Stage.END && n == 2 ? Way.BREAK_BEFORE : Way.ON);
    send();
    front.make((at, n, line) -> Way.ON);

    var again = shop.send(trusted(), new HastyDisk(), Optional.of("bob/B3"));

    assertEquals(1, MailShop.mailed(again).sent().size());
    assertEquals(ALL_SENT, shop.states());
  }

  @Test
  void anUnknownStatementCannotBeSentAgain() {
    var again = shop.send(trusted(), new HastyDisk(), Optional.of("dan/B5"));

    assertEquals(2, again.exitCode());
  }

  @Test
  void aSlowServerIsWaitedForAndAStuckOneLeavesDoubt() throws Exception {
    front.make((at, n, line) -> at == Stage.END ? Way.SLOWLY : Way.ON);

    assertEquals(3, send().sent().size());

    shop.files().add("customers.csv", "eve,Eve Leaf,eve@leaf.example,,").beef("B6", "eve");
    shop.files().done("2026-03-06T04:00");
    var impatient = shop.server(trusted(), "", Duration.ofMillis(300));
    shop.send(impatient, new HastyDisk(), Optional.empty(), false);
    assertEquals("unknown", shop.states().get("eve B6"));
  }

  @Test
  void tenFailuresInARowStop() throws Exception {
    shop.files().add("shop.properties", "limit.revisions=99");
    for (int i = 10; i < 24; i++) {
      shop.files().add("customers.csv", "c" + i + ",C" + i + ",c@c" + i + ".example,,");
      shop.files().beef("C" + i, "c" + i);
    }
    shop.files().done("2026-03-06T04:00");
    var tried = new ArrayList<String>();
    front.make(
        (at, n, line) -> {
          if (at == Stage.RECIPIENT) {
            tried.add(line);
          }
          return at == Stage.RECIPIENT ? "450 not now" : Way.ON;
        });

    var mailed = send();

    assertEquals(4, mailed.exitCode());
    assertEquals(10, tried.size());
    assertEquals(17, mailed.waiting());
  }

  @Test
  void moreMessagesThanTheLimitWaitUntilAllAreAskedFor() throws Exception {
    shop.files().add("mail.properties", "most_at_once=2");

    var first = send();

    assertTrue(first.overLimit());
    assertEquals(1, first.exitCode());
    assertEquals(Map.of(), shop.states());
    shop.send(shop.server(trusted()), new HastyDisk(), Optional.empty(), true);
    assertEquals(ALL_SENT, shop.states());
  }

  @Test
  void statementsFromBeforeADayAreLeft() throws Exception {
    shop.files().add("mail.properties", "since=2026-03-07");

    assertEquals(0, send().sent().size());
  }

  @Test
  void aTrialGoesToOneAddressAndDoesNotCount() throws Exception {
    shop.files().add("mail.properties", "all_to=me@shop.example");

    send();

    assertEquals(3, front.taken().size());
    assertTrue(front.documents().keySet().stream().allMatch(d -> d.startsWith("me@shop.example")));
    assertEquals(Map.of(), shop.states());
    assertEquals(ALL_SENT, shop.states("data/sent-trial.csv"));
    shop.files().replace("mail.properties", "all_to=me@shop.example", "reply_to=me@shop.example");
    send();
    assertEquals(ALL_SENT, shop.states());
    assertEquals(6, front.taken().size());
  }

  @Test
  void aCopyGoesToTheShopAndItsRefusalIsNoCustomersFault() throws Exception {
    shop.files().add("mail.properties", "copy_to=files@shop.example");
    front.make((at, n, line) -> n == 1 && line.contains("files@") ? "550 no" : Way.ON);

    assertEquals(1, send().waiting());
    send();

    assertEquals(6, front.taken().size());
    assertEquals(ALL_SENT, shop.states());
  }

  @Test
  void aCertificateThatNobodySignedIsNotTrusted() throws Exception {
    var outcome = shop.send((SSLSocketFactory) SSLSocketFactory.getDefault());

    assertEquals(4, outcome.exitCode());
    assertEquals(Map.of(), shop.states());
    assertEquals(List.of(), front.heard());
  }

  @ParameterizedTest
  @EnumSource(names = {"TLS", "STARTTLS"})
  void aCertificateForAnotherNameIsNotTrusted(Security security) throws Exception {
    var other = TestCertificate.of("mail.shop.example", shared);
    try (var elsewhere = new MailFront(other, security)) {
      var stranger = new MailShop(folder.resolve("stranger"), elsewhere.port(), security).issued();

      var outcome = stranger.send(other.tls().getSocketFactory());

      assertEquals(4, outcome.exitCode());
      assertFalse(elsewhere.heard().stream().anyMatch(line -> line.startsWith("MAIL")));
    }
  }

  @Test
  void aServerWithoutStartTlsHearsNothingOfAMessage() throws Exception {
    open(Security.NONE);
    shop.files().replace("mail.properties", "security=NONE", "security=starttls");

    var outcome = shop.send(trusted());

    assertEquals(4, outcome.exitCode());
    assertFalse(front.heard().stream().anyMatch(line -> line.startsWith("MAIL")));
  }

  @Test
  void withoutProtectionOnlyThisMachineIsReached() {
    shop.files().replace("mail.properties", "security=TLS", "security=none");
    shop.files().replace("mail.properties", "host=localhost", "host=mail.shop.example");

    assertEquals(2, shop.send(trusted()).exitCode());
  }

  @Test
  void aPasswordIsSentOnAProtectedConnectionAndAWrongOneStops() throws Exception {
    open(Security.STARTTLS);
    shop.files().add("mail.properties", "user=office");
    front.account("office", "a secret");

    var wrong =
        shop.send(
            shop.server(trusted(), "another", Duration.ofSeconds(9)),
            new HastyDisk(),
            Optional.empty(),
            false);
    assertEquals(4, wrong.exitCode());
    assertFalse(wrong.toString().contains("another"));

    var right =
        shop.send(
            shop.server(trusted(), "a secret", Duration.ofSeconds(9)),
            new HastyDisk(),
            Optional.empty(),
            false);
    assertEquals(0, right.exitCode());
    int tls = front.heard().indexOf("STARTTLS");
    assertTrue(front.heard().subList(0, tls).stream().noneMatch(line -> line.startsWith("AUTH")));
  }

  @Test
  void aServerThatIsNotThereStopsAndNothingIsInDoubt() throws Exception {
    front.close();

    var outcome = shop.send(trusted());

    assertEquals(4, outcome.exitCode());
    assertEquals(Map.of(), shop.states());
  }

  @Test
  void whileAnotherRunHoldsTheFolderNothingIsSent() throws Exception {
    try (var other = OutputFolder.open(shop.files().reports(), new HastyDisk())) {
      assertTrue(other.changes().count() == 0);
      assertEquals(3, shop.send(trusted()).exitCode());
    }
    assertEquals(0, front.taken().size());
  }

  @Test
  void aTableOfWhatWasSentThatWasChangedStopsAllSending() throws Exception {
    send();
    var table = shop.files().reports().resolve("data/sent.csv");
    Files.writeString(table, Files.readString(table).replace("cleo,B4", "cleo,B9"));
    assertEquals(2, shop.send(trusted()).exitCode());

    Files.delete(table);
    assertEquals(2, shop.send(trusted()).exitCode());

    assertEquals(3, front.taken().size());
    var notices = shop.files().done("2026-03-07T02:00").notices();
    assertTrue(notices.stream().anyMatch(n -> n.code() == NoticeCode.UNSENT));
  }

  @Test
  void aSpreadsheetThatSavesTheTableWithSemicolonsDoesNoHarm() throws Exception {
    send();
    var table = shop.files().reports().resolve("data/sent.csv");
    Files.writeString(table, Files.readString(table).replace(',', ';'));

    assertEquals(0, send().sent().size());
  }

  @Test
  void aMistypedSettingStopsSendingAndTheNight() {
    shop.files().add("mail.properties", "rely_to=me@shop.example");

    assertEquals(2, shop.send(trusted()).exitCode());
    var notices = shop.files().done("2026-03-07T02:00").notices();
    assertTrue(notices.stream().anyMatch(n -> n.code() == NoticeCode.COLUMN_UNKNOWN));
  }

  @Test
  void withoutSettingsNothingIsAsBeforeAndSendSaysHowToBegin() {
    shop.files().without("mail.properties");

    var refused = assertThrows(RefusedException.class, () -> shop.mail(new HastyDisk()));

    assertTrue(refused.getMessage().contains("make one with the lines from="));
  }

  @Test
  void aRerunOfTheNightAfterTheSendingEndsAsItDid() throws Exception {
    var before = Trees.published(shop.files().reports());
    front.make((at, n, line) -> at == Stage.RECIPIENT ? "550 no" : Way.ON);
    send();

    shop.files().done(NightShop.NIGHT);

    var after = Trees.published(shop.files().reports());
    after.keySet().removeAll(List.of("data/sent.csv", ".sent"));
    assertEquals(before, after);
  }

  @Test
  void aDryRunWritesMessagesThatAMailProgramOpensAndContactsNobody() throws Exception {
    var reports = shop.files().reports();
    Files.createDirectories(reports.resolve("outbox"));
    Files.writeString(reports.resolve("outbox/old.eml"), "of last week");

    var outcome =
        shop.mail(new HastyDisk())
            .dryRun(reports, NightShop.moment(MailShop.MORNING), Optional.empty());

    assertEquals(0, outcome.exitCode());
    assertEquals(List.of(), front.heard());
    assertEquals(Map.of(), shop.states());
    assertEquals(
        List.of("ann-20260306-020000.eml", "bob-20260306-020000.eml", "cleo-20260306-020000.eml"),
        Trees.files(reports.resolve("outbox")));
    var bytes = Files.readAllBytes(reports.resolve("outbox/ann-20260306-020000.eml"));
    var message =
        new MimeMessage(Session.getInstance(new Properties()), new ByteArrayInputStream(bytes));
    assertEquals(2, MailFront.attachments(message).size());
    assertEquals("B1 B2", ((MimeMultipart) message.getContent()).getBodyPart(0).getContent());
  }
}
