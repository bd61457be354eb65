package gambrel.files.folder;

import java.util.List;
import java.util.stream.Stream;

/**
 * What a file of the shop folder holds.
 *
 * @param file its name
 * @param required columns without which it cannot be read
 * @param optional columns that may be missing
 */
public record Columns(String file, List<String> required, List<String> optional) {

  /** A file with these required columns and no others yet. */
  static Columns of(String file, String... required) {
    return new Columns(file, List.of(required), List.of());
  }

  /** The same with more optional columns. */
  Columns and(String... optional) {
    return new Columns(
        file, required, Stream.concat(this.optional.stream(), Stream.of(optional)).toList());
  }

  /** All columns. */
  List<String> all() {
    return Stream.concat(required.stream(), optional.stream()).toList();
  }
}
