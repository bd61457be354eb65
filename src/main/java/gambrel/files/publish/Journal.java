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

  /** The folder of the staged files in the output folder. */
  static final String STAGING = ".staging";

  private static final String MOVE = "move ";
  private static final String REMOVE = "remove ";

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

  /** The journal of an output folder; without steps if there is none. */
  static Journal read(Path root) throws IOException {
    var steps = new ArrayList<Step>();
    try {
      for (String line : Files.readAllLines(root.resolve(FILE), StandardCharsets.UTF_8)) {
        steps.add(step(line));
      }
    } catch (NoSuchFileException e) {
      return new Journal(List.of());
    }
    return new Journal(steps);
  }

  private static Step step(String line) throws IOException {
    if (line.startsWith(REMOVE)) {
      return new Remove(line.substring(REMOVE.length()));
    }
    String[] parts = line.split(" ", 3);
    if (!line.startsWith(MOVE) || parts.length < 3) {
      throw new IOException(FILE + " was not written by this program: " + line);
    }
    return new Move(parts[1], parts[2]);
  }

  /** The journal's content as a file. */
  byte[] bytes() {
    var text = new StringBuilder();
    for (var step : steps) {
      text.append(step instanceof Move move ? MOVE + move.staged() + ' ' : REMOVE);
      text.append(step.path()).append('\n');
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }
}
