package gambrel.files.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which cells are blank in lines whose cells blanks part. */
class PrintedColumnsTest {
  private static final List<String> REPORT =
      List.of(
          "No    Animal  Product       Net",
          "0041     118  RUMP        12.50",
          "0042     118  SHORT LOIN   8.00",
          "0043    1204  RUMP       112.50");

  private static String parted(List<String> lines, String line) {
    var all =
        Stream.concat(lines.stream(), Stream.of(line))
            .map(text -> new TextLine(1, text, "\n", false))
            .toList();
    return PrintedColumns.parted(all, Pattern.compile("\\h{2,}"), '|').get(all.size() - 1).text();
  }

  @Test
  void aCellWithoutTextBetweenOthersIsBlank() {
    assertEquals("0044||WEIGHT|20.00", parted(REPORT, "0044          WEIGHT      20.00"));
    assertEquals("0044|118||20.00", parted(REPORT, "0044     118              20.00"));
  }

  @Test
  void aWholeLineAndTheHeaderKeepTheirCells() {
    assertEquals("0044|118|RUMP|2.00", parted(REPORT, "  0044     118  RUMP  2.00  "));
    assertEquals("No|Animal|Product|Net", parted(REPORT, REPORT.get(0)));
  }

  /** The text stands below two columns: it is no row of the table. */
  @Test
  void aTextBelowTwoColumnsIsCounted() {
    assertEquals(
        "TOTAL of 3 weighings|133.00|kg", parted(REPORT, "TOTAL of 3 weighings   133.00  kg"));
  }

  /** The weights of one line stand where another has its product. */
  @Test
  void whereLinesDoNotKeepColumnsApartCellsAreCounted() {
    var ragged =
        List.of(
            "1  118  RUMP  12.50", "2  118  SHORT LOIN  8.00", "3  118  A VERY LONG NAME  8.00");

    assertEquals("4|118|2.00", parted(ragged, "4  118        2.00"));
  }

  @Test
  void aBlankLineStaysBlank() {
    assertEquals("", parted(REPORT, "   "));
  }
}
