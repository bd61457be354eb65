package gambrel.trade.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WeightUnitTest {
  @Test
  void aCellNamesAUnitInAnyCase() {
    assertEquals(Optional.of(WeightUnit.KG), WeightUnit.of(" Kg "));
    assertEquals(Optional.of(WeightUnit.LB), WeightUnit.of("LB"));
    assertEquals(Optional.of(WeightUnit.OZ), WeightUnit.of("oz"));
    assertEquals(Optional.empty(), WeightUnit.of("stone"));
  }

  @Test
  void everyUnitHasTheSymbolThatFilesWrite() {
    for (var unit : WeightUnit.values()) {
      assertEquals(Optional.of(unit), WeightUnit.of(unit.id()));
    }
  }

  @Test
  void aWeightInTheShopsUnitIsTakenAsItIs() {
    assertEquals(new Weight(150_000), WeightUnit.LB.weight(new BigDecimal("1.5"), WeightUnit.LB));
  }

  /** 1 lb is 0.45359237 kg: 45,359.237 hundred-thousandths. */
  @Test
  void aPoundInAKilogramShopIsKeptToFiveDecimals() {
    assertEquals(new Weight(45_359), WeightUnit.LB.weight(BigDecimal.ONE, WeightUnit.KG));
  }
}
