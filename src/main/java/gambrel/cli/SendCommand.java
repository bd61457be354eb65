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
import java.util.Optional;
import javax.net.ssl.SSLSocketFactory;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Mails issued statements. */
@Command(
    name = "send",
    mixinStandardHelpOptions = true,
    versionProvider = GambrelCommand.Version.class,
    description = "Mails the statements that are issued and not yet sent.")
final class SendCommand extends ShopCommand {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "the output folder; default SHOP/reports")
  private Path out;

  @Option(
      names = "--dry-run",
      description = "writes the messages to DIR/outbox as .eml files, and contacts nobody")
  private boolean dryRun;

  @Option(
      names = "--again",
      paramLabel = "CUSTOMER/BODY",
      description = "sends this statement, even if it was sent, was refused or is unsure")
  private Optional<String> again;

  @Option(names = "--all", description = "sends even more messages than most_at_once")
  private boolean all;

  @Override
  int work() throws RefusedException {
    var root = out == null ? shop().resolve("reports") : out;
    refuseExports(root);
    Reading reading;
    try (var progress = progress()) {
      reading = read(progress);
    }
    var run = new MailRun(reading.inputs(), reading.documents(), Disk.SYSTEM);
    var outcome =
        dryRun
            ? run.dryRun(root, reading.asOf(), again)
            : run.send(root, reading.asOf(), again, all, server(reading));
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
          MailPassword.read(shop(), settings, System::getenv),
          (SSLSocketFactory) SSLSocketFactory.getDefault(),
          MailServer.PATIENCE);
    } catch (IOException e) {
      throw new RefusedException(e.getMessage());
    }
  }

  private void print(NightOutcome.Mailed mailed, Path root) {
    if (!isQuiet()) {
      int statements = mailed.sent().stream().mapToInt(letter -> letter.statements().size()).sum();
      String done = dryRun ? "written to " + root.resolve("outbox") : "sent";
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
