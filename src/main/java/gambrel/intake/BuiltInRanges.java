package gambrel.intake;

import gambrel.shop.PublishedRange;
import gambrel.shop.PublishedRanges;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import org.apache.commons.csv.CSVFormat;

/** Reads the built-in published ranges, each with its source. */
public final class BuiltInRanges {
  private static final String FILE = "/gambrel/ranges.csv";
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private BuiltInRanges() {}

  /** All of them. */
  public static PublishedRanges load() {
    var ranges = new HashMap<String, PublishedRange>();
    try (var in = BuiltInRanges.class.getResourceAsStream(FILE);
        var records = FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (var row : records) {
        ranges.put(
            PublishedRanges.key(row.get("species"), row.get("figure")),
            new PublishedRange(
                new BigDecimal(row.get("low")),
                new BigDecimal(row.get("high")),
                row.get("about"),
                row.get("source")));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new PublishedRanges(ranges);
  }
}
