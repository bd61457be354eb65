package gambrel.night;

import gambrel.files.publish.Content;
import gambrel.files.publish.Disk;
import gambrel.files.publish.WatchedDisk;
import gambrel.insight.month.MonthReport;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The second of {@link TwoNights} in a process of its own, which says where it is and waits there
 * to be let on or killed.
 */
final class NightChild implements AutoCloseable {
  /** Said when the process is up; the run begins when it is let on. */
  static final String READY = "ready";

  /** Said where the process waits in the middle of its run. */
  static final String WAITING = "waiting";

  /** Said when all is staged and the journal is written. */
  static final String PUBLISHING = "publishing";

  private static final int PATIENCE = 120;
  private static final String TELL = "tell";

  private final Process process;
  private final BufferedReader said;

  private NightChild(Process process) {
    this.process = process;
    this.said =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  /** Where a child waits: at the disk operation of that number; -1 at its first document. */
  static NightChild waitingAt(int operation, Path shop, Path out, boolean pdf) {
    return start(shop, out, pdf, String.valueOf(operation));
  }

  /** A child that runs through. */
  static NightChild runningThrough(Path shop, Path out, boolean pdf) {
    return start(shop, out, pdf, "never");
  }

  /** A child that runs through and says when it begins to publish. */
  static NightChild tellingWhenItPublishes(Path shop, Path out, boolean pdf) {
    return start(shop, out, pdf, TELL);
  }

  private static NightChild start(Path shop, Path out, boolean pdf, String wait) {
    var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    var classes = System.getProperty("java.class.path");
    var options = List.of("-XX:TieredStopAtLevel=1", "-Xmx256m", "-Djava.awt.headless=true");
    var command = new ArrayList<String>();
    command.add(java);
    command.addAll(options);
    command.addAll(List.of("-cp", classes, NightChild.class.getName()));
    command.addAll(List.of(shop.toString(), out.toString(), pdf ? "pdf" : "tiny", wait));
    try {
      return new NightChild(
          new ProcessBuilder(command)
              .redirectError(ProcessBuilder.Redirect.to(new File("/dev/null")))
              .start());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What it says next; empty when it has ended. */
  Optional<String> listen() throws IOException {
    return Optional.ofNullable(said.readLine());
  }

  /** Waits until it says {@code word}. */
  void await(String word) throws IOException {
    var heard = listen();
    if (!heard.equals(Optional.of(word))) {
      throw new AssertionError("heard " + heard + ", not " + word);
    }
  }

  /** Lets it on from where it waits. */
  void letOn() throws IOException {
    process.getOutputStream().write('\n');
    process.getOutputStream().flush();
  }

  /** Gives it so many microseconds to end. */
  boolean endsWithin(long micros) throws InterruptedException {
    return process.waitFor(micros, TimeUnit.MICROSECONDS);
  }

  /** Its exit code once it has ended. */
  int exitCode() throws InterruptedException {
    if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
      throw new AssertionError("it does not end");
    }
    return process.exitValue();
  }

  /** Kills it at once: SIGKILL where there are signals. */
  void kill() throws InterruptedException {
    process.destroyForcibly();
    exitCode();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }

  /** Takes the shop, the output folder, the kind of documents, and where to wait. */
  public static void main(String[] args) throws IOException {
    pause(READY);
    var shop = Path.of(args[0]);
    var out = Path.of(args[1]);
    try {
      var inputs = Inputs.read(shop);
      Documents documents =
          args[2].equals("pdf")
              ? PdfDocuments.of(shop, inputs.shop().settings())
              : new TinyDocuments();
      var run =
          new NightlyRun(
              inputs, args[3].equals("-1") ? new WaitingDocuments() : documents, disk(args[3]));
      var outcome = run.run(out, NightShop.moment(TwoNights.SECOND), List.of());
      System.exit(outcome.exitCode());
    } catch (RefusedException e) {
      System.exit(2);
    }
  }

  private static Disk disk(String wait) {
    return switch (wait) {
      case "never" -> Disk.SYSTEM;
      case TELL -> new TellingDisk();
      default -> new WaitingDisk(Integer.parseInt(wait));
    };
  }

  private static void pause(String word) throws IOException {
    System.out.println(word);
    System.out.flush();
    System.in.read();
  }

  /** Waits at one operation, half of it done. */
  private static final class WaitingDisk extends WatchedDisk {
    private final int wait;

    private WaitingDisk(int wait) {
      this.wait = wait;
    }

    @Override
    protected void before(Kind kind, int n, Act tear) throws IOException {
      if (n == wait) {
        tear.run();
        pause(WAITING);
      }
    }
  }

  /** The system's own disk, which says when the journal is written. */
  private static final class TellingDisk implements Disk {
    @Override
    public void makeFolder(Path folder) throws IOException {
      SYSTEM.makeFolder(folder);
    }

    @Override
    public void write(Path file, Content content) throws IOException {
      if (file.endsWith("journal")) {
        System.out.println(PUBLISHING);
        System.out.flush();
      }
      SYSTEM.write(file, content);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
      SYSTEM.move(from, to);
    }

    @Override
    public void delete(Path path) throws IOException {
      SYSTEM.delete(path);
    }

    @Override
    public void flush(Path folder) throws IOException {
      SYSTEM.flush(folder);
    }
  }

  /** Waits at the first document, when the output folder is held. */
  private static final class WaitingDocuments implements Documents {
    private final Documents documents = new TinyDocuments();
    private boolean waited;

    private synchronized Documents documents() {
      if (!waited) {
        waited = true;
        try {
          pause(WAITING);
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
      return documents;
    }

    @Override
    public byte[] statement(
        Night night, Planned planned, Optional<List<Figures.Change>> changes, byte[] figures) {
      return documents().statement(night, planned, changes, figures);
    }

    @Override
    public byte[] draft(Night night, Planned planned, byte[] figures) {
      return documents().draft(night, planned, figures);
    }

    @Override
    public byte[] summary(MonthReport month) {
      return documents().summary(month);
    }

    @Override
    public byte[] morning(MorningReport report) {
      return documents().morning(report);
    }
  }
}
