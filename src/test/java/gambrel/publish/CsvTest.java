package gambrel.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gambrel.data.Table;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.QuoteMode;
import org.junit.jupiter.api.Test;

class CsvTest {
  @Test
  void cellsAreQuotedOnlyWhereTheyMustBeAndLinesEndInALineFeed() {
    var table = new Table("x.csv", List.of("a", "b"), List.of(List.of("1,5", "say \"no\"")));

    assertEquals("a,b\n\"1,5\",\"say \"\"no\"\"\"\n", new String(Csv.bytes(table), UTF_8));
  }

  @Test
  void whateverStandsInACellComesBack() {
    var rows =
        List.of(
            List.of("", "plain"),
            List.of("a,b", "\"quoted\""),
            List.of("two\nlines", "three\r\nlines"),
            List.of(" spaces ", "#no comment"),
            List.of("'", "māori – ½ 𝟙"));
    var table = new Table("x.csv", List.of("a", "b"), rows);

    var records = Csv.records(Csv.bytes(table));

    assertEquals(List.of("a", "b"), records.get(0));
    assertEquals(rows, records.subList(1, records.size()));
  }

  @Test
  void aTornFileIsRefused() {
    assertThrows(UncheckedIOException.class, () -> Csv.records("a,b\n1,\"tw".getBytes(UTF_8)));
  }

  @Test
  void aLineIsARowWithoutItsEnd() {
    assertEquals("\"B,7\",beef,", Csv.line(List.of("B,7", "beef", "")));
  }

  /** Rows that need no quotes go a shorter way, which has to come to the same. */
  @Test
  void everyRowIsAsTheLibraryPrintsIt() throws IOException {
    String some = " !\"#$%,-0Aa'\t\r\n\u0000é½~";
    var random = new SplittableRandom(3);
    var format =
        CSVFormat.RFC4180.builder().setRecordSeparator('\n').setQuoteMode(QuoteMode.MINIMAL).get();
    for (int i = 0; i < 20_000; i++) {
      var row = new ArrayList<String>();
      for (int cell = 0; cell <= random.nextInt(3); cell++) {
        var text = new StringBuilder();
        random.ints(random.nextInt(4), 0, some.length()).forEach(c -> text.append(some.charAt(c)));
        row.add(text.toString());
      }
      var printed = new StringBuilder();
      format.printRecord(printed, row.toArray());
      var header = Collections.nCopies(row.size(), "h");
      var bytes = Csv.bytes(new Table("x.csv", header, List.of(row)));
      assertEquals(String.join(",", header) + "\n" + printed, new String(bytes, UTF_8));
    }
  }
}
