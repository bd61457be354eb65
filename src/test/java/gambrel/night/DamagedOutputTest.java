package gambrel.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.publish.Disk;
import gambrel.files.publish.FailingDisk;
import gambrel.files.publish.HastyDisk;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Between two nights a file of the output folder is damaged: a document, the register, the journal
 * of a run that died. The nights after it are done as without the damage, and say what is lost, or
 * they are refused and change nothing. {@code -Ddamages=700} is a long run: 2,100 damages.
 */
class DamagedOutputTest {
  private static final int DAMAGES = Integer.getInteger("damages", 25);
  private static final String NEXT = "2026-03-07T02:00";
  private static final String THIRD = "2026-03-08T02:00";
  private static final String REVISED = "statements/ann/B1-r1.pdf";
  private static final String REVISION = "statements/ann/B1-r2.pdf";
  private static final String REGISTER = "data/statements.csv";

  @TempDir private static Path folder;

  private static Path written;
  private static SortedMap<String, byte[]> first;
  private static SortedMap<String, String> whole;
  private static SortedMap<String, String> lost;
  private static final List<SortedMap<String, byte[]>> DIED = new ArrayList<>();

  /** A night that issues two statements and holds one; then one is to be revised, one is new. */
  @BeforeAll
  static void nights() throws IOException {
    var shop = new NightShop(folder.resolve("shop"));
    shop.beef("B1", "ann").beef("B2", "bob").body("B3", "ann").body("B4", "bob").packs("B4", "150");
    var out = folder.resolve("first");
    shop.run(out, NightShop.NIGHT);
    first = bytes(out);
    shop.packs("B3", "118").replace("exports/a.csv", "B1,rump,120", "B1,rump,119.9");
    written = shop.write();
    whole = nights(lay("whole", first));
    var without = new TreeMap<>(first);
    without.remove(REVISED);
    lost = nights(lay("lost", without));
    assertTrue(whole.get(REVISION).contains("was=120.000"), whole.get(REVISION));
    assertTrue(lost.get(REVISION).contains("changes not known"), lost.get(REVISION));
    for (int n = 0; DIED.size() < 12; n++) {
      var dying = lay("dying" + n, first);
      run(dying, NEXT, new FailingDisk(n));
      if (Files.exists(dying.resolve(".journal"))) {
        DIED.add(bytes(dying));
      }
    }
  }

  private static SortedMap<String, byte[]> bytes(Path out) throws IOException {
    var tree = new TreeMap<String, byte[]>();
    for (String file : Trees.files(out)) {
      tree.put(file, Files.readAllBytes(out.resolve(file)));
    }
    return tree;
  }

  private static Path lay(String name, SortedMap<String, byte[]> tree) throws IOException {
    var out = folder.resolve(name);
    for (var file : tree.entrySet()) {
      Files.createDirectories(out.resolve(file.getKey()).getParent());
      Files.write(out.resolve(file.getKey()), file.getValue());
    }
    return out;
  }

  private static NightOutcome run(Path out, String asOf, Disk disk) {
    return TwoNights.night(written, false, disk).run(out, NightShop.moment(asOf), List.of());
  }

  private static NightOutcome run(Path out, String asOf) {
    return run(out, asOf, new HastyDisk());
  }

  private static SortedMap<String, String> nights(Path out) {
    NightShop.report(run(out, NEXT));
    NightShop.report(run(out, THIRD));
    return Trees.published(out);
  }

  @Test
  void aDamagedDocumentIsLostAndGivesNoFigure() throws IOException {
    var documents = first.keySet().stream().filter(file -> file.endsWith(".pdf")).toList();
    for (int seed = 0; seed < DAMAGES; seed++) {
      var random = new SplittableRandom(seed);
      String file =
          random.nextBoolean() ? REVISED : documents.get(random.nextInt(documents.size()));
      var tree = new TreeMap<>(first);
      tree.put(file, damaged(first.get(file), random));
      String what = "seed " + seed + ", " + file;

      var after = nights(lay("document" + seed, tree));

      boolean intact = Arrays.equals(first.get(file), tree.get(file));
      var expected = new TreeMap<>(file.equals(REVISED) && !intact ? lost : whole);
      if (file.startsWith("statements/")) {
        expected.put(file, text(tree.get(file)));
        assertEquals(!intact, after.get("data/notices.csv").contains("document-lost"), what);
      }
      expected.keySet().removeAll(List.of("morning.pdf", "data/notices.csv"));
      after.keySet().removeAll(List.of("morning.pdf", "data/notices.csv"));
      assertEquals(expected, after, what);
    }
  }

