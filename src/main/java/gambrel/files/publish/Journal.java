package gambrel.files.publish;

import java.io.IOException;
import java.io.StreamCorruptedException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;

/**
 * The steps that publish a night whose files are all staged. As soon as the journal is in the
 * output folder the night counts as published: if the process dies, the next run carries the
 * journal out.
 *
 * @param steps in the order in which they become visible
 */
record Journal(List<Step> steps) {
  /** The journal's name in the output folder. */
  static final String FILE = ".journal";

  /** The folder of the staged files in the output folder. */
  static final String STAGING = ".staging";

  private static final String MOVE = "move ";
  private static final String REMOVE = "remove ";

  /** Begins the last line, the CRC-32 of all lines before it. */
  private static final String END = "end ";

  /** One file that is put in place or removed. */
  sealed interface Step {
    /** The file, relative to the output folder. */
    String path();
  }

  /**
   * Puts a staged file in place.
   *
   * @param staged its name in the staging folder
   */
  record Move(String staged, String path) implements Step {}

  /** Removes a file. */
  record Remove(String path) implements Step {}

  /** Copies the steps. */
  Journal {
    steps = List.copyOf(steps);
  }

  /**
   * The journal of an output folder; without steps if there is none.
   *
   * @throws StreamCorruptedException if it is not as it was written
   */
  static Journal read(Path root) throws IOException {
    if (!Files.exists(root.resolve(FILE))) {
      return new Journal(List.of());
    }
    byte[] bytes = Files.readAllBytes(root.resolve(FILE));
    var steps = new ArrayList<Step>();
    for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) {
      String[] parts = line.split(" ", 3);
      if (line.startsWith(MOVE) && parts.length == 3) {
        steps.add(new Move(parts[1], parts[2]));
      } else if (line.startsWith(REMOVE)) {
        steps.add(new Remove(line.substring(REMOVE.length())));
      }
    }
    var journal = new Journal(steps);
    if (!Arrays.equals(bytes, journal.bytes())) {
      throw new StreamCorruptedException(
          "a run died while it published, and its journal "
              + FILE
              + " is damaged: restore the reports folder from the backup");
    }
    return journal;
  }

  /** The journal's content as a file. */
  byte[] bytes() {
    var text = new StringBuilder();
    for (var step : steps) {
      text.append(step instanceof Move move ? MOVE + move.staged() + ' ' : REMOVE);
      text.append(step.path()).append('\n');
    }
    var sum = new CRC32();
    sum.update(text.toString().getBytes(StandardCharsets.UTF_8));
    text.append(END).append(Long.toHexString(sum.getValue()));
    return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }
}
