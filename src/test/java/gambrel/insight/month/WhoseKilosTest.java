package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.figures.Ownership;
import gambrel.trade.measure.Exact;
import gambrel.trade.reckoning.BodyAccount;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A third of the routine shop's bodies are its own, the others a customer's. */
class WhoseKilosTest {
  private static final String MONTHS_PERCENT = "loss";
  private static final String USUAL_PERCENT = "usual";

  @TempDir Path folder;

  private MonthRecords march(Fault fault) {
    return RoutineShop.march(folder, 1, fault);
  }

  private static Finding only(MonthRecords records, Finding.Kind kind) {
    var found = MonthReport.of(records).findings().stream().filter(f -> f.kind() == kind).toList();
    assertEquals(1, found.size(), found::toString);
    return found.get(0);
  }

  private static List<BodyAccount> bodies(MonthRecords records, Finding finding) {
    return finding.subjects().stream()
        .flatMap(id -> Stream.ofNullable(records.night().bodies().get(id)))
        .toList();
  }

  @Test
  void areToldApartInTheChiller() {
    var records = march(Fault.CHILLER_TAKES_MORE);
    var hot = new TreeMap<Ownership, BigFraction>();
    var finding = only(records, Finding.Kind.CHILLER);
    for (var body : bodies(records, finding)) {
      hot.merge(whose(body), body.balance().hot().orElseThrow().fraction(), BigFraction::add);
    }
    assertEachOwnersSum(hot, finding);
  }

  @Test
  void areToldApartOnTheBench() {
    var records = march(Fault.BENCH_LOSES_MORE);
    var boned = new TreeMap<Ownership, BigFraction>();
    var finding = only(records, Finding.Kind.BENCH);
    for (var body : bodies(records, finding)) {
      boned.merge(whose(body), body.balance().boning().orElseThrow().fraction(), BigFraction::add);
    }
    assertEachOwnersSum(boned, finding);
  }

  private static Ownership whose(BodyAccount body) {
    return body.body().owners().containsKey("ann") ? Ownership.CUSTOMERS : Ownership.OWN;
  }

  /** So many per cent of what each had on the rail or on the bench, to the milligram. */
  private static void assertEachOwnersSum(Map<Ownership, BigFraction> of, Finding finding) {
    assertEquals(2, of.size(), "bodies of both");
    var more = percent(finding, MONTHS_PERCENT).subtract(percent(finding, USUAL_PERCENT));
    var expected = new TreeMap<Ownership, BigDecimal>();
    of.forEach((whose, sum) -> expected.put(whose, rounded(sum.multiply(more).divide(100))));
    var found = new TreeMap<Ownership, BigDecimal>();
    borne(finding).orElseThrow().weights().forEach((who, sum) -> found.put(who, rounded(sum)));
    assertEquals(expected, found);
  }

  private static BigDecimal rounded(BigFraction weight) {
    return Exact.round(weight, 6);
  }

  private static BigFraction percent(Finding finding, String name) {
    return ((Evidence.Percent) finding.evidence().get(name)).value();
  }

  private static Optional<Evidence.Borne> borne(Finding finding) {
    return finding.evidence().values().stream()
        .filter(Evidence.Borne.class::isInstance)
        .map(Evidence.Borne.class::cast)
        .findFirst();
  }

  @ParameterizedTest
  @EnumSource(Fault.class)
  void goWithTheMoneyOfOneWhoIsNamed(Fault fault) {
    for (var finding : MonthReport.of(march(fault)).findings()) {
      var costs = finding.costs().stream().map(Finding.Cost::value).toList();
      assertTrue(finding.money().map(costs::contains).orElse(costs.isEmpty()), finding::toString);
    }
  }

  @ParameterizedTest
  @EnumSource(Fault.class)
  void areInNoFindingAddedUp(Fault fault) {
    var records = march(fault);
    for (var finding : MonthReport.of(records).findings()) {
      var owners =
          bodies(records, finding).stream().map(Ownership::of).distinct().sorted().toList();
      boolean oneWeight =
          finding.evidence().values().stream().anyMatch(Evidence.Mass.class::isInstance);
      assertTrue(!oneWeight || owners.size() <= 1, finding::toString);
      borne(finding)
          .ifPresent(borne -> assertEquals(owners, List.copyOf(borne.weights().keySet())));
    }
  }
}
