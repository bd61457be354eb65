package gambrel.night;

import gambrel.files.publish.Changes;
import gambrel.files.publish.Disk;
import gambrel.files.publish.HastyDisk;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Digest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Two nights of a shop with everything that a night can change: first statements, a revision, a
 * reissue, a draft that is issued, a new draft, and a month without bodies.
 */
final class TwoNights {
  /** When the second night runs. */
  static final String SECOND = "2026-03-07T02:00";

  private static final int FILE = 10;
  private static final int SHA256 = 11;

  private final Path shop;
  private final SortedMap<String, String> yesterday;
  private final SortedMap<String, String> today;

  private TwoNights(Path shop, Map<String, String> yesterday, Map<String, String> today) {
    this.shop = shop;
    this.yesterday = new TreeMap<>(yesterday);
    this.today = new TreeMap<>(today);
  }

  /** Runs both nights under {@code folder}; the shop stays as it is on the second. */
  static TwoNights of(Path folder, boolean pdf) {
    var shop = new NightShop(folder.resolve("shop"));
    shop.beef("B1", "ann").beef("B2", "bob").body("B3", "ann").beef("B4", "ann").beef("B5", "bob");
    shop.weigh("bench", "05T11:00:00", "B4", "nothing", "1");
    shop.add("bodies.csv", "B6,beef,2026-02-27,ann,");
    shop.add("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
    shop.add("releases.csv", "body,by,on,reason,action");
    var out = folder.resolve("whole");
    var first = NightShop.moment(NightShop.NIGHT);
    night(shop.write(), pdf, new HastyDisk()).run(out, first, List.of());
    var yesterday = Trees.published(out);
    shop.add("releases.csv", "B1,Hetty,2026-03-06T09:00,price,reissue");
    shop.add("releases.csv", "B4,Hetty,2026-03-06T09:00,a test,release");
    shop.add("corrections.csv", "bench,9,,net,119.9,Hetty,2026-03-06T09:00,label misread");
    shop.packs("B3", "118").weigh("bench", "05T12:00:00", "B5", "nothing", "1");
    shop.replace("bodies.csv", "B6,beef,2026-02-27", "B6,beef,2026-03-02");
    night(shop.write(), pdf, new HastyDisk()).run(out, NightShop.moment(SECOND), List.of());
    return new TwoNights(folder.resolve("shop"), yesterday, Trees.published(out));
  }

  static NightlyRun night(Path shop, boolean pdf, Disk disk) {
    try {
      var inputs = Inputs.read(shop, Progress.NONE);
      var documents = pdf ? PdfDocuments.of(shop, inputs.shop().settings()) : new TinyDocuments();
      return new NightlyRun(inputs, documents, disk, Progress.NONE);
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  /** The shop folder, as on the second night. */
  Path shop() {
    return shop;
  }

  /** What the first night published. */
  SortedMap<String, String> yesterday() {
    return yesterday;
  }

  /** What the second night publishes. */
  SortedMap<String, String> today() {
    return today;
  }

  /** An output folder in yesterday's state. */
  Path lay(Path out) throws IOException {
    for (var file : yesterday.entrySet()) {
      var path = out.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue().getBytes(StandardCharsets.ISO_8859_1));
    }
    return out;
  }

  /** Runs the second night. */
  NightOutcome run(Path out, boolean pdf, Disk disk) {
    return night(shop, pdf, disk).run(out, NightShop.moment(SECOND), List.of());
  }

  /**
   * Checks an output folder in which a run died: every file is yesterday's or today's, the
   * documents of the register are unchanged, and the published state is that of one night.
   */
  State state(Path out) throws IOException {
    var seen = visible(out);
    for (var file : seen.entrySet()) {
      boolean whole =
          file.getValue().equals(yesterday.get(file.getKey()))
              || file.getValue().equals(today.get(file.getKey()));
      check(whole, file.getKey() + " is of neither night");
    }
    checkRegister(out);
    var counting = counting(out);
    check(counting.equals(yesterday) || counting.equals(today), "a mixture counts");
    if (Files.exists(out.resolve(".journal"))) {
      return State.UNDER_WAY;
    }
    check(seen.equals(counting), "a mixture is to be seen");
    return seen.equals(today) ? State.TODAY : State.YESTERDAY;
  }

  /** The state of an output folder. */
  enum State {
    /** No file of today's night counts. */
    YESTERDAY,
    /** Today's night counts, and its files are being moved. */
    UNDER_WAY,
    /** All files are today's. */
    TODAY
  }

  /** Everything published that a person sees. */
  static SortedMap<String, String> visible(Path out) {
    var tree = Trees.published(out);
    tree.keySet().removeIf(path -> path.startsWith("."));
    return tree;
  }

  private SortedMap<String, String> counting(Path out) throws IOException {
    var files = Changes.unwritten(out);
    var tree = new TreeMap<String, String>();
    for (var folder : List.of("statements", "held", "summaries", "data")) {
      for (var file : files.list(folder)) {
        tree.put(file, text(files.read(file).orElseThrow()));
      }
    }
    for (var file : List.of("morning.pdf", "to-print.pdf")) {
      files.read(file).ifPresent(bytes -> tree.put(file, text(bytes)));
    }
    return tree;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static void checkRegister(Path out) throws IOException {
    var register = out.resolve("data/statements.csv");
    if (Files.exists(register)) {
      for (var line : Trees.lines(register).subList(1, Trees.lines(register).size())) {
        var cells = line.split(",");
        var document = Files.readAllBytes(out.resolve(cells[FILE]));
        check(Digest.of(document).equals(cells[SHA256]), cells[FILE] + " is not as registered");
      }
    }
  }

  private static void check(boolean holds, String otherwise) {
    if (!holds) {
      throw new AssertionError(otherwise);
    }
  }
}
