package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.mail.MailFront;
import gambrel.files.publish.HastyDisk;
import gambrel.trade.reckoning.Progress;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a message with statements says. */
class MailWordsTest {
  @TempDir private Path folder;

  private NightShop shop(String language) {
    var shop = new NightShop(folder.resolve("shop")).without("customers.csv");
    shop.add("shop.properties", "contact=02 5550 0199");
    shop.add("customers.csv", "customer,name,email,language");
    shop.add("customers.csv", "ann,Ann Dorrin & Söhne,ann@dorrin.example," + language);
    shop.add("mail.properties", "from=office@shop.example", "host=localhost");
    return shop.beef("B1", "ann");
  }

  private MimeMessage message(NightShop shop, String night) throws Exception {
    shop.done(night);
    var inputs = Inputs.read(shop.write(), Progress.NONE);
    var documents = PdfDocuments.of(folder.resolve("shop"), inputs.shop().settings());
    new MailRun(inputs, documents, new HastyDisk())
        .dryRun(shop.reports(), NightShop.moment(night), Optional.empty());
    var outbox = shop.reports().resolve("outbox");
    var file = outbox.resolve(Trees.files(outbox).get(0));
    try (var bytes = Files.newInputStream(file)) {
      return new MimeMessage(Session.getInstance(new Properties()), bytes);
    }
  }

  private static String text(MimeMessage message) throws Exception {
    var parts = (MimeMultipart) message.getContent();
    return parts.getBodyPart(0).getContent().toString().replace("\r\n", "\n");
  }

  @Test
  void itSaysWhatIsAttachedAndFromWhom() throws Exception {
    var message = message(shop(""), NightShop.NIGHT);

    assertEquals("Take-home statement for B1 from Hollow Lane Meats", message.getSubject());
    assertEquals(
        """
        Dear Ann Dorrin & Söhne,

        Your take-home statement is attached.

        - Beef B1: B1-r1.pdf

        If something is not right, or this message was not meant for you, please tell us: just \
        reply to it.

        Hollow Lane Meats
        02 5550 0199
        """,
        text(message));
  }

  @ParameterizedTest
  @CsvSource({
    "en, Dear Ann, This is revision 2. It replaces revision 1 of 6 March 2026",
    "de, Guten Tag Ann, Dies ist Fassung 2. Sie ersetzt Fassung 1 vom 6. März 2026",
    "fr, Bonjour Ann, Ceci est la révision 2. Elle remplace la révision 1 du 6 mars 2026",
    "es, 'Hola, Ann', Esta es la revisión 2. Sustituye a la revisión 1 del 6 de marzo de 2026"
  })
  void aRevisionSaysWhichStatementItReplaces(String language, String greeting, String replaces)
      throws Exception {
    var shop = shop(language);
    shop.done(NightShop.NIGHT);
    shop.replace("exports/a.csv", ",rump,120", ",rump,119");

    var message = message(shop, "2026-03-07T02:00");

    assertTrue(text(message).startsWith(greeting), text(message));
    assertTrue(text(message).contains(replaces), text(message));
    assertTrue(message.getContentLanguage()[0].startsWith(language));
    assertEquals("[B1-r2.pdf]", MailFront.attachments(message).keySet().toString());
  }

  @Test
  void theShopsOwnTemplateIsUsed() throws Exception {
    var shop = shop("");
    shop.add("shop.properties", "templates=mine");
    shop.add("mine/mail.ftl", "<#ftl output_format=\"plainText\">", "Hi! ${statements[0].what}");

    assertEquals("Hi! Beef B1: B1-r1.pdf\n", text(message(shop, NightShop.NIGHT)));
  }

  @Test
  void aMistakeInTheTemplateSendsNothingAndSaysWhere() throws Exception {
    var shop = shop("");
    shop.add("shop.properties", "templates=mine");
    shop.add("mine/mail.ftl", "${gretting}");
    shop.done(NightShop.NIGHT);
    var inputs = Inputs.read(shop.write(), Progress.NONE);
    var documents = PdfDocuments.of(folder.resolve("shop"), inputs.shop().settings());

    var outcome =
        new MailRun(inputs, documents, new HastyDisk())
            .dryRun(shop.reports(), NightShop.moment(NightShop.NIGHT), Optional.empty());

    assertEquals(2, outcome.exitCode());
    assertTrue(outcome.toString().contains("mail.ftl, line 1"), outcome::toString);
  }
}
