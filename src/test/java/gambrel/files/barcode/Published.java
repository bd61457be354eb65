package gambrel.files.barcode;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Tables from publications; the text file beside each names its source. */
final class Published {
  private Published() {}

  static List<Map<String, String>> table(String name) {
    var format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (var in = Published.class.getResourceAsStream(name + ".csv");
        var parser = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), format)) {
      return parser.stream().map(CSVRecord::toMap).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
