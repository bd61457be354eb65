package gambrel.files.publish;

import gambrel.files.tables.Table;
import java.io.IOException;
import java.io.OutputStream;

/** What a file is to hold: the same however often it is written. */
@FunctionalInterface
public interface Content {
  /** Writes all of it; the stream is not closed. */
  void writeTo(OutputStream out) throws IOException;

  /** Bytes that are there already. */
  static Content of(byte[] bytes) {
    return out -> out.write(bytes);
  }

  /** A table, whose rows are made as they are written. */
  static Content of(Table table) {
    return out -> Csv.write(table, out);
  }
}
