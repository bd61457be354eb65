package gambrel.pages.owner.month;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.Ownership;
import gambrel.pages.owner.SmallShop;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.WeightUnit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingWordsTest {
  @TempDir private Path folder;
  private FindingWords words;

  @BeforeEach
  void railScaleOfATenth() {
    var wording = SmallShop.wording(new SmallShop(folder).at("2026-07-01T02:00:00Z"));
    words =
        new FindingWords(wording, new WeightPrinter(wording.formats(), WeightUnit.KG, 1, 1, 2, 1));
  }

  @Test
  void givesCustomersKilosAndTheShopsOwnOneBesideTheOther() {
    assertEquals(
        "From 9 March 2026 on, 8 beef bodies lost 3.00% in the chiller, against 2.00% of like"
            + " bodies in the twelve months before (40 bodies). More than usual: 3.2\u00a0kg on"
            + " customers' bodies and 1.1\u00a0kg on the shop's own.",
        seen(Map.of(Ownership.OWN, 1_100, Ownership.CUSTOMERS, 3_200)));
  }

  @Test
  void leavesOutWhoHasNoBody() {
    String seen = seen(Map.of(Ownership.OWN, 1_100));
    assertEquals(
        "More than usual: 1.1\u00a0kg on the shop's own.", seen.substring(seen.indexOf("More")));
  }

  @Test
  void namesAllThree() {
    String seen =
        seen(Map.of(Ownership.OWN, 1_100, Ownership.CUSTOMERS, 3_200, Ownership.SHARED, 500));
    assertEquals(
        "More than usual: 3.2\u00a0kg on customers' bodies, 1.1\u00a0kg on the shop's own and"
            + " 0.5\u00a0kg on shared bodies.",
        seen.substring(seen.indexOf("More")));
  }

  private String seen(Map<Ownership, Integer> grams) {
    var weights = new EnumMap<Ownership, BigFraction>(Ownership.class);
    grams.forEach((whose, weight) -> weights.put(whose, BigFraction.of(weight, 1000)));
    return words.seen(
        Finding.likely(
            Finding.Kind.CHILLER,
            "",
            List.of(),
            Map.of(
                "since", new Evidence.Day(LocalDate.of(2026, 3, 9)),
                "bodies", new Evidence.Count(8),
                "species", new Evidence.Kind(Species.BEEF),
                "loss", new Evidence.Percent(BigFraction.of(3), 2),
                "usual", new Evidence.Percent(BigFraction.of(2), 2),
                "bodies_before", new Evidence.Count(40),
                "weight", new Evidence.Borne(weights)),
            List.of()));
  }
}
