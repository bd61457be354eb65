package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.csv.BadCell;
import gambrel.files.csv.Dates;
import gambrel.trade.measure.Money;
import gambrel.trade.notice.NoticeCode;
import java.math.BigDecimal;
import java.time.ZoneOffset;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers, shares, ids and other kinds of cell. */
class CellTypesTest {
  private final CellTypes comma = formats("AUD");
  private final CellTypes semicolon = comma.forDelimiter(';');

  private static CellTypes formats(String currency) {
    return new CellTypes(
        new Dates(Optional.empty(), ZoneOffset.UTC), Currency.getInstance(currency), false);
  }

  @ParameterizedTest
  @CsvSource({"12,12", "012.50,12.50", "-3.1,-3.1", "+4,4", ".5,0.5", "5.,5"})
  void numbersArePlainDecimals(String text, BigDecimal value) {
    assertEquals(value, comma.number(text));
  }

  @Test
  void theCommaIsADecimalMarkOnlyBesideSemicolons() {
    assertEquals(new BigDecimal("12.5"), semicolon.number("12,5"));
    assertThrows(BadCell.class, () -> comma.number("12,5"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1.234,5", "1,234.5", "1 234", "1'234", "1e3", "1.2E+3", "12 kg", "$5", "--1", "٣"
      })
  void thousandsMarksExponentsAndUnitsAreRefused(String text) {
    assertThrows(BadCell.class, () -> comma.number(text));
    assertThrows(BadCell.class, () -> semicolon.number(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"9999999999999", "0.1234567890123", "1000000000000.5"})
  void aNumberNoScaleCouldShowIsRefusedRatherThanOverflowing(String text) {
    assertThrows(BadCell.class, () -> comma.weight(text));
  }

  @Test
  void moneyFitsTheMinorUnitOfItsCurrency() {
    assertEquals(new Money(1250), comma.money("12.5"));
    assertEquals(new Money(12), formats("JPY").money("12"));
    assertThrows(BadCell.class, () -> comma.money("12.505"));
    assertThrows(BadCell.class, () -> formats("JPY").money("12.5"));
  }

  @ParameterizedTest
  @CsvSource({"1/2,1,2", "3 / 8,3,8", "0.25,1,4", "50%,1,2", "12.5 %,1,8", "1 of 3,1,3", "1,1,1"})
  void sharesAreExactFractions(String text, int part, int whole) {
    assertEquals(BigFraction.of(part, whole), FloorTables.share(comma, text));
  }

  @Test
  void aShareMayHaveADecimalCommaBesideSemicolons() {
    assertEquals(BigFraction.of(1, 4), FloorTables.share(semicolon, "0,25"));
    assertEquals(BigFraction.of(1, 8), FloorTables.share(semicolon, "12,5%"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "0/3", "1/0", "-1/2", "half", "1/2/3", "1//2", "%", "1of2"})
  void whatIsNoShareAboveZeroIsRefused(String text) {
    var bad = assertThrows(BadCell.class, () -> FloorTables.share(comma, text));
    assertEquals(NoticeCode.SHOP_ROW_BAD, bad.code());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "01-Feb",
        "1-Feb",
        "2-Jan-26",
        "Feb-26",
        "2026-02-01",
        "1/2/2026",
        "01.02.2026",
        "2026-02-01 00:00:00"
      })
  void aShareThatASpreadsheetMadeADateIsToldApart(String text) {
    var bad = assertThrows(BadCell.class, () -> FloorTables.share(comma, text));
    assertEquals(NoticeCode.SPREADSHEET_DAMAGE, bad.code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1.23E+14", "9.82000123E+14", "1E+15", "1,23E+14", "4.2e-7"})
  void anIdThatASpreadsheetMadeANumberIsToldApart(String text) {
    var bad = assertThrows(BadCell.class, () -> comma.id(text));
    assertEquals(NoticeCode.SPREADSHEET_DAMAGE, bad.code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0012", "12E4", "1.23", "B-7/2", "Ω 7", "E+14"})
  void anyOtherTextIsAnId(String text) {
    assertEquals(text, comma.id(text));
  }

  @Test
  void anIdHoldsNoControlCharacters() {
    assertThrows(BadCell.class, () -> comma.id("B\u00071"));
    assertThrows(BadCell.class, () -> comma.id("B\n1"));
  }

  @Test
  void severalIdsStandBetweenBlanks() {
    assertEquals(List.of("17", "0042"), comma.ids("17  0042 17"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"yes", "TRUE", "1", "x", "X"})
  void yesIsWrittenInMoreThanOneWay(String text) {
    assertTrue(comma.yesNo(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"y", "2", "maybe"})
  void whatIsNeitherYesNorNoIsRefused(String text) {
    assertThrows(BadCell.class, () -> comma.yesNo(text));
  }

  @Test
  void headIsAtLeastOneAndWhole() {
    assertEquals(3, comma.head("3"));
    assertThrows(BadCell.class, () -> comma.head("0"));
    assertThrows(BadCell.class, () -> comma.head("1.5"));
  }
}
