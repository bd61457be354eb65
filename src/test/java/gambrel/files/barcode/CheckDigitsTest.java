package gambrel.files.barcode;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Check digits as GS1 publishes them. */
class CheckDigitsTest {
  static List<Map<String, String>> numbers() {
    return Published.table("gs1_check_digits");
  }

  static List<Map<String, String>> fields() {
    return Published.table("gs1_price_weight_check");
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void aNumberEndsWithItsCheckDigit(Map<String, String> row) {
    String digits = row.get("digits_without_check");
    assertEquals(row.get("check_digit"), Integer.toString(CheckDigits.mod10(digits)));
    assertTrue(CheckDigits.endsRight(digits + row.get("check_digit")));
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void everySingleWrongDigitIsFound(Map<String, String> row) {
    String number = row.get("digits_without_check") + row.get("check_digit");
    for (int i = 0; i < number.length(); i++) {
      char other = (char) ('0' + (number.charAt(i) - '0' + 1) % 10);
      assertFalse(CheckDigits.endsRight(number.substring(0, i) + other + number.substring(i + 1)));
    }
  }

  @ParameterizedTest
  @MethodSource("fields")
  void aPriceOrWeightHasItsVerifier(Map<String, String> row) {
    assertEquals(row.get("check_digit"), Integer.toString(CheckDigits.verifier(row.get("field"))));
  }

  @Test
  void aVerifierCoversFourOrFiveDigits() {
    assertThrows(IllegalArgumentException.class, () -> CheckDigits.verifier("123"));
  }
}
