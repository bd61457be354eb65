package gambrel.damage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.NightShop;
import gambrel.night.Trees;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * An export that is monstrous need not fit into memory. {@code -Dmonster.mb=1024} tries lines of a
 * gigabyte.
 */
@Timeout(value = 600, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class SmallHeapTest {
  /** A night of a few bodies needs less than half of it; the lines are several times as long. */
  private static final int HEAP_MB = 48;

  private static final long LINE = Integer.getInteger("monster.mb", 128) * (1L << 20);
  private static final String EXPORT = "exports/b.csv";
  private static final String HEADER = "scale,ticket,time,body,code,net,pieces,batch,status\n";
  private static final String ROW = "bench,900,2026-03-05T11:00:00,B1,fat,0.5,,,\n";

  @TempDir private Path temporary;
  private Path folder;

  @BeforeEach
  void openShop() {
    folder = new NightShop(temporary.resolve("shop")).beef("B1", "ann").write();
  }

  private void export(String text) {
    try {
      Files.writeString(folder.resolve(EXPORT), text);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /**
   * Makes the last line of a file as long as a monster, of NUL bytes, which take no room on disk.
   */
  private static void grow(Path file) throws IOException {
    try (var end = new RandomAccessFile(file.toFile(), "rw")) {
      end.setLength(LINE);
      end.seek(LINE);
      end.write(('\n' + ROW).getBytes(StandardCharsets.UTF_8));
    }
  }

  /** The counts of {@code b.csv} after a night in a small heap that ends with {@code exit}. */
  private String night(int exit) throws Exception {
    var out = temporary.resolve("out");
    var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    var night =
        new ProcessBuilder(
                List.of(
                    java,
                    "-Xmx" + HEAP_MB + "m",
                    "-cp",
                    System.getProperty("java.class.path"),
                    SmallHeapNight.class.getName(),
                    folder.toString(),
                    out.toString(),
                    NightShop.NIGHT))
            .redirectErrorStream(true)
            .redirectOutput(temporary.resolve("said").toFile())
            .start();
    try {
      assertTrue(night.waitFor(10, TimeUnit.MINUTES));
    } finally {
      night.destroyForcibly();
    }
    // A process that fails of itself ends with 1, too, but says why.
    assertEquals("", Trees.text(temporary.resolve("said")));
    assertEquals(exit, night.exitValue());
    return Trees.lines(out.resolve("data/rows.csv")).stream()
        .filter(line -> line.startsWith(EXPORT))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aBlockOfNulsSetsAllRowsOfItsFileAside() throws Exception {
    export(HEADER + ROW.replace("900", "901"));
    grow(folder.resolve(EXPORT));

    assertEquals("exports/b.csv,3,0,0,0,3", night(1));
  }

  @Test
  void aBlockOfNulsAfterAnOpenQuoteSetsAllRowsOfItsFileAside() throws Exception {
    export(HEADER + ROW.replace("fat", "\"fat"));
    grow(folder.resolve(EXPORT));

    assertEquals("exports/b.csv,3,0,0,0,3", night(1));
  }

  @Test
  void blankLinesBeyondNumberTakeNoRoom() throws Exception {
    export(HEADER + ROW + "\n".repeat((int) (LINE / 8)) + ROW.replace("900", "901"));

    assertEquals("exports/b.csv,2,2,0,0,0", night(0));
  }

  @Test
  void rowsOfTwentyThousandCellsAreSetAside() throws Exception {
    export(HEADER + (ROW.strip() + ",x".repeat(20_000) + "\n").repeat(300) + ROW);

    assertEquals("exports/b.csv,301,1,299,0,1", night(1));
  }

  @Test
  void aHeaderOfAHundredThousandCellsMakesTheFileUnreadable() throws Exception {
    export(HEADER.strip() + ",x".repeat(100_000) + "\n" + ROW);

    assertTrue(night(1).startsWith("exports/b.csv,"));
  }
}
