package gambrel.files.barcode;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.GivenWeight;
import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** GS1 element strings, as printed and as transmitted. */
class ElementStringTest {
  private static final String GS = "\u001D";

  private static ElementString parse(String text) {
    try {
      return ElementString.parse(text);
    } catch (BadCell e) {
      throw new AssertionError(text + " " + ENGLISH.of(e.why()), e);
    }
  }

  private static String whyNot(String text) {
    return ENGLISH.of(assertThrows(BadCell.class, () -> ElementString.parse(text)).why());
  }

  private static BarcodeContent content(String text) {
    return parse(text).content(2026);
  }

  private static Optional<GivenWeight> amount(String value, WeightUnit unit) {
    return Optional.of(new GivenWeight(new BigDecimal(value), Optional.of(unit)));
  }

  static List<Map<String, String>> pairs() {
    return Published.table("gs1_element_strings").stream()
        .filter(row -> !row.get("unbracketed_caret_is_fnc1").isEmpty())
        .toList();
  }

  static List<Map<String, String>> invalid() {
    return Published.table("gs1_element_strings").stream()
        .filter(row -> row.get("meaning").startsWith("INVALID"))
        .toList();
  }

  static List<Map<String, String>> identifiers() {
    return Published.table("gs1_ai");
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void printedAndTransmittedFormsSayTheSame(Map<String, String> row) {
    String sent = row.get("unbracketed_caret_is_fnc1").replace("^", GS);
    assertEquals(parse(row.get("bracketed")).values, parse(sent).values);
    assertEquals(parse(sent).values, parse("]C1" + sent.substring(1)).values);
    assertEquals(parse(sent).values, parse(sent + GS).values);
  }

  /** Association of identifiers and country codes are no business of a weight: lengths are. */
  @ParameterizedTest
  @MethodSource("invalid")
  void whatIsUnfitForTradeForOtherReasonsThanItsFormIsReadAllTheSame(Map<String, String> row) {
    assertFalse(content(row.get("bracketed")).net().isPresent());
  }

  /** Every identifier of the dictionary's extract, followed by a lot. */
  @ParameterizedTest
  @MethodSource("identifiers")
  void everyIdentifierOfTheDictionaryIsSkippedByItsLength(Map<String, String> row) {
    boolean separated = row.get("fnc1_needed_if_not_last").equals("Y");
    for (String ai : ends(row.get("ai"))) {
      String lot = ai.equals("10") ? "B17" : "10B17";
      String value = ai.equals("10") ? "" : shortest(row.get("format")) + (separated ? GS : "");
      assertEquals("B17", content(ai + value + lot).body(), ai);
    }
  }

  /** The shortest value of a format: a date, or zeros, of which the check digit is 0 too. */
  private static String shortest(String format) {
    var value = new StringBuilder();
    for (String component : format.split(" ")) {
      if (!component.startsWith("[")) {
        String length = component.replaceAll("[NX]|,.*", "");
        int digits = length.startsWith("..") ? 1 : Integer.parseInt(length);
        value.append(component.contains("yymmd") ? "260714" : "0".repeat(digits));
      }
    }
    return value.toString();
  }

  private static String[] ends(String range) {
    return range.split("-");
  }

  @Test
  void aMeatLabelGivesBodyWeightCountDateAndCut() {
    var label =
        content("]C10195012345678903310300019513260714" + "10B17" + GS + "306" + GS + "70021011");
    assertEquals(
        new BarcodeContent(
            "B17",
            "1011",
            "6",
            amount("0.195", WeightUnit.KG).stream().toList(),
            Optional.of(LocalDate.of(2026, 7, 14)),
            Optional.empty()),
        label);
  }

  @ParameterizedTest
  @CsvSource({
    "(3100)000012, 12, KG",
    "(3102)001234, 12.34, KG",
    "(3105)123456, 1.23456, KG",
    "(3202)001234, 12.34, LB"
  })
  void theLastDigitOfTheIdentifierImpliesTheDecimals(String text, String value, WeightUnit unit) {
    assertEquals(amount(value, unit), content(text).net());
  }

  @ParameterizedTest
  @ValueSource(strings = {"(3303)012500", "(3401)000125", "]C13303012500"})
  void aGrossWeightIsNoNetWeight(String text) {
    assertEquals(Optional.empty(), content(text).net());
    assertEquals(
        Optional.of("gives a gross weight, not a net one"), content(text).fault().map(ENGLISH::of));
  }

  @ParameterizedTest
  @CsvSource({
    "75, 2026, 2075",
    "76, 2026, 2076",
    "77, 2026, 1977",
    "99, 2026, 1999",
    "49, 1999, 2049",
    "50, 1999, 1950"
  })
  void aTwoDigitYearIsTheNearest(String two, int now, int year) {
    assertEquals(
        Optional.of(LocalDate.of(year, 3, 1)), parse("(13)" + two + "0301").content(now).date());
  }

  @Test
  void packedGoesBeforeProducedAndDayZeroIsNoDay() {
    assertEquals(Optional.of(LocalDate.of(2026, 7, 2)), content("(11)260701(13)260702").date());
    assertEquals(Optional.empty(), content("(11)260700").date());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "(01)09520123456789 | has a wrong check digit after (01): it should be 8",
        "(3103)00195 | has 5 characters after (3103), which takes 6",
        "(3103)00A195 | has characters after (3103) that may not stand there",
        "(13)261301 | has no date after (13)",
        "(13)260230 | has no date after (13)",
        "(38)12 | has the identifier (38), which is not known",
        "(10)A(10)B | gives (10) twice",
        "381234 | has no known identifier at character 1",
        "]E09501234567890 | is none of GS1 element strings",
        "(1)2 | has no identifier in its first brackets"
      })
  void aBarcodeThatBreaksTheRulesIsRefusedWithItsReason(String text, String why) {
    assertEquals(why, whyNot(text));
  }

  @Test
  void nothingAndTooMuchAreNoBarcodes() {
    assertEquals("is empty", whyNot(""));
    assertEquals("is empty", whyNot("]C1" + GS));
    assertEquals("is too long", whyNot("9".repeat(501)));
    assertEquals(
        "has 21 characters after (10), which takes 1 to 20", whyNot("10" + "A".repeat(21)));
  }
}
