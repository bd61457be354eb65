package gambrel.bench;

import com.sun.management.OperatingSystemMXBean;
import gambrel.pages.render.PageRenderer;
import gambrel.pages.render.pdf.Attachment;
import gambrel.pages.render.template.Templates;
import gambrel.pages.views.ManyStatements;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;

/**
 * How many statements a second the pages' part of the program makes: from the view to the bytes of
 * a tagged PDF/A file with its figures attached. Two pages each, about sixty packs, no two alike.
 *
 * <pre>Statements [COUNT [THREADS [ROUNDS [FOLDER]]]]</pre>
 *
 * <p>The first round is what a night feels in a fresh Java; the later ones are warm, with other
 * statements each. The digest over all bytes tells whether another version makes the same; FOLDER
 * gets the first statement, to be looked at.
 */
public final class Statements {
  private static final double NANOS = 1e9;

  private final PageRenderer renderer = new PageRenderer(Templates.builtIn());
  private final int count;
  private final int threads;

  private Statements(int count, int threads) {
    this.count = count;
    this.threads = threads;
  }

  /** Measures and prints a line a round. */
  public static void main(String[] args) throws Exception {
    var bench = new Statements(number(args, 0, 500), number(args, 1, 1));
    for (int round = 0; round < number(args, 2, 3); round++) {
      bench.round(round);
    }
    if (args.length > 3) {
      Files.write(Path.of(args[3], "statement.pdf"), bench.make(0));
    }
    System.out.printf(Locale.ROOT, "peak heap %d MB%n", peakHeap() >> 20);
  }

  private static int number(String[] args, int place, int usual) {
    return args.length > place ? Integer.parseInt(args[place]) : usual;
  }

  private void round(int round) throws Exception {
    var work = new ArrayList<Callable<byte[]>>();
    for (int i = 0; i < count; i++) {
      int number = round * count + i;
      work.add(() -> digest().digest(make(number)));
    }
    var workers = Executors.newFixedThreadPool(threads);
    long worked = processor();
    long from = System.nanoTime();
    var all = digest();
    for (var made : workers.invokeAll(work)) {
      all.update(made.get());
    }
    double seconds = (System.nanoTime() - from) / NANOS;
    worked = processor() - worked;
    workers.shutdown();
    System.out.printf(
        Locale.ROOT,
        "%s threads %d: %d statements, %.1f a second, %.1f ms of processor each; digest %s%n",
        round == 0 ? "cold" : "warm",
        threads,
        count,
        count / seconds,
        worked / 1e6 / count,
        HexFormat.of().formatHex(all.digest(), 0, 8));
  }

  private byte[] make(int number) throws IOException {
    var view = ManyStatements.view(number);
    var figures =
        new Attachment("figures.csv", "text/csv", "The figures of this page", figures(number));
    return renderer.render("statement.ftlh", view, ManyStatements.info(view), List.of(figures));
  }

  private static byte[] figures(int number) {
    var csv = new StringBuilder("figure,value\n");
    for (int i = 0; i < 60; i++) {
      csv.append("item:cut-").append(i).append(',').append(number * 7 + i).append(".000\n");
    }
    return csv.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static MessageDigest digest() throws NoSuchAlgorithmException {
    return MessageDigest.getInstance("SHA-256");
  }

  /** What the whole process has used so far, its compilers and collectors too. */
  private static long processor() {
    return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }

  private static long peakHeap() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .map(MemoryPoolMXBean::getPeakUsage)
        .mapToLong(usage -> usage.getUsed())
        .sum();
  }
}
