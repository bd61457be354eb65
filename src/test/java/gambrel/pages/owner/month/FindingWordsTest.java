package gambrel.pages.owner.month;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
            + " customers’ bodies and 1.1\u00a0kg on the shop’s own.",
        seen(Map.of(Ownership.OWN, 1_100, Ownership.CUSTOMERS, 3_200)));
  }

  @Test
  void leavesOutWhoHasNoBody() {
    String seen = seen(Map.of(Ownership.OWN, 1_100));
    assertEquals(
        "More than usual: 1.1\u00a0kg on the shop’s own.", seen.substring(seen.indexOf("More")));
  }

  @Test
  void namesAllThree() {
    String seen =
        seen(Map.of(Ownership.OWN, 1_100, Ownership.CUSTOMERS, 3_200, Ownership.SHARED, 500));
    assertEquals(
        "More than usual: 3.2\u00a0kg on customers’ bodies, 1.1\u00a0kg on the shop’s own and"
            + " 0.5\u00a0kg on shared bodies.",
        seen.substring(seen.indexOf("More")));
  }

  @Test
  void namesTheOneChillerOfAllBodiesConcerned() {
    String north = seen(Map.of(Ownership.OWN, 1_100), "chillers", names("north"));
    assertTrue(north.contains(" lost 3.00% in the chiller north, against "), north);
    String both = seen(Map.of(Ownership.OWN, 1_100), "chillers", names("north", "south"));
    assertTrue(both.contains(" lost 3.00% in the chiller, against "), both);
  }

  @Test
  void saysHowMuchOfWhatWasToBeExpectedAnotherFindingExplains() {
    var evidence =
        Map.<String, Evidence>of(
            "body", new Evidence.Bodies(List.of("B7")),
            "loss", new Evidence.Percent(BigFraction.of(5), 2),
            "lower", new Evidence.Percent(BigFraction.of(2), 2),
            "upper", new Evidence.Percent(BigFraction.of(4), 2),
            "explained", new Evidence.Percent(BigFraction.of(1), 2),
            "species", new Evidence.Kind(Species.BEEF),
            "bodies_before", new Evidence.Count(40));
    assertEquals(
        "B7 lost 5.00% in the chiller; 2.00% to 4.00% was to be expected, by like bodies of beef"
            + " (40 in twelve months). 1.00% of that comes from what another finding tells.",
        words.seen(
            Finding.likely(
                Finding.Kind.CHILLED_BODIES, "above", List.of("B7"), evidence, List.of())));
  }

  @Test
  void saysThatOneOfSeveralScalesReadsWrong() {
    var evidence =
        Map.<String, Evidence>of(
            "since", new Evidence.Day(LocalDate.of(2026, 3, 9)),
            "bodies", new Evidence.Count(8),
            "species", new Evidence.Kind(Species.BEEF),
            "weight", new Evidence.Borne(Map.of(Ownership.OWN, BigFraction.of(2))),
            "bodies_before", new Evidence.Count(40),
            "scales", names("bench1", "bench2", "rail"));
    assertEquals(
        "From 9 March 2026 on, more came out of 8 beef bodies than went in, 2.0\u00a0kg on the"
            + " shop’s own over the usual (40 bodies in twelve months): bench1, bench2 or rail"
            + " reads wrong.",
        words.seen(Finding.likely(Finding.Kind.SCALE, "gain", List.of(), evidence, List.of())));
  }

  private static Evidence names(String... all) {
    return new Evidence.Names(List.of(all));
  }

  private String seen(Map<Ownership, Integer> grams) {
    return seen(grams, "chillers", names(""));
  }

  private String seen(Map<Ownership, Integer> grams, String name, Evidence more) {
    var weights = new EnumMap<Ownership, BigFraction>(Ownership.class);
    grams.forEach((whose, weight) -> weights.put(whose, BigFraction.of(weight, 1000)));
    return words.seen(
        Finding.likely(
            Finding.Kind.CHILLER,
            "",
            List.of(),
            Map.of(
                "since",
                new Evidence.Day(LocalDate.of(2026, 3, 9)),
                "bodies",
                new Evidence.Count(8),
                "species",
                new Evidence.Kind(Species.BEEF),
                "loss",
                new Evidence.Percent(BigFraction.of(3), 2),
                "usual",
                new Evidence.Percent(BigFraction.of(2), 2),
                "bodies_before",
                new Evidence.Count(40),
                "weight",
                new Evidence.Borne(weights),
                name,
                more),
            List.of()));
  }
}
