package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.tables.NightTables;
import gambrel.files.tables.RegisterTable;
import gambrel.files.tables.Table;
import gambrel.insight.month.MonthReport;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.night.Documents;
import gambrel.night.Inputs;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.pages.owner.month.SummaryComposer;
import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.views.MorningView;
import gambrel.pages.views.SummaryView;
import gambrel.pages.words.Wording;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Register;
import java.lang.reflect.Proxy;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SampleOwnerPagesTest {
  private static final Map<YearMonth, SummaryView> SUMMARIES = new HashMap<>();

  @TempDir private static Path out;
  private static Night night;
  private static Register register;
  private static MorningReport report;
  private static Wording wording;

  @BeforeAll
  static void runTheNight() throws Exception {
    var inputs = Inputs.read(Path.of("sample-exports"), Progress.NONE);
    new NightlyRun(inputs, listening())
        .run(out, OffsetDateTime.parse("2026-10-01T02:00:00+10:00"), List.of());
    wording = SmallShop.wording(night);
  }

  /** Plain documents, and what the owner's pages are made of. */
  private static Documents listening() {
    var plain = new PlainDocuments();
    return (Documents)
        Proxy.newProxyInstance(
            Documents.class.getClassLoader(),
            new Class<?>[] {Documents.class},
            (proxy, method, arguments) -> {
              if (method.getName().equals("remembering")) {
                return proxy;
              }
              if (method.getName().equals("summary")) {
                night = ((MonthReport) arguments[0]).records().night();
                register = ((MonthReport) arguments[0]).records().register();
              } else if (method.getName().equals("morning")) {
                report = (MorningReport) arguments[0];
              }
              return method.invoke(plain, arguments);
            });
  }

  static Stream<YearMonth> months() {
    return Stream.of("2026-07", "2026-08", "2026-09").map(YearMonth::parse);
  }

  @ParameterizedTest
  @MethodSource("months")
  void hotWeightIsTheSumOfTheDataFile(YearMonth month) {
    assertTotal(month, "On the rail, hot", sum("hot_kg", killedIn(month)));
  }

  @ParameterizedTest
  @MethodSource("months")
  void takeHomeAndBinsAreTheSumsOfTheDataFile(YearMonth month) {
    var home =
        SmallShop.rows(summary(month), "bodies").stream()
            .filter(row -> !row.get(7).isEmpty())
            .map(row -> row.get(0))
            .collect(Collectors.toSet());
    Predicate<Map<String, String>> taken = row -> home.contains(row.get("body"));
    assertTotal(month, "Take-home", sum("take_home_kg", taken));
    assertTotal(month, "Into the boning room", sum("boning_kg", taken));
    assertTotal(month, "Offal, on top of it", sum("offal_kg", taken));
    assertTotal(month, "Bone, not taken home", sum("bone_kg", taken));
    assertTotal(month, "Fat, not taken home", sum("fat_kg", taken));
    assertTotal(month, "Waste, not taken home", sum("waste_kg", taken));
  }

  @Test
  void everyBodyThatWasCutIsTakenHomeInOneMonth() {
    var counted =
        months()
            .flatMap(month -> SmallShop.rows(summary(month), "bodies").stream())
            .filter(row -> !row.get(7).isEmpty())
            .map(row -> row.get(0))
            .sorted()
            .toList();
    var expected =
        bodies().stream()
            .filter(row -> !row.get("take_home_kg").isEmpty() && !row.get("state").equals("open"))
            .map(row -> row.get("body"))
            .sorted()
            .toList();
    assertEquals(expected, counted);
  }

  @ParameterizedTest
  @MethodSource("months")
  void shrinkIsOfAllBodiesOfWhichTheDataFileHasIt(YearMonth month) {
    Predicate<Map<String, String>> known = row -> !row.get("chill_shrink_pct").isEmpty();
    long expected = bodies().stream().filter(killedIn(month).and(known)).count();
    long counted =
        SmallShop.column(summary(month), "lost", 2).stream()
            .filter(bodies -> !bodies.isEmpty())
            .map(bodies -> bodies.replace("of ", ""))
            .mapToLong(Long::parseLong)
            .sum();
    assertEquals(expected, counted);
  }

  @ParameterizedTest
  @MethodSource("months")
  void chillLossByOwnerAndSpeciesAddsUpToTheSumOverBodies(YearMonth month) {
    var expected =
        bodies().stream()
            .filter(killedIn(month))
            .filter(row -> !row.get("chill_shrink_pct").isEmpty())
            .map(
                row ->
                    new BigDecimal(row.get("hot_kg"))
                        .multiply(new BigDecimal(row.get("chill_shrink_pct")))
                        .movePointLeft(2))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    var printed =
        SmallShop.column(summary(month), "lost", 3).stream()
            .filter(text -> !text.isEmpty())
            .map(BigDecimal::new)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    // The data file rounds each percentage to 0.001, the rail shows 0.2 kg: 0.05 kg is neither.
    assertTrue(
        printed.subtract(expected).abs().compareTo(new BigDecimal("0.05")) < 0,
        printed + " and " + expected);
  }

  @Test
  void whatIsUnpaidInTheLastMonthIsAllThatTheRegisterHasDue() {
    var expected =
        rows(RegisterTable.of(register, night.shop().settings())).stream()
            .map(row -> new BigDecimal(row.get("due")))
            .filter(due -> due.signum() > 0)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    var unpaid = SmallShop.rows(summary(YearMonth.parse("2026-09")), "unpaid");
    assertEquals(expected, new BigDecimal(unpaid.get(unpaid.size() - 1).get(1).replace(",", "")));
  }

  @Test
  void everyHeldBodyIsInTheSummaryOfItsMonthAndOnTheMorningSheet() {
    var held =
        bodies().stream()
            .filter(row -> row.get("state").equals("held"))
            .map(row -> row.get("body"))
            .collect(Collectors.toSet());
    assertFalse(held.isEmpty());
    assertEquals(held, heldBodies(waiting().items().stream().map(item -> item.who())));
    assertEquals(
        held, heldBodies(months().flatMap(m -> summary(m).held().stream()).map(h -> h.body())));
  }

  @ParameterizedTest
  @MethodSource("months")
  void peopleAreCalledByNameAndFilesAreNotNamed(YearMonth month) {
    String text = textOf(summary(month));
    assertFalse(text.contains("exports/"), "names an export file");
    assertFalse(namesACustomerById(text));
    assertFalse(namesACustomerById(textOf(summaryLike(morning()))));
  }

  @Test
  void everyBodyThatHangsOrIsOnTheBlockStandsOnTheMorningSheetOnce() {
    var open =
        bodies().stream()
            .filter(row -> row.get("state").equals("open"))
            .map(row -> row.get("body"))
            .collect(Collectors.toSet());
    var rail = morning().rail();
    var shown =
        Stream.concat(
                rail.hanging().stream().map(row -> row.body()),
                rail.onBlock().stream().map(row -> row.body()))
            .toList();
    assertEquals(open, heldBodies(shown.stream()));
    assertEquals(open.size(), shown.size());
  }

  private static List<Object> summaryLike(MorningView sheet) {
    return List.of(
        sheet.story(),
        waiting().items().stream().map(i -> i.who()).toList(),
        sheet.rail(),
        sheet.ring(),
        sheet.notes());
  }

  private static String textOf(Object view) {
    return view instanceof SummaryView month
        ? month.toString().replace(month.words().toString(), "")
        : view.toString();
  }

  private static boolean namesACustomerById(String text) {
    var words = new HashSet<>(List.of(text.split("[^\\p{L}\\p{N}_-]+")));
    return night.shop().customers().keySet().stream().anyMatch(words::contains);
  }

  private static Set<String> heldBodies(Stream<String> named) {
    return named.map(body -> body.replaceAll(",.*", "")).collect(Collectors.toSet());
  }

  private static SummaryView summary(YearMonth month) {
    return SUMMARIES.computeIfAbsent(
        month,
        m -> SummaryComposer.compose(MonthReport.of(MonthRecords.of(night, register, m)), wording));
  }

  /** The statements that wait. */
  private static MorningView.Waits waiting() {
    return morning().waits().stream()
        .filter(group -> group.title().equals(wording.say("morning.group.hold")))
        .findFirst()
        .orElseThrow();
  }

  private static MorningView morning() {
    return MorningComposer.compose(report, wording);
  }

  private static void assertTotal(YearMonth month, String label, BigDecimal expected) {
    var printed =
        SmallShop.rows(summary(month), "sums").stream()
            .filter(row -> row.get(0).equals(label))
            .flatMap(row -> row.stream().skip(1))
            .filter(text -> !text.isEmpty())
            .map(text -> new BigDecimal(text.replaceAll("[^0-9.]", "")))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(0, expected.compareTo(printed), label + ": " + expected + ", not " + printed);
  }

  private static BigDecimal sum(String column, Predicate<Map<String, String>> which) {
    return bodies().stream()
        .filter(which)
        .map(row -> row.get(column))
        .filter(cell -> !cell.isEmpty())
        .map(BigDecimal::new)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static Predicate<Map<String, String>> killedIn(YearMonth month) {
    return row ->
        row.get("killed").startsWith(month.toString()) && !row.get("state").equals("cancelled");
  }

  private static List<Map<String, String>> bodies() {
    return NightTables.of(night).stream()
        .filter(table -> table.name().equals("bodies.csv"))
        .map(SampleOwnerPagesTest::rows)
        .findFirst()
        .orElseThrow();
  }

  private static List<Map<String, String>> rows(Table table) {
    return table
        .rows()
        .map(
            cells -> {
              Map<String, String> row = new LinkedHashMap<>();
              for (int i = 0; i < cells.size(); i++) {
                row.put(table.header().get(i), cells.get(i));
              }
              return row;
            })
        .toList();
  }
}
