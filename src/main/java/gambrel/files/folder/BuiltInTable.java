package gambrel.files.folder;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads tables that are resources of the program. */
final class BuiltInTable {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private BuiltInTable() {}

  /** The rows of {@code /gambrel/NAME.csv}. */
  static List<CSVRecord> rows(String name) {
    String path = "/gambrel/" + name + ".csv";
    try (var in = BuiltInTable.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new FileNotFoundException(path);
      }
      return FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The value of a cell; empty if it is blank. */
  static <T> Optional<T> cell(CSVRecord row, String column, Function<String, T> read) {
    return Optional.of(row.get(column)).filter(text -> !text.isEmpty()).map(read);
  }
}
