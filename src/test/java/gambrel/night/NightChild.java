package gambrel.night;

import gambrel.files.publish.Disk;
import gambrel.files.publish.WatchedDisk;
import gambrel.insight.month.MonthReport;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Figures;
import gambrel.trade.register.Planned;
import gambrel.trade.register.Register;
import gambrel.trade.sending.Letter;
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
 * The second of {@link TwoNights} in another process. The process prints a word at certain points
 * and waits there until it is released or killed.
 */
final class NightChild implements AutoCloseable {
  /** Printed when the process has started; the run begins when it is released. */
  static final String READY = "ready";

  /** Printed where the process waits in the middle of its run. */
  static final String WAITING = "waiting";

  /** Printed when all files are staged and the journal is written. */
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

  /** Waits at the disk operation with this number; -1 at the first document. */
  static NightChild waitingAt(int operation, Path shop, Path out, boolean pdf) {
    return start(shop, out, pdf, String.valueOf(operation));
  }

  /** A child that does not wait. */
  static NightChild runningThrough(Path shop, Path out, boolean pdf) {
    return start(shop, out, pdf, "never");
  }

  /** A child that does not wait and prints a word when it begins to publish. */
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

  /** The next word that it prints; empty when it has ended. */
  Optional<String> listen() throws IOException {
    return Optional.ofNullable(said.readLine());
  }

  /** Waits until it prints {@code word}. */
  void await(String word) throws IOException {
    var heard = listen();
    if (!heard.equals(Optional.of(word))) {
      throw new AssertionError("heard " + heard + ", not " + word);
    }
  }

  /** Releases it. */
  void letOn() throws IOException {
    process.getOutputStream().write('\n');
    process.getOutputStream().flush();
  }

  /** Waits at most so many microseconds for its end. */
  boolean endsWithin(long micros) throws InterruptedException {
    return process.waitFor(micros, TimeUnit.MICROSECONDS);
  }

  /** Waits for its end; returns its exit code. */
  int exitCode() throws InterruptedException {
    if (!process.waitFor(PATIENCE, TimeUnit.SECONDS)) {
      throw new AssertionError("it does not end");
    }
    return process.exitValue();
  }

  /** Kills it at once, with SIGKILL where there are signals. */
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
      var inputs = Inputs.read(shop, Progress.NONE);
      Documents documents =
          args[2].equals("pdf")
              ? PdfDocuments.of(shop, inputs.shop().settings())
              : new TinyDocuments();
      var run =
          new NightlyRun(
              inputs,
              args[3].equals("-1") ? new WaitingDocuments() : documents,
              disk(args[3]),
              Progress.NONE);
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

  /** Waits at one operation after half of it is done. */
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

  /** The machine's disk, which prints a word when the journal is written. */
  private static final class TellingDisk implements Disk {
    @Override
    public void makeFolder(Path folder) throws IOException {
      SYSTEM.makeFolder(folder);
    }

    @Override
    public void write(Path file, byte[] content) throws IOException {
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

  /** Waits at the first document, while the output folder is locked. */
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
    public byte[] toPrint(Night night, List<Printed> customers) {
      return documents().toPrint(night, customers);
    }

    @Override
    public MailText mail(Night night, Register register, Letter letter) {
      return documents().mail(night, register, letter);
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
