package gambrel.night;

import gambrel.files.mail.MailServer;
import gambrel.files.publish.Disk;
import gambrel.files.publish.WatchedDisk;
import gambrel.trade.reckoning.Progress;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLSocketFactory;

/** A sending in another process. It may wait in the middle of a disk operation to be killed. */
final class SendChild {
  private static final int PATIENCE = 120;
  private static final int WAITING = '!';

  private final Process process;

  private SendChild(Process process) {
    this.process = process;
  }

  /**
   * Starts a sending.
   *
   * @param certificate the certificate that it trusts
   * @param operation the disk operation at which it waits; -1 for none
   */
  static SendChild start(MailShop shop, Path certificate, int operation) throws IOException {
    var command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-Xmx256m",
            "-Djavax.net.ssl.trustStore=" + certificate,
            "-Djavax.net.ssl.trustStorePassword=changeit",
            "-cp",
            System.getProperty("java.class.path"),
            SendChild.class.getName(),
            shop.files().write().toString(),
            Integer.toString(operation));
    return new SendChild(
        new ProcessBuilder(command)
            .redirectError(ProcessBuilder.Redirect.to(new File("/dev/null")))
            .start());
  }

  /** Waits until it waits; false if it ends before. */
  boolean isWaiting() throws IOException {
    return process.getInputStream().read() == WAITING;
  }

  /** Kills it, with SIGKILL where there are signals. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    end();
  }

  /** Waits for its end; returns its exit code. */
  int end() throws InterruptedException {
    if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
      throw new AssertionError("it does not end");
    }
    return process.exitValue();
  }

  /** Takes the shop folder and the operation. */
  public static void main(String[] args) throws Exception {
    var shop = Path.of(args[0]);
    var inputs = Inputs.read(shop, Progress.NONE);
    var sockets = (SSLSocketFactory) SSLSocketFactory.getDefault();
    var settings = inputs.mail().orElseThrow();
    var outcome =
        new MailRun(inputs, new TinyDocuments(), disk(Integer.parseInt(args[1])))
            .send(
                shop.resolve("reports"),
                NightShop.moment(MailShop.MORNING),
                Optional.empty(),
                false,
                new MailServer(settings, "", sockets, MailServer.PATIENCE));
    System.exit(outcome.exitCode());
  }

  private static Disk disk(int wait) {
    return new WatchedDisk() {
      @Override
      protected void before(Kind kind, int n, Act tear) throws IOException {
        if (n == wait) {
          tear.run();
          System.out.write(WAITING);
          System.out.flush();
          System.in.read();
        }
      }
    };
  }
}
