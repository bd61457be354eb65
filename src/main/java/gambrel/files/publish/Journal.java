package gambrel.files.publish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

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

  /** The journal of an output folder; without steps if there is none. */
  static Journal read(Path root) throws IOException {
    var steps = new ArrayList<Step>();
    try {
      for (String line : Files.readAllLines(root.resolve(FILE))) {
        int end = Math.max(0, line.indexOf(' '));
        steps.add(new Step(Act.valueOf(line.substring(0, end)), line.substring(end + 1)));
      }
    } catch (NoSuchFileException e) {
      return new Journal(List.of());
    } catch (IllegalArgumentException e) {
      throw new IOException(FILE + " was not written by this program", e);
    }
    return new Journal(steps);
  }

  /** The journal's content as a file. */
  byte[] bytes() {
    var text = new StringBuilder();
    steps.forEach(step -> text.append(step.act()).append(' ').append(step.path()).append('\n'));
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
