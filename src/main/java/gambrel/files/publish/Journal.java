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

  /** The folder in the output folder that holds each staged file under its own path. */
  static final String STAGING = ".staging";

  /** Begins the last line, the CRC-32 of all lines before it. */
  private static final String END = "end ";

  /** What a step does with its file. */
  enum Act {
    /** Puts the staged file in place. */
    MOVE,
    /** Removes the published file. */
    REMOVE
  }

  /**
   * A line of the journal: one file that is put in place or removed.
   *
   * @param path relative to the output folder
   */
  record Step(Act act, String path) {}

  /** Copies the steps. */
  Journal {
    steps = List.copyOf(steps);
  }

  /** Whether an output folder has a journal. */
  static boolean exists(Path root) {
    return Files.exists(root.resolve(FILE));
  }

  /**
   * The journal of an output folder; without steps if there is none.
   *
   * @throws StreamCorruptedException if it is not as it was written
   */
  static Journal read(Path root) throws IOException {
    if (!exists(root)) {
      return new Journal(List.of());
    }
    byte[] bytes = Files.readAllBytes(root.resolve(FILE));
    var steps = new ArrayList<Step>();
    for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) {
      for (var act : Act.values()) {
        if (line.startsWith(act + " ")) {
          steps.add(new Step(act, line.substring(act.name().length() + 1)));
        }
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
    steps.forEach(step -> text.append(step.act()).append(' ').append(step.path()).append('\n'));
    var sum = new CRC32();
    sum.update(text.toString().getBytes(StandardCharsets.UTF_8));
    text.append(END).append(Long.toHexString(sum.getValue()));
    return text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }
}
