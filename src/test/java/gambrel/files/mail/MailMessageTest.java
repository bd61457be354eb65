package gambrel.files.mail;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.sending.MailSettings;
import gambrel.trade.sending.MailSettings.Security;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.ByteArrayInputStream;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Messages as a mail program reads them. */
class MailMessageTest {
  private static final MailSettings SETTINGS =
      new MailSettings(
          "office@shop.example",
          "localhost",
          25,
          Security.NONE,
          "",
          "",
          "answers@shop.example",
          "files@shop.example",
          "",
          LocalDate.MIN,
          50);

  private static final byte[] DOCUMENT = new byte[70_000];

  static {
    for (int i = 0; i < DOCUMENT.length; i++) {
      DOCUMENT[i] = (byte) (i * 31);
    }
  }

  private static MailMessage message(String name, String address, String subject, String text) {
    return new MailMessage(
        "f00d@shop.example",
        OffsetDateTime.parse("2026-03-06T08:00:00+11:00"),
        name,
        name,
        address,
        subject,
        "fr-CA",
        text,
        Map.of("B1-r1.pdf", DOCUMENT));
  }

  private static MimeMessage read(MailMessage message) throws Exception {
    var session = Session.getInstance(new Properties());
    return new MimeMessage(session, new ByteArrayInputStream(message.bytes(SETTINGS)));
  }

  static Stream<String> names() {
    return Stream.of(
        "Ann Dorrin",
        "Zoë Đặng-Müller",
        "Ann\r\nBcc: eve@x.example",
        "Ann\nTo: eve@x.example\n\nHello",
        "Ann\u2028Bcc: eve@x.example",
        "Ann\" <eve@x.example>, \"",
        "<eve@x.example>",
        "eve@x.example, bob@x.example;",
        "Ann (the \\ one) \\",
        "ab\u202Ecd\u200F\u2066ef",
        "שלום",
        "=?UTF-8?Q?Bcc:_eve=40x.example?=",
        "n".repeat(300),
        "ü".repeat(300),
        "\ud800 alone",
        "");
  }

  @ParameterizedTest
  @MethodSource("names")
  void noNameChangesHeadersOrRecipients(String name) throws Exception {
    var made = message(name, "ann@dorrin.example", name, "text");

    var read = read(made);

    assertEquals(
        List.of(
            "Date",
            "From",
            "Reply-To",
            "To",
            "Message-ID",
            "Subject",
            "MIME-Version",
            "Content-Type",
            "Content-Language",
            "Auto-Submitted"),
        Collections.list(read.getAllHeaders()).stream().map(header -> header.getName()).toList());
    assertEquals(1, read.getAllRecipients().length);
    var to = (InternetAddress) read.getAllRecipients()[0];
    var from = (InternetAddress) read.getFrom()[0];
    assertEquals("ann@dorrin.example", to.getAddress());
    assertEquals("office@shop.example", from.getAddress());
    String shown =
        name.replaceAll("[\\r\\n\\u2028\\u202E\\u200F\\u2066\\ud800]+", " ")
            .strip()
            .replace("=?", "= ?");
    assertEquals(shown, Optional.ofNullable(to.getPersonal()).orElse(""));
    assertEquals(
        shown.replaceAll("\\s", ""),
        Optional.ofNullable(read.getSubject()).orElse("").replaceAll("\\s", ""));
    assertEquals(
        List.of("ann@dorrin.example", "files@shop.example"),
        made.recipients(SETTINGS).stream().map(InternetAddress::toString).toList(),
        "the envelope");
  }

  @Test
  void textLanguageAndDocumentsComeThroughUnchanged() throws Exception {
    String text = "Bonjour Zoë,\n\n.\n..\nFrom here on: " + "long ".repeat(400) + "\n€ ½ −\n";

    var read = read(message("Zoë", "z@x.example", "Relevé de découpe", text));

    var parts = (MimeMultipart) read.getContent();
    var body = parts.getBodyPart(0);
    assertEquals(text, body.getContent().toString().replace("\r\n", "\n"));
    assertTrue(body.getContentType().contains("charset=UTF-8"), body.getContentType());
    assertEquals("fr-CA", body.getHeader("Content-Language")[0]);
    assertEquals("fr-CA", read.getContentLanguage()[0]);
    assertEquals("application/pdf; name=B1-r1.pdf", parts.getBodyPart(1).getContentType());
    assertArrayEquals(DOCUMENT, MailFront.attachments(read).get("B1-r1.pdf"));
    assertEquals("Fri, 6 Mar 2026 08:00:00 +1100", read.getHeader("Date")[0]);
    assertEquals("<f00d@shop.example>", read.getMessageID());
  }

  @Test
  void theSameContentHasTheSameBytes() throws Exception {
    var one = message("Ann", "ann@dorrin.example", "s", "t").bytes(SETTINGS);

    assertArrayEquals(one, message("Ann", "ann@dorrin.example", "s", "t").bytes(SETTINGS));
  }

  @ParameterizedTest
  @CsvSource({
    "jo@müller.example, jo@xn--mller-kva.example",
    "jo@xn--mller-kva.example, jo@xn--mller-kva.example",
    "jo@例え.テスト, jo@xn--r8jz45g.xn--zckzah"
  })
  void aDomainInAnyLettersIsWrittenInAscii(String address, String ascii) throws Exception {
    assertTrue(MailAddress.isUsable(address));

    var to = (InternetAddress) read(message("Jo", address, "s", "t")).getAllRecipients()[0];

    assertEquals(ascii, to.getAddress());
  }
}
