package gambrel.files.tables;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A data file: a header and rows of the same width.
 *
 * @param name its file name
 * @param header column names
 * @param source opens the same rows each time; cells as they are printed
 */
public record Table(String name, List<String> header, Supplier<Stream<List<String>>> source) {
  /** Copies the header. */
  public Table {
    header = List.copyOf(header);
  }

  /** The rows, each as wide as the header. */
  public Stream<List<String>> rows() {
    return source.get();
  }
}
