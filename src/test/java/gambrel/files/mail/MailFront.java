package gambrel.files.mail;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import gambrel.trade.sending.MailSettings.Security;
import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import javax.net.ssl.SSLSocket;

/**
 * A mail server with a front that makes trouble. The front speaks TLS, passes on what it hears line
 * by line, and may refuse, wait or break off at any stage of a message.
 */
public final class MailFront implements AutoCloseable {
  /** Stages of handing a message over. */
  public enum Stage {
    /** {@code MAIL FROM}. */
    SENDER,
    /** {@code RCPT TO}. */
    RECIPIENT,
    /** {@code DATA}. */
    DATA,
    /** The dot that ends the message. */
    END
  }

  /** What the front does at a stage. */
  public enum Way {
    /** Passes the line on. */
    ON,
    /** Breaks off before the server hears the line. */
    BREAK_BEFORE,
    /** Breaks off after the server took the line, before the client hears the answer. */
    BREAK_AFTER,
    /** Passes the line on, and holds the answer back for a second. */
    SLOWLY
  }

  /** Trouble at a stage of the {@code n}th message, from 1. */
  @FunctionalInterface
  public interface Trouble {
    /** A way, or a reply such as {@code 550 no such user} that is given at once. */
    Object at(Stage stage, int n, String line) throws IOException;
  }

  private final GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", "smtp"));
  private final TestCertificate certificate;
  private final Security security;
  private final ServerSocket door;
  private final AtomicInteger messages = new AtomicInteger();
  private final List<String> heard = new CopyOnWriteArrayList<>();
  private volatile Trouble trouble = (stage, n, line) -> Way.ON;

  /** A server on this machine that is reached with {@code security}. */
  public MailFront(TestCertificate certificate, Security security) throws IOException {
    this.certificate = certificate;
    this.security = security;
    server.start();
    var here = InetAddress.getLoopbackAddress();
    door =
        security == Security.TLS
            ? certificate.tls().getServerSocketFactory().createServerSocket(0, 50, here)
            : new ServerSocket(0, 50, here);
    start(this::open);
  }

  /** Makes trouble from now on. */
  public void make(Trouble trouble) {
    this.trouble = trouble;
    messages.set(0);
  }

  /** The port of the front. */
  public int port() {
    return door.getLocalPort();
  }

  /** Every line that a client said before it sent a message, and on TLS only. */
  public List<String> heard() {
    return heard;
  }

  /** Adds an account; from then on its password counts. */
  public void account(String user, String password) {
    server.setUser(user + "@shop.example", user, password);
  }

  /** The messages that the server took, in order. */
  public List<MimeMessage> taken() {
    return List.of(server.getReceivedMessages());
  }

  /** How often each attached document was taken, by recipient and file name. */
  public Map<String, Integer> documents() throws MessagingException, IOException {
    var found = new LinkedHashMap<String, Integer>();
    for (var message : taken()) {
      String to = message.getAllRecipients()[0].toString().replaceFirst(".*<(.*)>", "$1");
      for (var name : attachments(message).keySet()) {
        found.merge(to + ' ' + name, 1, Integer::sum);
      }
    }
    return found;
  }

  /** The attached documents of a message by file name. */
  public static Map<String, byte[]> attachments(MimeMessage message)
      throws MessagingException, IOException {
    var parts = (MimeMultipart) message.getContent();
    var found = new LinkedHashMap<String, byte[]>();
    for (int i = 1; i < parts.getCount(); i++) {
      var part = (MimeBodyPart) parts.getBodyPart(i);
      found.put(part.getFileName(), part.getInputStream().readAllBytes());
    }
    return found;
  }

  private static void start(Runnable work) {
    var thread = new Thread(work, "mail front");
    thread.setDaemon(true);
    thread.start();
  }

  private void open() {
    try {
      while (true) {
        var client = door.accept();
        start(() -> serve(client));
      }
    } catch (IOException e) {
      // The front is closed.
      return;
    }
  }

  private void serve(Socket client) {
    try (client;
        var behind = new Socket(InetAddress.getLoopbackAddress(), server.getSmtp().getPort())) {
      new Conversation(client, behind).run();
    } catch (IOException e) {
      // The client, or the test, broke off.
      return;
    }
  }

