package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.cuts.Region;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.PublishedRanges;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class BuiltInRangesTest {
  private final PublishedRanges ranges = BuiltInTables.ranges();

  private static Body body(Species species, String category) {
    return new Body(
        "B1",
        species,
        category,
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        "",
        "",
        Map.of(),
        1,
        List.of(),
        "",
        Body.Outcome.CUT,
        "",
        Optional.empty(),
        "",
        Optional.empty(),
        "");
  }

  private Optional<PublishedRanges.Range> beef(String category, Region region, String figure) {
    return ranges.of(body(Species.BEEF, category), region, figure, Optional.of(2));
  }

  /** Univ. of Kentucky ASC-179, table 1: grass-fed from 56, grain-fed to 63. */
  @Test
  void dressingOfCattleIsAsKentuckyPublishedIt() {
    var range = beef("Steer", Region.US, "dressing").orElseThrow();
    assertEquals(new BigDecimal("56"), range.low());
    assertEquals(new BigDecimal("63"), range.high());
    assertEquals(-1, range.compare(BigFraction.of(5594, 100)));
    assertEquals(0, range.compare(BigFraction.of(5595, 100)), "56.0 as printed");
    assertEquals(1, range.compare(BigFraction.of(6305, 100)), "63.1 as printed");
  }

  /** Int. Institute of Refrigeration 2000-0817: of sides after one to two days in the chiller. */
  @Test
  void whatIsPublishedOfTwoDaysIsNotComparedWithWhatHungLonger() {
    var steer = body(Species.BEEF, "steer");
    assertTrue(ranges.of(steer, Region.UK, "chill", Optional.of(2)).isPresent());
    assertTrue(ranges.of(steer, Region.UK, "chill", Optional.of(3)).isEmpty());
    assertTrue(ranges.of(steer, Region.UK, "chill", Optional.empty()).isEmpty());
    assertTrue(ranges.of(steer, Region.US, "chill", Optional.empty()).isPresent());
  }

  /**
   * National Pork Producers Council, as reprinted by the Univ. of Kentucky: 140 of 184 lb; Kansas
   * State Univ. lamb cut-out: 22.4 + 8.7 + 12.7 + 14.0 + 5.8 %; extension table of freezer beef:
   * 300 of 600 lb; US 1,150-lb steer table: 569 of 715 lb.
   */
  @Test
  void endsOfTakeHomeRangesFollowFromThePublishedTables() {
    assertEquals(rounded(140, 184), of(Species.PORK, "take_home").high());
    assertEquals(rounded(636, 1000), of(Species.LAMB, "take_home").low());
    var beef = of(Species.BEEF, "take_home");
    assertEquals(rounded(300, 600), beef.low().setScale(1));
    assertEquals(rounded(569, 715), beef.high());
  }

  /**
   * Least bone of the three groups of Braford cattle boned out in R. Bras. Zootec. 38(11) 2009 and
   * 39(6) 2010 (16.57, 17.4 and 17.9 %); share of bone in the Australian guide to primals (20 %).
   */
  @Test
  void boneOfBeefRunsFromTheBrazilianCattleToTheAustralianGuide() {
    var bone = of(Species.BEEF, "bone");
    assertEquals(new BigDecimal("16.57").setScale(1, RoundingMode.HALF_UP), bone.low());
    assertEquals(new BigDecimal("20"), bone.high());
  }

  /** The range of a figure that is about every region and class. */
  private PublishedRanges.Range of(Species species, String figure) {
    return ranges.all().stream()
        .filter(of -> of.species().equals(species.id()) && of.figure().equals(figure))
        .filter(of -> of.region().isEmpty() && of.classes().isEmpty())
        .findFirst()
        .orElseThrow()
        .range();
  }

  private static BigDecimal rounded(long part, long whole) {
    return Exact.round(BigFraction.of(100 * part, whole), 1);
  }

  /**
   * Int. Institute of Refrigeration 2000-0817: 14 chillers, 1.1 to 2.0 in 24, 1.5 to 2.3 in 48 h.
   */
  @Test
  void shrinkOfBeefIsThatOfTheChillersOfTheRegion() {
    var british = beef("", Region.UK, "chill").orElseThrow();
    assertEquals(new BigDecimal("1.1"), british.low());
    assertEquals(new BigDecimal("2.3"), british.high());
    assertEquals(new BigDecimal("5"), beef("", Region.US, "chill").orElseThrow().high());
  }

  @Test
  void nothingIsMadeUpWhereNothingWasPublished() {
    assertTrue(ranges.of(body(Species.GAME, ""), Region.US, "dressing", Optional.of(2)).isEmpty());
    assertTrue(beef("cow", Region.US, "dressing").isEmpty(), "of another class");
    assertTrue(beef("steer", Region.AU, "dressing").isEmpty(), "in another region");
  }

  @Test
  void everyRangeIsOfASpeciesHasItsSourceAndRunsUpwards() {
    var species = Arrays.stream(Species.values()).map(Species::id).collect(Collectors.toSet());
    var figures = Set.of("dressing", "chill", "take_home", "bone", "fat");
    assertAll(
        ranges.all().stream()
            .map(
                of ->
                    () -> {
                      assertTrue(species.contains(of.species()), of::toString);
                      assertTrue(figures.contains(of.figure()), of::toString);
                      assertFalse(of.range().source().isBlank(), of::toString);
                      assertTrue(of.range().low().compareTo(of.range().high()) <= 0, of::toString);
                    }));
  }
}
