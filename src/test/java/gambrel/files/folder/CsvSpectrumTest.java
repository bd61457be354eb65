package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.files.csv.CsvRows;
import gambrel.files.csv.TextLine;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The cases of csv-spectrum 2.0.0 (npm registry, BSD-2-Clause), each beside what it holds. Its case
 * {@code location_coordinates} is left out: what it holds is not what its table says.
 */
class CsvSpectrumTest {
  private static final Pattern PAIR =
      Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"\\s*:\\s*\"((?:[^\"\\\\]|\\\\.)*)\"");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "comma_in_quotes",
        "empty",
        "empty_crlf",
        "escaped_quotes",
        "json",
        "newlines",
        "newlines_crlf",
        "quotes_and_newlines",
        "simple",
        "simple_crlf",
        "utf8"
      })
  void aTableHoldsWhatItsAuthorsSay(String name) throws IOException {
    var expected = pairs(new String(bytes(name + ".json"), StandardCharsets.UTF_8));
    assertEquals(expected, pairs(bytes(name + ".csv")));
  }

  private static byte[] bytes(String file) throws IOException {
    try (var in = CsvSpectrumTest.class.getResourceAsStream("/gambrel/csv-spectrum/" + file)) {
      return in.readAllBytes();
    }
  }

  private static List<String> pairs(String json) {
    var pairs = new ArrayList<String>();
    var found = PAIR.matcher(json);
    while (found.find()) {
      pairs.add(plain(found.group(1)) + "=" + plain(found.group(2)));
    }
    return pairs;
  }

  private static String plain(String text) {
    return text.replace("\\n", "\n").replace("\\r", "\r").replace("\\\"", "\"");
  }

  private static List<String> pairs(byte[] csv) throws IOException {
    var lines = TextLine.read(new ByteArrayInputStream(csv), StandardCharsets.UTF_8);
    var rows = new CsvRows(lines, ',', 1, Integer.MAX_VALUE).all(0);
    var names = rows.get(0).cells();
    var pairs = new ArrayList<String>();
    for (var row : rows.subList(1, rows.size())) {
      for (int i = 0; i < names.size(); i++) {
        pairs.add(names.get(i) + "=" + row.cells().get(i));
      }
    }
    return pairs;
  }
}
