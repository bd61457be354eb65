package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.files.tables.NightTables;
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
import gambrel.pages.views.FlowView;
import gambrel.pages.views.MorningView;
import gambrel.pages.views.SummaryView;
import gambrel.pages.words.Wording;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.register.Accounts;
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
              if (method.getReturnType() == Documents.class) {
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

  /** Of the bodies that are taken home in the month and not named as left out. */
  @ParameterizedTest
  @MethodSource("months")
  void theSumsOfOwnersAreThoseOfTheDataFile(YearMonth month) {
    var leftOut = String.join(" ", summary(month).first().leftOut());
    var home =
        SmallShop.rows(summary(month), "bodies").stream()
            .filter(row -> !row.get(7).isEmpty())
            .map(row -> row.get(0))
            .filter(body -> !leftOut.contains(body))
            .collect(Collectors.toSet());
    Predicate<Map<String, String>> taken = row -> home.contains(row.get("body"));
    assertTotal(month, List.of("kilos.room_whole", "kilos.room_boning"), sum("boning_kg", taken));
    assertTotal(month, List.of("kilos.room_whole", "kilos.room_home"), sum("take_home_kg", taken));
    assertTotal(month, List.of("kilos.room_offal"), sum("offal_kg", taken));
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

  /** The picture's bodies are counted once each, and its parts add up to their first weight. */
  @ParameterizedTest
  @MethodSource("months")
  void thePartsOfThePictureAddUpToItsFirstWeight(YearMonth month) {
    var rows = summary(month).first().kilos().get(0).rows();
    var first = kilos(rows.get(0).weight());
    var parts =
        rows.stream()
            .filter(row -> row.kind() != FlowView.Kind.STAGE)
            .map(row -> kilos(row.weight()))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(first, parts);
  }

  private static BigDecimal kilos(String weight) {
    return new BigDecimal(weight.replaceAll("[^0-9.]", ""));
  }

  @Test
  void whatIsOwedInTheLastMonthIsAllThatTheAccountsHaveDue() {
    var expected =
        Accounts.of(night, register).stream()
            .map(account -> account.due())
            .filter(due -> due.compareTo(Money.ZERO) > 0)
            .reduce(Money.ZERO, Money::plus);
    var owed = SmallShop.rows(summary(YearMonth.parse("2026-09")), "ages").get(0).get(5);
    assertEquals(
        expected.decimal(night.shop().settings().currency()),
        new BigDecimal(owed.replace(",", "")));
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
    var leftOut =
        months().flatMap(m -> summary(m).first().leftOut().stream()).collect(Collectors.joining());
    held.forEach(body -> assertTrue(leftOut.contains(body), body));
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

  /** Columns of the sums of each owner, printed to a tenth. */
  private static void assertTotal(YearMonth month, List<String> heads, BigDecimal expected) {
    var titles = heads.stream().map(head -> wording.say(head) + ", kg").toList();
    var printed = BigDecimal.ZERO;
    for (var table : SmallShop.tables(summary(month), "sums")) {
      for (int i = 0; i < table.heads().get(0).size(); i++) {
        if (titles.contains(table.heads().get(0).get(i).text())) {
          for (var row : table.rows()) {
            String text = row.cells().get(i).text();
            printed = printed.add(text.isEmpty() ? BigDecimal.ZERO : kilos(text));
          }
        }
      }
    }
    var off = expected.subtract(printed).abs();
    assertTrue(off.compareTo(new BigDecimal("0.3")) <= 0, expected + ", not " + printed);
  }

  private static BigDecimal sum(String column, Predicate<Map<String, String>> which) {
    return bodies().stream()
        .filter(which)
        .map(row -> row.get(column))
        .filter(cell -> !cell.isEmpty())
        .map(BigDecimal::new)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
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
