package gambrel.files.publish;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gambrel.files.tables.Table;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CsvTest {
  @Test
  void cellsAreQuotedOnlyWhereTheyMustBeAndLinesEndInALineFeed() {
    var row = List.of("1,5", "say \"no\"");
    var table = new Table("x.csv", List.of("a", "b"), () -> Stream.of(row));

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
    var table = new Table("x.csv", List.of("a", "b"), rows::stream);

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
}
