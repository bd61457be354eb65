package gambrel.night;

import gambrel.files.mail.MailServer;
import gambrel.files.publish.Csv;
import gambrel.files.publish.Disk;
import gambrel.files.publish.HastyDisk;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.sending.MailSettings.Security;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.net.ssl.SSLSocketFactory;

/**
 * A shop that mails: Ann has two bodies, Bob and Cleo one each, and Dan, who has one, gets paper.
 */
final class MailShop {
  /** When the day's sending begins. */
  static final String MORNING = "2026-03-06T08:00";

  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private final NightShop shop;

  /** The shop with its night issued, and its server on this machine at {@code port}. */
  MailShop(Path folder, int port, Security security) {
    shop = new NightShop(folder).without("customers.csv");
    shop.add("customers.csv", "customer,name,email,language,delivery");
    shop.add("customers.csv", "ann,Ann Dorrin,ann@dorrin.example,,");
    shop.add("customers.csv", "bob,Bob Tallow,bob@tallow.example,de,");
    shop.add("customers.csv", "cleo,Cleo Suet,cleo@suet.example,,email");
    shop.add("customers.csv", "dan,Dan Hock,dan@hock.example,,print");
    shop.add("mail.properties", "from=office@shop.example", "host=localhost");
    shop.add("mail.properties", "port=" + port, "security=" + security);
    shop.beef("B1", "ann").beef("B2", "ann").beef("B3", "bob").beef("B4", "cleo").beef("B5", "dan");
  }

  /** The files of the shop, to change before a night or a sending. */
  NightShop files() {
    return shop;
  }

  /** Runs the night. */
  MailShop issued() {
    shop.done(NightShop.NIGHT);
    return this;
  }

  /** The sending of the shop's files as they are now. */
  MailRun mail(Disk disk) throws RefusedException {
    return new MailRun(Inputs.read(shop.write(), Progress.NONE), new TinyDocuments(), disk);
  }

  /** The server of the shop's files as they are now, whose certificates {@code sockets} judges. */
  MailServer server(SSLSocketFactory sockets) {
    return server(sockets, "", PATIENCE);
  }

  MailServer server(SSLSocketFactory sockets, String password, Duration patience) {
    try {
      var settings = Inputs.read(shop.write(), Progress.NONE).mail().orElseThrow();
      return new MailServer(settings, password, sockets, patience);
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  /** Sends, with the machine's disk. */
  NightOutcome send(SSLSocketFactory sockets) {
    return send(sockets, new HastyDisk(), Optional.empty());
  }

  NightOutcome send(SSLSocketFactory sockets, Disk disk, Optional<String> again) {
    return send(server(sockets), disk, again, false);
  }

  NightOutcome send(MailServer server, Disk disk, Optional<String> again, boolean all) {
    try {
      var when = NightShop.moment(MORNING);
      return mail(disk).send(shop.reports(), when, again, all, server);
    } catch (RefusedException e) {
      return NightOutcome.Stopped.refused(e);
    }
  }

  /** The states in {@code data/sent.csv}, by customer and body. */
  Map<String, String> states() {
    return states("data/sent.csv");
  }

  Map<String, String> states(String file) {
    var path = shop.reports().resolve(file);
    var states = new TreeMap<String, String>();
    try {
      var rows =
          Files.exists(path) ? Csv.records(Files.readAllBytes(path)) : List.<List<String>>of();
      rows.stream().skip(1).forEach(r -> states.put(r.get(0) + ' ' + r.get(1), r.get(5)));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return states;
  }

  /** What a sending did. */
  static NightOutcome.Mailed mailed(NightOutcome outcome) {
    if (outcome instanceof NightOutcome.Mailed mailed) {
      return mailed;
    }
    throw new AssertionError(outcome.toString());
  }
}