  @Test
  void aDamagedRegisterIsReadAsItWasOrRefused() throws IOException {
    for (int seed = 0; seed < DAMAGES; seed++) {
      var random = new SplittableRandom(seed);
      String file =
          random.nextInt(8) > 0
              ? random.nextBoolean() ? REGISTER : "data/charges.csv"
              : random.nextBoolean() ? ".register" : ".pages";
      var tree = new TreeMap<>(first);
      tree.put(file, damaged(first.get(file), random));
      check("register" + seed, tree, "the register data/");
    }
  }

  @Test
  void aDamagedJournalIsCarriedOutAsItWasOrRefused() throws IOException {
    for (int seed = 0; seed < DAMAGES; seed++) {
      var random = new SplittableRandom(seed);
      var tree = new TreeMap<>(DIED.get(random.nextInt(DIED.size())));
      tree.put(".journal", damaged(tree.get(".journal"), random));
      check("journal" + seed, tree, "a run died while it published, and its journal .journal");
    }
  }

  /** Both nights are done as without the damage, or refused for {@code why} and change nothing. */
  private static void check(String name, SortedMap<String, byte[]> tree, String why)
      throws IOException {
    var out = lay(name, tree);
    var before = Trees.published(out);
    var outcome = run(out, NEXT);
    boolean done = outcome instanceof NightOutcome.Done;
    if (!done) {
      var refused = assertInstanceOf(NightOutcome.Stopped.class, outcome, name);
      assertEquals(2, refused.exitCode(), name);
      assertTrue(refused.why().startsWith(why), refused.why());
    }
    assertEquals(outcome.exitCode(), run(out, THIRD).exitCode(), name);
    assertEquals(done ? whole : before, Trees.published(out), name);
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  /** What disks, programs and people do to a file. */
  private static byte[] damaged(byte[] bytes, SplittableRandom random) {
    String text = text(bytes);
    return switch (random.nextInt(9)) {
      case 0, 1 -> flipped(bytes, random);
      case 2 -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
      case 3 -> swapped(text, "\n", random);
      case 4 -> swapped(text, ",", random);
      case 5 -> digitChanged(text, random);
      case 6 -> join(new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF}, bytes);
      case 7 -> bytes(text.replace("\n", random.nextBoolean() ? "\r\n" : "\r"));
      default -> bytes(text.replace(',', ';').replace("\n", "\r\n"));
    };
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static byte[] join(byte[] one, byte[] other) {
    var all = new ByteArrayOutputStream();
    all.writeBytes(one);
    all.writeBytes(other);
    return all.toByteArray();
  }

  private static byte[] flipped(byte[] bytes, SplittableRandom random) {
    var flipped = bytes.clone();
    for (int i = flipped.length == 0 ? -1 : random.nextInt(3); i >= 0; i--) {
      flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
    }
    return flipped;
  }

  /** Two lines or cells are exchanged, or one is lost. */
  private static byte[] swapped(String text, String between, SplittableRandom random) {
    var parts = new ArrayList<>(List.of(text.split(between, -1)));
    int one = random.nextInt(parts.size());
    if (random.nextInt(3) == 0) {
      parts.remove(one);
    } else {
      Collections.swap(parts, one, random.nextInt(parts.size()));
    }
    return bytes(String.join(between, parts));
  }

  /** A figure becomes another. */
  private static byte[] digitChanged(String text, SplittableRandom random) {
    var digits = text.chars().filter(Character::isDigit).count();
    if (digits == 0) {
      return bytes(text);
    }
    var changed = new StringBuilder(text);
    int at = random.nextInt(text.length());
    while (!Character.isDigit(text.charAt(at))) {
      at = (at + 1) % text.length();
    }
    changed.setCharAt(at, (char) ('0' + random.nextInt(10)));
    return bytes(changed.toString());
  }
}
