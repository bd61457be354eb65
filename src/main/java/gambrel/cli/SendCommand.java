package gambrel.cli;

import gambrel.files.mail.MailPassword;
import gambrel.files.mail.MailServer;
import gambrel.files.publish.Disk;
import gambrel.night.MailRun;
import gambrel.night.NightOutcome;
import gambrel.night.RefusedException;
import gambrel.trade.notice.NoticeWords;
import java.io.IOException;
import java.nio.file.Path;
import javax.net.ssl.SSLSocketFactory;

/** Mails issued statements. */
final class SendCommand extends ShopCommand {
  private static final String DRY_RUN = "dry-run";
  private static final String AGAIN = "again";
  private static final String ALL = "all";

  SendCommand() {
    super("send", "Mails the statements that are issued and not yet sent.");
    takesOut();
    option(DRY_RUN, "", "writes the messages to DIR/outbox as .eml files, and contacts nobody");
    option(
        AGAIN,
        "CUSTOMER/BODY",
        "sends this statement, even if it was sent, was refused or is unsure");
    option(ALL, "", "sends even more messages than most_at_once");
  }

  @Override
  int workOnShop() throws RefusedException {
    var root = root();
    refuseExports(root);
    Reading reading;
    try (var progress = progress()) {
      reading = read(progress);
    }
    var run = new MailRun(reading.inputs(), reading.documents(), Disk.SYSTEM);
    var outcome =
        has(DRY_RUN)
            ? run.dryRun(root, reading.asOf(), value(AGAIN))
            : run.send(root, reading.asOf(), value(AGAIN), has(ALL), server(reading));
    if (outcome instanceof NightOutcome.Mailed mailed) {
      print(mailed, root);
    }
    return finish(outcome);
  }

  private MailServer server(Reading reading) throws RefusedException {
    var settings = reading.inputs().mail().orElseThrow();
    try {
      return new MailServer(
          settings,
          MailPassword.read(folder(), settings, System::getenv),
          (SSLSocketFactory) SSLSocketFactory.getDefault(),
          MailServer.PATIENCE);
    } catch (IOException e) {
      throw new RefusedException(e.getMessage());
    }
  }

  private void print(NightOutcome.Mailed mailed, Path root) {
    if (!isQuiet()) {
      int statements = mailed.sent().stream().mapToInt(letter -> letter.statements().size()).sum();
      String done = has(DRY_RUN) ? "written to " + root.resolve("outbox") : "sent";
      out().printf("%d messages with %d statements %s%n", mailed.sent().size(), statements, done);
    }
    mailed
        .unsent()
        .forEach(
            unsent -> err().println("gambrel: " + NoticeWords.ENGLISH.message(unsent.notice())));
    if (mailed.overLimit()) {
      err()
          .printf(
              "gambrel: %d messages wait, more than most_at_once; nothing was sent. Look at them"
                  + " with --dry-run, then send them with --all.%n",
              mailed.waiting());
    } else if (mailed.waiting() > 0) {
      err().println("gambrel: messages that go the next time: " + mailed.waiting());
    }
    mailed.stopped().ifPresent(why -> err().println("gambrel: stopped: " + why + "."));
  }
}
