package gambrel.files.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text cells are safe to open in a spreadsheet and come back exactly. */
class GuardTest {
  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "\tx", "\rx"})
  void whatASpreadsheetTakesForAFormulaGetsAQuote(String text) {
    assertEquals("'" + text, Columns.guard(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "B1", "1-2", " =1", "'", "'x", "''"})
  void anythingElseStandsAsItIs(String text) {
    assertEquals(text, Columns.guard(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "B1", "=1", "'=1", "''=1", "'", "''", "'x", "-", "'-", "'\t", "=='"})
  void everyTextComesBack(String text) {
    assertEquals(text, Columns.unguard(Columns.guard(text)));
  }

  @Test
  void aTextThatLooksGuardedIsToldFromOneThatIs() {
    assertEquals("''=1", Columns.guard("'=1"));
  }
}
