package gambrel.trade.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.notice.Place;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weighings of scales that count no tickets: how often they count where exports overlap. */
class EqualRowsTest {
  private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-07-01T12:00+10:00");

  /**
   * The rows of one file for each word: a letter is a row's content, all of one identity; a small x
   * after it voids, a small r means that a correction removes the row.
   */
  private static List<ReadRow> rows(String... files) {
    var rows = new ArrayList<ReadRow>();
    for (int file = 0; file < files.length; file++) {
      int line = 2;
      for (String word : files[file].split("(?=[A-Z])")) {
        rows.add(row("f" + file + ".csv", line++, word));
      }
    }
    return rows;
  }

  private static ReadRow row(String file, int line, String word) {
    var row =
        RowCells.row(
            new Place(file, line),
            Map.of(Field.SCALE, "S1", Field.BODY, word.substring(0, 1)),
            Optional.of(new ExportRow.Identity(Set.of(Field.SCALE), List.of())),
            word);
    var status = Status.of(word.endsWith("x") ? "void" : "");
    return new ReadRow(row, Optional.of(NOON), Optional.empty(), status, word.endsWith("r"));
  }

  private static String dispositions(String... files) {
    var rows = rows(files);
    var comparison = RowComparison.of(rows, NOON);
    var letters = new StringBuilder();
    String file = "f0.csv";
    for (var row : rows) {
      letters.append(row.place().file().equals(file) ? "" : " ");
      letters.append(comparison.disposition(row).name().charAt(0));
      file = row.place().file();
    }
    return letters.toString();
  }

  /** U used, R repeat, V void, S set aside. */
  @ParameterizedTest
  @CsvSource({
    "AAA,, UUU",
    "AA, AAA, UU RRU",
    "AAA, AA, UUU RR",
    "AB,, SS",
    "AB, BA, SS RR",
    "AB, BC, SS RS",
    "A, B, S S",
    "ABA, AAB, SSS RRR"
  })
  void equalRowsOfOneFileAllCountAndOverlappingFilesTakeTheLargerNumber(
      String one, String other, String expected) {
    assertEquals(expected, other == null ? dispositions(one) : dispositions(one, other));
  }

  @ParameterizedTest
  @CsvSource({
    "AAAx,, VUV",
    "AABx,, VUV",
    "BAAx,, UVV",
    "BACx,, SSV",
    "AAx, AAx, VV RR",
    "A, Ax, V V",
    "AxA,, VV"
  })
  void aVoidCancelsOneWeighingItsLikeFirst(String one, String other, String expected) {
    assertEquals(expected, other == null ? dispositions(one) : dispositions(one, other));
  }

  @Test
  void aRowThatACorrectionRemovesIsNotCompared() {
    assertEquals("VU RU", dispositions("ArA", "AA"));
  }

  @Test
  void aRepeatOfAConflictIsARepeat() {
    assertEquals("S S R R", dispositions("A", "B", "A", "B"));
  }
}
