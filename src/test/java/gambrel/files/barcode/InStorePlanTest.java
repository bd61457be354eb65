package gambrel.files.barcode;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import gambrel.files.csv.BadCell;
import gambrel.trade.measure.GivenWeight;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers that a shop's own scale prints, by the shop's own plan. */
class InStorePlanTest {
  private static Optional<BarcodeContent> read(String plan, int decimals, String number) {
    return new InStorePlan(plan, decimals).read(number);
  }

  private static Optional<BarcodeContent> reading(String item, String weight) {
    var net = new GivenWeight(new BigDecimal(weight), Optional.empty());
    return Optional.of(
        new BarcodeContent("", item, "", List.of(net), Optional.empty(), Optional.empty()));
  }

  /** 2 0 0 4 7 1 1 0 1 2 3 4: threefold every second from the right. */
  @Test
  void itemAndWeightStandWhereThePlanSays() {
    int check = CheckDigits.mod10("200471101234");
    assertEquals(reading("04711", "1.234"), read("20IIIIIWWWWWC", 3, "200471101234" + check));
    assertEquals(reading("04711", "12.34"), read("20IIIIIWWWWWC", 2, "]E0200471101234" + check));
  }

  @Test
  void aVerifierConfirmsTheWeight() {
    // 4 5 6 7 has the verifier 1 in the published table.
    assertEquals(reading("4711", "4.567"), read("28IIIIVWWWWX", 3, "284711145670"));
    var plan = new InStorePlan("28IIIIVWWWWX", 3);
    assertEquals(
        "has a weight that its verifier digit does not confirm",
        ENGLISH.of(assertThrows(BadCell.class, () -> plan.read("284711245670")).why()));
  }

  @Test
  void aWrongCheckDigitIsRefused() {
    int wrong = (CheckDigits.mod10("200471101234") + 1) % 10;
    var plan = new InStorePlan("20IIIIIWWWWWC", 3);
    assertThrows(BadCell.class, () -> plan.read("200471101234" + wrong));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2104711012340", "20047110123", "20047110123AB", "", "(01)"})
  void numbersOfAnotherKindAreLeftToOthers(String number) {
    assertEquals(Optional.empty(), read("20IIIIIWWWWWC", 3, number));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"20IIIIIIIIIIC", "20IIIIIWWWCWW", "20IIIVVWWWWWC", "20IIIIVWWWWWWC", "WC", ""})
  void aPlanWithoutWeightOrWithMisplacedDigitsIsNone(String plan) {
    assertThrows(BadCell.class, () -> new InStorePlan(plan, 3));
  }
}
