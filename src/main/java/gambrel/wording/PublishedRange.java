package gambrel.wording;

import gambrel.cuts.Species;
import gambrel.measure.Exact;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What others have published of a figure.
 *
 * @param low lower end, in per cent
 * @param high upper end, in per cent
 * @param about key of what it was found of, or of how; or empty
 * @param source who published it
 */
record PublishedRange(BigDecimal low, BigDecimal high, String about, String source) {
  private static final String FILE = "/gambrel/ranges.csv";
  private static final Map<String, PublishedRange> ALL = read();

  /** The range of a species' figure: {@code dressing} or {@code chill}. */
  static Optional<PublishedRange> of(Species species, String figure) {
    return Optional.ofNullable(ALL.get(species.id() + ' ' + figure));
  }

  /** Who published it, and of what. */
  String source(Wording wording) {
    return about.isEmpty() ? source : wording.say("range." + about, source);
  }

  /** Whether a percentage, as printed, lies below (−1), in (0) or above (1) the range. */
  int compare(BigFraction percent) {
    var printed = Exact.round(percent, 1);
    if (printed.compareTo(low) < 0) {
      return -1;
    }
    return printed.compareTo(high) > 0 ? 1 : 0;
  }

  private static Map<String, PublishedRange> read() {
    var format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    var ranges = new HashMap<String, PublishedRange>();
    try (var in = PublishedRange.class.getResourceAsStream(FILE);
        var records = format.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (var row : records) {
        ranges.put(
            row.get("species") + ' ' + row.get("figure"),
            new PublishedRange(
                new BigDecimal(row.get("low")),
                new BigDecimal(row.get("high")),
                row.get("about"),
                row.get("source")));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return ranges;
  }
}
