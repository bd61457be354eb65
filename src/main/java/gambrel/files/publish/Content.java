package gambrel.files.publish;

import gambrel.files.tables.Table;
import java.io.IOException;
import java.io.OutputStream;

/** The content of a file, the same each time it is written. */
@FunctionalInterface
public interface Content {
  /** Writes all of it; the stream is not closed. */
  void writeTo(OutputStream out) throws IOException;

  /** The content with these bytes. */
  static Content of(byte[] bytes) {
    return out -> out.write(bytes);
  }

  /** The content of a data file, whose rows are made while they are written. */
  static Content of(Table table) {
    return out -> Csv.write(table, out);
  }
}
