package gambrel.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.pages.views.Words;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Currency;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class FormatsTest {
  private static final Map<String, String> DATES =
      Map.of(
          "date.day", "EEEE d MMMM yyyy",
          "date.date", "d MMMM yyyy",
          "date.brief", "d MMM",
          "date.month", "MMMM yyyy",
          "date.first", "1",
          "date.time", "HH:mm");
  private static final Formats AUSTRALIAN = formats("en-AU", "AUD", WeightUnit.KG, "{0}%");
  private static final Formats GERMAN = formats("de-DE", "EUR", WeightUnit.KG, "{0}\u00a0%");

  private static Formats formats(String locale, String currency, WeightUnit unit, String percent) {
    var texts = new HashMap<>(DATES);
    texts.put("number.percent", percent);
    return new Formats(
        Locale.forLanguageTag(locale), unit, Currency.getInstance(currency), new Words(texts));
  }

  private static Weight weight(String value) {
    return Weight.of(new BigDecimal(value));
  }

  @Test
  void weightsKeepTheirDecimalsAndTheirUnitOnOneLine() {
    assertEquals("231.440\u00a0kg", AUSTRALIAN.weight(weight("231.44"), 3));
    assertEquals("345.5\u00a0kg", AUSTRALIAN.weight(weight("345.5"), 1));
    assertEquals(
        "612\u00a0lb", formats("en-US", "USD", WeightUnit.LB, "{0}%").weight(weight("612"), 0));
    assertEquals("2.345,50", GERMAN.bareWeight(weight("2345.5"), 2));
  }

  @Test
  void lessThanNothingHasAMinusSign() {
    assertEquals("\u22120.125\u00a0kg", AUSTRALIAN.weight(weight("-0.125"), 3));
    assertEquals("\u2212$4.00", AUSTRALIAN.money(new Money(-400)));
  }

  @Test
  void weightsAreRoundedHalfAwayFromZero() {
    assertEquals("0.13", AUSTRALIAN.bareWeight(weight("0.125"), 2));
    assertEquals("\u22120.13", AUSTRALIAN.bareWeight(weight("-0.125"), 2));
  }

  @Test
  void percentagesHaveOneDecimal() {
    assertEquals("66.7%", AUSTRALIAN.percent(BigFraction.of(200, 3)));
    assertEquals("100.0%", AUSTRALIAN.percentTenths(1000));
    assertEquals("12,5\u00a0%", GERMAN.percentTenths(125));
    assertEquals("10%", AUSTRALIAN.percent(new BigDecimal("10.00")));
  }

  @Test
  void moneyIsInTheReadersForm() {
    assertEquals("$1,399.04", AUSTRALIAN.money(new Money(139904)));
    assertEquals("1,399.04", AUSTRALIAN.bareMoney(new Money(139904)));
    assertEquals("1.399,04\u00a0€", GERMAN.money(new Money(139904)));
    assertEquals("¥500", formats("en-US", "JPY", WeightUnit.KG, "{0}%").money(new Money(500)));
  }

  @Test
  void pricesMayBeFinerThanTheSmallestCoin() {
    assertEquals("1.90", AUSTRALIAN.price(new BigDecimal("1.9")));
    assertEquals("0.055", AUSTRALIAN.price(new BigDecimal("0.0550")));
    assertEquals("\u221222.00", AUSTRALIAN.price(new BigDecimal("-22")));
  }

  @Test
  void quantitiesShowNoMoreThanTheyHave() {
    assertEquals("6", AUSTRALIAN.quantity(BigFraction.of(6), 3));
    assertEquals("331.2", AUSTRALIAN.quantity(BigFraction.of(3312, 10), 3));
    assertEquals("1,200", AUSTRALIAN.quantity(BigFraction.of(1200), 3));
  }

  @Test
  void datesFollowTheWordsPatternsAndLanguage() {
    var date = LocalDate.of(2026, 9, 3);
    assertEquals("Thursday 3 September 2026", AUSTRALIAN.day(date));
    assertEquals("3 September 2026", AUSTRALIAN.date(date));
    assertEquals("3 Sep", AUSTRALIAN.brief(date));
    assertEquals("Donnerstag 3 September 2026", GERMAN.day(date));
    assertEquals("September 2026", AUSTRALIAN.month(YearMonth.of(2026, 9)));
    assertEquals("3 September 2026, 07:05", AUSTRALIAN.moment(date.atTime(7, 5)));
  }
}
