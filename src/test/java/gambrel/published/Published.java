package gambrel.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Published tables and comparison with printed numbers. */
final class Published {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

  private Published() {}

  /** The rows of a table. */
  static List<Map<String, String>> table(String name) {
    try (var in = Published.class.getResourceAsStream(name + ".csv")) {
      if (in == null) {
        throw new FileNotFoundException(name);
      }
      try (var parser = FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
        return parser.stream().map(CSVRecord::toMap).toList();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows of a table with a value in a column. */
  static List<Map<String, String>> table(String name, String column, String value) {
    return table(name).stream().filter(row -> row.get(column).equals(value)).toList();
  }

  /** A printed name as the id of an item. */
  static String item(String printed) {
    return printed.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("-$", "");
  }

  /** Expects that a number rounds half up to a printed one, to all its digits. */
  static void assertPrinted(String printed, String computed, String of) {
    assertEquals(new BigDecimal(printed), toDigitsOf(printed, computed), of + " is " + computed);
  }

  /** Expects that a number is less than one unit in the last place off a printed one. */
  static void assertWithinLastDigit(String printed, String computed, String of) {
    assertTrue(
        difference(printed, computed).compareTo(lastDigit(printed)) < 0,
        of + " is " + computed + ", printed " + printed);
  }

  /** {@code computed} with as many decimals as {@code printed}. */
  static BigDecimal toDigitsOf(String printed, String computed) {
    return new BigDecimal(computed).setScale(new BigDecimal(printed).scale(), RoundingMode.HALF_UP);
  }

  /** How far apart two numbers are. */
  static BigDecimal difference(String one, String other) {
    return new BigDecimal(one).subtract(new BigDecimal(other)).abs();
  }

  /** One unit in the last place of a printed number. */
  static BigDecimal lastDigit(String printed) {
    return BigDecimal.ONE.movePointLeft(new BigDecimal(printed).scale());
  }

  /** The sum of a column. */
  static BigDecimal sum(List<Map<String, String>> rows, String column) {
    return rows.stream()
        .map(row -> new BigDecimal(row.get(column)))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
