package gambrel.files.folder;

import java.util.List;
import java.util.stream.Stream;

/**
 * The columns of a file of the shop folder.
 *
 * @param file its name
 * @param required columns that it must have
 * @param optional columns that may be missing
 */
record FileColumns(String file, List<String> required, List<String> optional) {
  /** A file with these required columns only. */
  static FileColumns of(String file, String... required) {
    return new FileColumns(file, List.of(required), List.of());
  }

  /** The same file with more optional columns. */
  FileColumns and(String... optional) {
    return new FileColumns(
        file, required, Stream.concat(this.optional.stream(), Stream.of(optional)).toList());
  }

  /** All columns. */
  List<String> all() {
    return Stream.concat(required.stream(), optional.stream()).toList();
  }
}
