package gambrel.night;

import gambrel.files.mail.MailAddress;
import gambrel.files.mail.MailMessage;
import gambrel.files.mail.MailServer;
import gambrel.files.publish.Changes;
import gambrel.files.publish.Disk;
import gambrel.files.publish.OutputFolder;
import gambrel.pages.render.template.TemplateProblem;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Digest;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.sending.Letter;
import gambrel.trade.sending.MailPlanner;
import gambrel.trade.sending.MailSettings;
import gambrel.trade.sending.SentBook;
import gambrel.trade.sending.SentRow;
import gambrel.trade.sending.SentState;
import gambrel.trade.sending.Unsent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Mails issued statements. Before a message is handed to the server its statements are on record as
 * {@link SentState#UNKNOWN}, and after the answer as what became of them, each on the disk before
 * the next step: whenever the process dies, no message can go twice, and the one that is unsure is
 * known.
 */
public final class MailRun {
  private static final int MOST_FAILURES = 10;
  private static final int ID_LENGTH = 32;
  private static final String OUTBOX = "outbox";
  private static final DateTimeFormatter NIGHT = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss");

  private final Inputs inputs;
  private final MailSettings settings;
  private final Documents documents;
  private final Disk disk;
  private final SentStore store;

  /**
   * Mails the statements of a shop that has been read.
   *
   * @throws RefusedException if the shop has no mail settings, or any file of it cannot be trusted
   */
  public MailRun(Inputs inputs, Documents documents, Disk disk) throws RefusedException {
    this.inputs = inputs;
    this.documents = documents;
    this.disk = disk;
    settings =
        inputs
            .mail()
            .orElseThrow(
                () ->
                    new RefusedException(
                        "the shop folder has no mail.properties: make one with the lines from= (your"
                            + " address) and host= (your mail server), then try send --dry-run; the"
                            + " manual's page Sending tells the rest"));
    if (settings.from().isEmpty() || settings.host().isEmpty()) {
      throw new RefusedException(
          "mail.properties lacks " + (settings.from().isEmpty() ? "from" : "host"));
    }
    if (NightNotices.stopsIssuing(inputs)) {
      throw new RefusedException(
          "a file, column or setting cannot be read, so nothing is sent: check says which");
    }
    store = new SentStore(settings.isTrial());
  }

  /** Writes the messages to the outbox of an output folder instead of sending them. */
  public NightOutcome dryRun(Path root, OffsetDateTime asOf, Optional<String> again) {
    return opened(root, out -> write(out, prepare(out.changes(), asOf, again)));
  }

  /**
   * Sends what is not yet sent.
   *
   * @param again {@code CUSTOMER/BODY} to send just this one, whatever became of it
   * @param all whether more messages than the limit may go
   * @param server where they go
   */
  public NightOutcome send(
      Path root, OffsetDateTime asOf, Optional<String> again, boolean all, MailServer server) {
    return opened(
        root,
        out -> {
          var post = prepare(out.changes(), asOf, again);
          int waiting = post.ready().size();
          if (waiting > settings.mostAtOnce() && !all && again.isEmpty()) {
            return new NightOutcome.Mailed(
                List.of(), waiting, post.unsent(), Optional.empty(), true);
          }
          try (server) {
            return send(out, post, server);
          }
        });
  }

  /** Work on an output folder that is open. */
  private interface Task {
    NightOutcome of(OutputFolder out) throws IOException, RefusedException;
  }

  private NightOutcome opened(Path root, Task task) {
    return NightOutcome.of(
        root,
        () -> {
          if (!Files.isDirectory(root)) {
            throw new RefusedException(root + " has no statements: run first");
          }
          try (var out = OutputFolder.open(root, disk)) {
            return task.of(out);
          }
        });
  }

  /**
   * What there is to send.
   *
   * @param planner decides what is left afterwards
   * @param sent what was sent before
   * @param ready the messages
   * @param lost the statements whose document is missing or changed
   * @param planned what else does not go out by itself
   */
  private record Post(
      MailPlanner planner,
      SentBook sent,
      Map<Letter, MailMessage> ready,
      List<Unsent> lost,
      List<Unsent> planned) {
    private List<Unsent> unsent() {
      return Stream.concat(lost.stream(), planned.stream()).toList();
    }
  }

  private Post prepare(Changes output, OffsetDateTime asOf, Optional<String> again)
      throws IOException, RefusedException {
    var register = new RegisterStore(output, inputs.shop().settings()).load();
    var night = NightlyRun.night(inputs, register, asOf, Progress.NONE);
    var planner = new MailPlanner(night, register, settings, MailAddress::isUsable);
    var sent = store.load(output);
    var plan = again.map(planner::again).orElseGet(() -> planner.plan(sent));
    if (again.isPresent() && plan.letters().isEmpty() && plan.unsent().isEmpty()) {
      throw new RefusedException(
          "there is no statement " + again.get() + " in force that goes by e-mail");
    }
    var ready = new LinkedHashMap<Letter, MailMessage>();
    var lost = new ArrayList<Unsent>();
    for (var letter : plan.letters()) {
      var attached = attached(letter, output, lost);
      if (attached.size() == letter.statements().size()) {
        ready.put(letter, message(letter, attached, planner));
      }
    }
    return new Post(planner, sent, ready, lost, plan.unsent());
  }

  /** The documents of a letter; one that is not as it was issued is left out, and is lost. */
  private static Map<String, byte[]> attached(Letter letter, Changes output, List<Unsent> lost)
      throws IOException {
    var attached = new LinkedHashMap<String, byte[]>();
    for (var row : letter.statements()) {
      output
          .read(row.file())
          .filter(document -> Digest.of(document).equals(row.sha256()))
          .ifPresentOrElse(
              document -> attached.put(row.fileName(), document),
              () -> lost.add(new Unsent(row, Unsent.Why.LOST)));
    }
    return attached;
  }

  private MailMessage message(Letter letter, Map<String, byte[]> attached, MailPlanner planner)
      throws RefusedException {
    var night = planner.night();
    var content =
        letter.statements().stream().map(RegisterRow::sha256).collect(Collectors.joining())
            + letter.address()
            + night.asOf().withNano(0);
    String id = Digest.of(content.getBytes(StandardCharsets.UTF_8)).substring(0, ID_LENGTH);
    try {
      var words = documents.mail(night, planner.register(), letter);
      return new MailMessage(
          id + settings.from().substring(settings.from().lastIndexOf('@')),
          night.asOf(),
          inputs.shop().settings().name(),
          letter.customer().name(),
          letter.address(),
          words.subject(),
          words.language(),
          words.text(),
          attached);
    } catch (TemplateProblem problem) {
      throw new RefusedException(NoticeWords.ENGLISH.of(Page.phrase(problem)));
    }
  }

  private NightOutcome write(OutputFolder out, Post post) throws IOException {
    var changes = out.changes();
    var kept = new ArrayList<String>();
    for (var letter : post.ready().entrySet()) {
      kept.add(file(letter.getKey()));
      changes.write(file(letter.getKey()), letter.getValue().bytes(settings));
    }
    changes.list(OUTBOX).stream()
        .filter(file -> file.endsWith(".eml") && !kept.contains(file))
        .forEach(changes::remove);
    out.publish(changes, () -> {});
    return new NightOutcome.Mailed(
        List.copyOf(post.ready().keySet()), 0, post.unsent(), Optional.empty(), false);
  }

  private static String file(Letter letter) {
    var statement = letter.statements().get(0);
    String customer = Path.of(statement.file()).getName(1).toString();
    return OUTBOX + '/' + customer + '-' + statement.issued().format(NIGHT) + ".eml";
  }

  private NightOutcome send(OutputFolder out, Post post, MailServer server) throws IOException {
    var at = post.planner().night().issueTime();
    var sent = new ArrayList<Letter>();
    var book = post.sent();
    int failures = 0;
    Optional<String> stopped = Optional.empty();
    for (var ready : post.ready().entrySet()) {
      var letter = ready.getKey();
      try {
        server.connect();
      } catch (IOException e) {
        stopped = Optional.of(e.getMessage());
        break;
      }
      var rows =
          letter.statements().stream()
              .map(row -> SentRow.unknown(row, letter.address(), at, ready.getValue().id()))
              .toList();
      book = record(out, book.with(rows));
      var reply = server.handOver(ready.getValue());
      book = record(out, book.with(rows.stream().map(row -> row.with(reply)).toList()));
      if (reply.state() == SentState.SENT) {
        sent.add(letter);
        failures = 0;
      } else if (++failures == MOST_FAILURES) {
        stopped = Optional.of(failures + " messages in a row were not taken");
        break;
      }
    }
    var left = post.planner().plan(book);
    var unsent = Stream.concat(post.lost().stream(), left.unsent().stream()).toList();
    return new NightOutcome.Mailed(sent, left.letters().size(), unsent, stopped, false);
  }

  private SentBook record(OutputFolder out, SentBook book) throws IOException {
    var changes = out.changes();
    store.write(changes, book);
    out.publish(changes, () -> {});
    return book;
  }

  /**
   * What waits for a person of all that was mailed up to a night, for its morning sheet. Nothing if
   * the shop does not mail statements, or tries it.
   */
  static List<Notice> notices(Inputs inputs, Night night, Register register, Changes output)
      throws IOException {
    if (inputs.mail().filter(settings -> !settings.isTrial()).isEmpty()) {
      return List.of();
    }
    try {
      var sent = new SentStore(false).load(output).until(night.asOf().toLocalDateTime());
      return new MailPlanner(night, register, inputs.mail().get(), MailAddress::isUsable)
          .plan(sent).unsent().stream()
              .filter(unsent -> unsent.why().isOfMail())
              .map(Unsent::notice)
              .toList();
    } catch (RefusedException e) {
      return List.of(Notice.of(NoticeCode.UNSENT, "BOOK"));
    }
  }
}