  @Override
  public void close() {
    try {
      door.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    server.stop();
  }

  /** One connection. */
  private final class Conversation {
    private Socket client;
    private final Socket behind;

    private Conversation(Socket client, Socket behind) {
      this.client = client;
      this.behind = behind;
    }

    private void run() throws IOException {
      reply(answer());
      while (true) {
        String line = line(client.getInputStream());
        if (line == null) {
          return;
        }
        heard.add(line);
        String verb = line.toUpperCase(Locale.ROOT);
        if (verb.startsWith("EHLO")) {
          ehlo(line);
        } else if (verb.equals("STARTTLS")) {
          startTls();
        } else if (verb.startsWith("MAIL")) {
          messages.incrementAndGet();
          pass(Stage.SENDER, line, List.of());
        } else if (verb.startsWith("RCPT")) {
          pass(Stage.RECIPIENT, line, List.of());
        } else if (verb.equals("DATA")) {
          if (pass(Stage.DATA, line, List.of())) {
            body();
          }
        } else {
          tell(line);
          reply(answer());
        }
      }
    }

    private void ehlo(String line) throws IOException {
      tell(line);
      var lines = new ArrayList<>(answer());
      if (security == Security.STARTTLS && !(client instanceof SSLSocket)) {
        lines.add(0, lines.get(0).replaceFirst("250 ", "250-"));
        lines.set(1, "250-STARTTLS");
        if (lines.size() == 2) {
          lines.set(1, "250 STARTTLS");
        }
      }
      reply(lines);
    }

    private void startTls() throws IOException {
      reply(List.of("220 go ahead"));
      var factory = certificate.tls().getSocketFactory();
      var secure = (SSLSocket) factory.createSocket(client, null, client.getPort(), true);
      secure.setUseClientMode(false);
      client = secure;
    }

    /**
     * Passes a line on, or makes trouble; returns whether it was passed on.
     *
     * @param before what the server has to hear first
     */
    private boolean pass(Stage stage, String line, List<String> before) throws IOException {
      var does = trouble.at(stage, messages.get(), line);
      if (does instanceof String given) {
        reply(List.of(given));
        return false;
      }
      if (does == Way.BREAK_BEFORE) {
        throw new IOException("broken off");
      }
      for (String earlier : before) {
        tell(earlier);
      }
      var answer = List.of("354 go ahead");
      if (stage != Stage.DATA) {
        tell(line);
        answer = answer();
      }
      if (stage == Stage.END) {
        // The first answer is to DATA.
        answer = answer();
      }
      if (does == Way.BREAK_AFTER) {
        throw new IOException("broken off");
      }
      if (does == Way.SLOWLY) {
        LockSupport.parkNanos(1_000_000_000);
      }
      reply(answer);
      return true;
    }

    /** Reads a message. The server behind hears of it when it is whole. */
    private void body() throws IOException {
      var lines = new ArrayList<>(List.of("DATA"));
      for (String line = line(client.getInputStream()); line != null; ) {
        if (line.equals(".")) {
          pass(Stage.END, line, lines);
          return;
        }
        lines.add(line);
        line = line(client.getInputStream());
      }
      throw new IOException("the client broke off");
    }

    private void tell(String line) throws IOException {
      write(behind.getOutputStream(), line);
    }

    /** The lines of the server's answer. */
    private List<String> answer() throws IOException {
      var lines = new ArrayList<String>();
      do {
        String line = line(behind.getInputStream());
        if (line == null) {
          throw new IOException("the server broke off");
        }
        lines.add(line);
      } while (lines.get(lines.size() - 1).matches("\\d{3}-.*"));
      return lines;
    }

    private void reply(List<String> lines) throws IOException {
      for (String line : lines) {
        write(client.getOutputStream(), line);
      }
    }

    private static void write(OutputStream to, String line) throws IOException {
      to.write((line + "\r\n").getBytes(StandardCharsets.ISO_8859_1));
      to.flush();
    }

    private static String line(InputStream from) throws IOException {
      var line = new StringBuilder();
      for (int c = from.read(); c != '\n'; c = from.read()) {
        if (c < 0) {
          return null;
        }
        if (c != '\r') {
          line.append((char) c);
        }
      }
      return line.toString();
    }
  }
}
