package gambrel.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.mail.MailFront;
import gambrel.files.publish.HastyDisk;
import gambrel.night.Inputs;
import gambrel.night.MailRun;
import gambrel.night.NightlyRun;
import gambrel.night.RefusedException;
import gambrel.night.Trees;
import gambrel.oracle.CsvTrees;
import gambrel.oracle.RandomShop;
import gambrel.trade.reckoning.Progress;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No customer is mailed a page with another customer's name: random shops with shares, mobs, shared
 * batches and revisions, and a name that nobody else has for every customer. {@code -Dseeds=200}.
 */
class NobodyElsesPageTest {
  private static final Pattern NAME = Pattern.compile("Zq\\d+x");
  private static int messages;
  private static int revisions;

  @TempDir private Path folder;

  static IntStream seeds() {
    return LawShop.seeds();
  }

  @AfterAll
  static void somethingWasMailed() {
    long shops = seeds().count();
    System.out.println(messages + " messages read, " + revisions + " revisions among them");
    assertTrue(messages >= shops, "messages: " + messages);
    assertTrue(shops < 50 || revisions > 0, "revisions: " + revisions);
  }

  /** Gives every customer a name of his own, and an address with it. */
  private static void name(Path shop) throws Exception {
    var lines = new ArrayList<>(List.of("customer,name,email,language"));
    for (String id : Inputs.read(shop, Progress.NONE).shop().customers().keySet()) {
      String name = "Zq" + lines.size() + 'x';
      String language = List.of("en", "de", "fr", "es").get(lines.size() % 4);
      lines.add(String.join(",", '"' + id + '"', name, name + "@farm.example", language));
    }
    Files.writeString(shop.resolve("customers.csv"), String.join("\n", lines) + "\n");
    Files.writeString(
        shop.resolve("mail.properties"), "from=office@shop.example\nhost=localhost\n");
    var settings = shop.resolve("shop.properties");
    var others = Files.readAllLines(settings).stream().filter(l -> !l.startsWith("limit.rev"));
    Files.writeString(
        settings, others.collect(Collectors.joining("\n")) + "\nlimit.revisions=99\n");
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void everyMessageNamesItsCustomerAlone(int seed) throws Exception {
    var shop = folder.resolve("shop");
    var moments = RandomShop.write(shop, seed, CsvTrees::of);
    name(shop);
    for (var moment : moments) {
      var out = folder.resolve("out");
      var inputs = Inputs.read(shop, Progress.NONE);
      var documents = new XhtmlDocuments(inputs.shop().settings());
      new NightlyRun(inputs, documents).run(out, moment, List.of());
      try {
        new MailRun(inputs, documents, new HastyDisk()).dryRun(out, moment, Optional.empty());
      } catch (RefusedException e) {
        // A shop of which something cannot be read mails nothing.
        continue;
      }
      for (String file : Trees.files(out.resolve("outbox"))) {
        try (var bytes = Files.newInputStream(out.resolve("outbox").resolve(file))) {
          check(new MimeMessage(Session.getInstance(new Properties()), bytes));
        }
      }
    }
  }

  private static void check(MimeMessage message) throws Exception {
    assertEquals(1, message.getAllRecipients().length);
    var to = (InternetAddress) message.getAllRecipients()[0];
    String name = to.getPersonal();
    assertEquals(name + "@farm.example", to.getAddress());
    var text = ((MimeMultipart) message.getContent()).getBodyPart(0).getContent();
    assertEquals(List.of(name), names(text.toString()));
    var documents = MailFront.attachments(message);
    assertTrue(!documents.isEmpty());
    for (var document : documents.entrySet()) {
      var page = new String(document.getValue(), StandardCharsets.UTF_8);
      assertEquals(List.of(name), names(page), document.getKey());
      revisions += document.getKey().contains("-r1.") ? 0 : 1;
    }
    messages++;
  }

  private static List<String> names(String text) {
    return NAME.matcher(text).results().map(MatchResult::group).distinct().toList();
  }
}
