package gambrel.files.mail;

import gambrel.trade.sending.MailSettings;
import jakarta.activation.DataHandler;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UnsupportedEncodingException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.regex.Pattern;

/**
 * A message with documents attached. The same content gives the same bytes. Every line break and
 * invisible character in a name or subject becomes a blank, so that none of them begins a header,
 * and {@code =?} is parted, so that none is taken for an encoded word (RFC 2047).
 *
 * @param id its id, without angle brackets
 * @param date its date
 * @param sender the sender's name
 * @param name the recipient's name
 * @param address the recipient's address, which is {@linkplain MailAddress#isUsable usable}
 * @param subject the subject
 * @param language BCP 47 tag of the text
 * @param text the text
 * @param documents PDFs by file name, in order
 */
public record MailMessage(
    String id,
    OffsetDateTime date,
    String sender,
    String name,
    String address,
    String subject,
    String language,
    String text,
    Map<String, byte[]> documents) {
  private static final String UTF_8 = "UTF-8";
  private static final Pattern NOT_PRINTED =
      Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}\\p{Cs}\\s]+");

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE, d MMM uuuu HH:mm:ss xx", Locale.ENGLISH);

  /** The message as a file that mail programs open. */
  public byte[] bytes(MailSettings settings) throws IOException {
    var bytes = new ByteArrayOutputStream();
    try {
      mime(settings, Session.getInstance(new Properties())).writeTo(bytes);
    } catch (MessagingException e) {
      throw new IOException(e);
    }
    return bytes.toByteArray();
  }

  /** The message as it is handed over. */
  MimeMessage mime(MailSettings settings, Session session)
      throws MessagingException, UnsupportedEncodingException {
    var message =
        new MimeMessage(session) {
          @Override
          protected void updateMessageID() throws MessagingException {
            setHeader("Message-ID", '<' + id + '>');
          }
        };
    message.setFrom(named(settings.from(), sender));
    message.setRecipient(Message.RecipientType.TO, named(address, name));
    if (!settings.replyTo().isEmpty()) {
      message.setReplyTo(
          new InternetAddress[] {new InternetAddress(MailAddress.ascii(settings.replyTo()))});
    }
    message.setHeader("Date", DATE.format(date));
    message.setSubject(line(subject), UTF_8);
    message.setContentLanguage(new String[] {language});
    // Keeps answering machines silent (RFC 3834, 5).
    message.setHeader("Auto-Submitted", "auto-generated");
    message.setContent(new Parts("=_" + id.replaceFirst("@.*", "")));
    message.saveChanges();
    return message;
  }

  /** The text and the documents between boundaries that come from the input. */
  private final class Parts extends MimeMultipart {
    private Parts(String boundary) throws MessagingException {
      contentType = "multipart/mixed; boundary=\"" + boundary + '"';
      var body = new MimeBodyPart();
      body.setText(text, UTF_8);
      body.setHeader("Content-Transfer-Encoding", "quoted-printable");
      body.setContentLanguage(new String[] {language});
      addBodyPart(body);
      for (var document : documents.entrySet()) {
        var part = new MimeBodyPart();
        var source = new ByteArrayDataSource(document.getValue(), "application/pdf");
        part.setDataHandler(new DataHandler(source));
        part.setFileName(document.getKey());
        part.setHeader("Content-Transfer-Encoding", "base64");
        addBodyPart(part);
      }
    }
  }

  private static InternetAddress named(String address, String name)
      throws UnsupportedEncodingException {
    return new InternetAddress(MailAddress.ascii(address), line(name), UTF_8);
  }

  private static String line(String text) {
    return NOT_PRINTED.matcher(text).replaceAll(" ").strip().replace("=?", "= ?");
  }

  /** To whom it is handed over: the recipient and, where there is one, the shop's copy. */
  List<InternetAddress> recipients(MailSettings settings) throws MessagingException {
    var recipient = new InternetAddress(MailAddress.ascii(address));
    return settings.copyTo().isEmpty()
        ? List.of(recipient)
        : List.of(recipient, new InternetAddress(MailAddress.ascii(settings.copyTo())));
  }
}
