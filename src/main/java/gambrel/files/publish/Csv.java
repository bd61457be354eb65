package gambrel.files.publish;

import gambrel.files.tables.Table;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.QuoteMode;

/** Writes and reads data files: UTF-8, RFC 4180, quotes only where needed, LF. */
public final class Csv {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator('\n').setQuoteMode(QuoteMode.MINIMAL).get();

  private Csv() {}

  /** A table as bytes. */
  public static byte[] bytes(Table table) {
    var text = new StringBuilder();
    try (var rows = table.rows()) {
      var printer = new CSVPrinter(text, FORMAT);
      printer.printRecord(table.header());
      printer.printRecords(rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** One row as it is in a file, without its end of line. */
  public static String line(List<String> cells) {
    return FORMAT.format(cells.toArray()).stripTrailing();
  }

  /**
   * The records of a data file, its header first. A spreadsheet may have saved it, with a byte
   * order mark, semicolons or other line ends.
   *
   * @throws UncheckedIOException if it is not a CSV file
   */
  public static List<List<String>> records(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8).replaceFirst("^\uFEFF", "");
    String header = text.lines().findFirst().orElse("");
    char delimiter = header.contains(";") && !header.contains(",") ? ';' : ',';
    var format = FORMAT.builder().setDelimiter(delimiter).get();
    try (var parser = format.parse(new StringReader(text))) {
      return parser.stream().map(CSVRecord::toList).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
