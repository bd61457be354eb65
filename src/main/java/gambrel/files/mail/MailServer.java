package gambrel.files.mail;

import gambrel.trade.sending.MailSettings;
import gambrel.trade.sending.MailSettings.Security;
import gambrel.trade.sending.Reply;
import gambrel.trade.sending.SentState;
import jakarta.mail.Address;
import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.URLName;
import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Pattern;
import javax.net.ssl.SSLSocketFactory;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPTransport;

/**
 * The shop's mail server. The connection is protected as the settings say, and the server's
 * certificate must be valid for its name.
 */
public final class MailServer implements AutoCloseable {
  /** A server may think for minutes about a message (RFC 5321, 4.5.3.2). */
  public static final Duration PATIENCE = Duration.ofMinutes(5);

  private static final Pattern ADDRESS = Pattern.compile("[^\\s<>]*@[^\\s<>]*");
  private static final int MOST_WORDS = 200;

  private final MailSettings settings;
  private final String password;
  private final Session session;
  private Optional<Line> line = Optional.empty();

  /**
   * A server that is not connected.
   *
   * @param password empty if the settings name no user
   * @param sockets makes protected connections, and decides which certificates are valid
   * @param patience how long to wait for an answer
   */
  public MailServer(
      MailSettings settings, String password, SSLSocketFactory sockets, Duration patience) {
    this.settings = settings;
    this.password = password;
    var properties = new Properties();
    String millis = Long.toString(patience.toMillis());
    properties.put("mail.smtp.connectiontimeout", millis);
    properties.put("mail.smtp.timeout", millis);
    properties.put("mail.smtp.writetimeout", millis);
    properties.put("mail.smtp.from", MailAddress.ascii(settings.from()));
    properties.put("mail.smtp.auth", Boolean.toString(!settings.user().isEmpty()));
    properties.put("mail.smtp.quitwait", "false");
    properties.put("mail.smtp.ssl.socketFactory", sockets);
    properties.put("mail.smtp.ssl.checkserveridentity", "true");
    properties.put("mail.smtp.ssl.protocols", "TLSv1.2 TLSv1.3");
    String starttls = Boolean.toString(settings.security() == Security.STARTTLS);
    properties.put("mail.smtp.starttls.enable", starttls);
    properties.put("mail.smtp.starttls.required", starttls);
    properties.put("mail.smtp.ssl.enable", Boolean.toString(settings.security() == Security.TLS));
    session = Session.getInstance(properties);
  }

  /** A connection that remembers how far a message came. */
  private static final class Line extends SMTPTransport {
    private boolean senderTaken;
    private boolean ended;

    private Line(Session session, MailSettings settings) {
      super(session, new URLName("smtp", settings.host(), settings.port(), null, null, null));
    }

    @Override
    protected void rcptTo() throws MessagingException {
      senderTaken = true;
      super.rcptTo();
    }

    @Override
    protected void finishData() throws IOException, MessagingException {
      ended = true;
      super.finishData();
    }
  }

  /**
   * Connects, unless the connection stands.
   *
   * @throws IOException if that fails; nothing was handed over
   */
  public void connect() throws IOException {
    if (line.filter(Line::isConnected).isPresent()) {
      return;
    }
    close();
    var fresh = new Line(session, settings);
    try {
      boolean known = !settings.user().isEmpty();
      fresh.connect(
          settings.host(),
          settings.port(),
          known ? settings.user() : null,
          known ? password : null);
      line = Optional.of(fresh);
    } catch (AuthenticationFailedException e) {
      throw new IOException("the mail server refuses user and password: " + words(e), e);
    } catch (MessagingException e) {
      throw new IOException("the mail server cannot be reached safely: " + words(e), e);
    }
  }

  /** Hands a message over to the server, which is connected. */
  public Reply handOver(MailMessage message) throws IOException {
    var to = line.orElseThrow();
    to.senderTaken = false;
    to.ended = false;
    try {
      var recipients = message.recipients(settings);
      to.sendMessage(message.mime(settings, session), recipients.toArray(Address[]::new));
      return Reply.SENT;
    } catch (MessagingException e) {
      int code = to.senderTaken ? code(e, MailAddress.ascii(message.address())) : 0;
      close();
      return code == 0 && to.ended ? Reply.UNKNOWN : new Reply(SentState.REFUSED, code, words(e));
    }
  }

  /**
   * The reply to the message or its recipient; 0 if the connection broke, or for the shop's copy.
   */
  private static int code(MessagingException refusal, String recipient) {
    for (Exception e = refusal; e != null; e = next(e)) {
      if (e instanceof SMTPAddressFailedException failed
          && failed.getAddress().getAddress().equals(recipient)) {
        return Math.max(0, failed.getReturnCode());
      }
      if (e instanceof SMTPSendFailedException failed) {
        return Math.max(0, failed.getReturnCode());
      }
    }
    return 0;
  }

  private static Exception next(Exception e) {
    return e instanceof MessagingException problem ? problem.getNextException() : null;
  }

  /** The server's words on one line, without addresses. */
  private static String words(MessagingException refusal) {
    Exception last = refusal;
    while (next(last) != null) {
      last = next(last);
    }
    String plain = ADDRESS.matcher(String.valueOf(last.getMessage())).replaceAll("…");
    String line = plain.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    return line.substring(0, Math.min(MOST_WORDS, line.length()));
  }

  /** Ends the connection, if there is one. */
  @Override
  public void close() {
    var ending = line;
    line = Optional.empty();
    try {
      if (ending.isPresent()) {
        ending.get().close();
      }
    } catch (MessagingException e) {
      // The connection is gone already.
      return;
    }
  }
}
