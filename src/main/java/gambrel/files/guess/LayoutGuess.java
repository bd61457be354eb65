package gambrel.files.guess;

import java.util.ArrayList;
import java.util.List;

/**
 * A description of an unknown export, and a layout to start from.
 *
 * @param file the export, relative to the shop folder
 * @param saveAs the path of its layout, relative to the shop folder
 * @param found a sentence for each guess
 * @param layout the lines of the layout
 */
public record LayoutGuess(String file, String saveAs, List<String> found, List<String> layout) {
  /** Copies the lists. */
  public LayoutGuess {
    found = List.copyOf(found);
    layout = List.copyOf(layout);
  }

  /** The description and the layout, line by line, for a person to read. */
  public List<String> lines() {
    var lines = new ArrayList<String>();
    lines.add("What " + file + " looks like:");
    found.forEach(sentence -> lines.add("  " + sentence));
    if (!layout.isEmpty()) {
      lines.add("A layout to start from; look at every line, then save it as " + saveAs + ":");
      layout.forEach(line -> lines.add(line.isEmpty() ? "" : "  " + line));
    }
    return lines;
  }
}
