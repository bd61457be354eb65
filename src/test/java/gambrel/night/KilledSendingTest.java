package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.mail.MailFront;
import gambrel.files.mail.MailFront.Stage;
import gambrel.files.mail.MailFront.Way;
import gambrel.files.mail.TestCertificate;
import gambrel.files.publish.Disk;
import gambrel.files.publish.FailingDisk;
import gambrel.files.publish.FullDisk;
import gambrel.files.publish.HastyDisk;
import gambrel.trade.sending.MailSettings.Security;
import gambrel.trade.sending.Unsent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A sending dies, or its disk fills, at any moment: nothing is sent twice, nothing is lost, and
 * what is unsure is named. {@code -Dsends=200} for a long campaign, at every operation.
 */
@Timeout(600)
class KilledSendingTest {
  private static final int USUAL_KILLS = 3;
  private static final int KILLS = Integer.getInteger("sends", USUAL_KILLS);
  private static final int STEP = KILLS > USUAL_KILLS ? 1 : 5;
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  @TempDir private Path folder;
  private TestCertificate certificate;
  private MailFront front;
  private MailShop shop;
  private int laid;

  @BeforeEach
  void makeCertificate() throws Exception {
    certificate = TestCertificate.of("localhost", folder);
  }

  @AfterEach
  void close() {
    if (front != null) {
      front.close();
    }
  }

  private void lay(Security security) throws Exception {
    close();
    front = new MailFront(certificate, security);
    shop = new MailShop(folder.resolve("shop" + laid++), front.port(), security).issued();
  }

  /** Begins again with the state after the night. */
  private void again() throws Exception {
    var reports = shop.files().reports();
    for (String file : Trees.files(reports)) {
      if (file.contains("sent") || file.startsWith(".staging") || file.equals(".journal")) {
        Files.delete(reports.resolve(file));
      }
    }
    front.close();
    front = new MailFront(certificate, Security.NONE);
    shop.files().replace("mail.properties", "port=", "port=" + front.port() + "\n#");
  }

  private NightOutcome send(Disk disk) {
    return shop.send(certificate.tls().getSocketFactory(), disk, Optional.empty());
  }

  /** Sends until nothing is left; holds what must hold of a sending that died. */
  private Set<String> assertSettles(String when) throws Exception {
    front.make((stage, n, line) -> Way.ON);
    var last = MailShop.mailed(send(new HastyDisk()));
    var states = shop.states();
    assertEquals(Set.of("ann B1", "ann B2", "bob B3", "cleo B4"), states.keySet(), when);
    Map<String, Integer> taken = front.documents();
    assertTrue(taken.values().stream().allMatch(times -> times == 1), when + taken);
    var unsure = new HashSet<String>();
    states.forEach(
        (statement, state) -> {
          boolean arrived =
              taken.keySet().stream().anyMatch(d -> d.contains(statement.substring(4).strip()));
          assertTrue(state.equals("sent") ? arrived : state.equals("unknown"), when + states);
          if (state.equals("unknown")) {
            unsure.add(statement);
          }
        });
    var named =
        last.unsent().stream()
            .filter(unsent -> unsent.why() == Unsent.Why.UNSURE)
            .map(unsent -> unsent.statement().customer() + ' ' + unsent.statement().body())
            .collect(Collectors.toSet());
    assertEquals(unsure, named, when);
    assertTrue(
        unsure.stream().map(one -> one.substring(0, 3)).distinct().count() <= 1, when + unsure);
    assertEquals(unsure.isEmpty() ? 0 : 1, last.exitCode(), when);
    return unsure;
  }

  @Test
  void theDiskFailsAtEveryOperationInTurn() throws Exception {
    lay(Security.NONE);
    var disk = new FailingDisk(0);
    int doubts = 0;
    for (int n = 0; !disk.isWhole() || n == 0; n += STEP) {
      again();
      disk = new FailingDisk(n);
      var outcome = send(disk);
      assertEquals(disk.isWhole() ? 0 : 4, outcome.exitCode(), outcome::toString);
      doubts += assertSettles("after " + n + " operations ").isEmpty() ? 0 : 1;
    }
    assertTrue(doubts >= 10 / STEP, "in doubt " + doubts + " times");
  }

  @Test
  void theDiskIsFullFromEveryOperationOn() throws Exception {
    lay(Security.NONE);
    var disk = new FullDisk(0);
    for (int n = 0; disk.isHit() || n == 0; n += 3 * STEP) {
      again();
      disk = new FullDisk(n);
      send(disk);
      assertSettles("full after " + n + " operations ");
    }
  }

  static LongStream kills() {
    return LongStream.rangeClosed(1, KILLS);
  }

  @ParameterizedTest(name = "kill {0}")
  @MethodSource("kills")
  void theProcessIsKilled(long seed) throws Exception {
    var dice = new SplittableRandom(seed * SPREAD);
    lay(seed % 4 < 2 ? Security.TLS : Security.STARTTLS);

    String when = seed % 2 == 0 ? killAtOperation(dice) : killAtStage(dice);

    assertSettles("kill " + seed + when);
  }

  private String killAtOperation(SplittableRandom dice) throws Exception {
    int n = dice.nextInt(90);
    var child = SendChild.start(shop, certificate.file(), n);
    boolean waited = child.isWaiting();
    child.kill();
    return " at operation " + n + (waited ? " " : ", over by then ");
  }

  /** Kills it while the server thinks; the server may have taken the message or not. */
  private String killAtStage(SplittableRandom dice) throws Exception {
    var stage = Stage.values()[dice.nextInt(Stage.values().length)];
    int message = 1 + dice.nextInt(3);
    var way = dice.nextBoolean() ? Way.ON : Way.BREAK_BEFORE;
    var reached = new CountDownLatch(1);
    var killed = new CountDownLatch(1);
    var heard = new CountDownLatch(1);
    front.make(
        (at, n, line) -> {
          if (at != stage || n != message || reached.getCount() == 0) {
            return Way.ON;
          }
          reached.countDown();
          try {
            killed.await(1, TimeUnit.MINUTES);
          } catch (InterruptedException e) {
            throw new AssertionError(e);
          }
          heard.countDown();
          return way;
        });
    var child = SendChild.start(shop, certificate.file(), -1);
    assertTrue(reached.await(1, TimeUnit.MINUTES));
    child.kill();
    int before = front.taken().size();
    killed.countDown();
    heard.await(1, TimeUnit.MINUTES);
    if (stage == Stage.END && way == Way.ON) {
      while (front.taken().size() == before) {
        Thread.onSpinWait();
      }
    }
    return " at " + stage + " of message " + message + ", " + way + ' ';
  }

  @Test
  void ofTwoThatSendAtOnceOneSendsAndTheOtherLeaves() throws Exception {
    lay(Security.TLS);
    var reached = new CountDownLatch(1);
    var free = new CountDownLatch(1);
    front.make(
        (at, n, line) -> {
          if (at == Stage.SENDER && n == 1) {
            reached.countDown();
            try {
              free.await(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
              throw new AssertionError(e);
            }
          }
          return Way.ON;
        });
    var child = SendChild.start(shop, certificate.file(), -1);
    assertTrue(reached.await(1, TimeUnit.MINUTES));

    assertEquals(3, send(new HastyDisk()).exitCode());
    assertEquals(3, shop.files().run(NightShop.NIGHT).exitCode());

    free.countDown();
    assertEquals(0, child.end());
    assertSettles("");
  }
}
