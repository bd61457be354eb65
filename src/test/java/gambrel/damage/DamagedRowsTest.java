package gambrel.damage;

import static gambrel.trade.notice.NoticeWords.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.night.AsOf;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightShop;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.night.RefusedException;
import gambrel.night.Trees;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.trade.reckoning.Progress;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Single cells and rows that are beyond anything a scale prints. */
class DamagedRowsTest {
  private static final String EXPORT = "exports/a.csv";

  @TempDir private Path folder;
  private NightShop shop;

  @BeforeEach
  void openShop() {
    shop = new NightShop(folder.resolve("shop")).beef("B1", "ann");
  }

  private MorningReport night() {
    try {
      var inputs = Inputs.read(shop.write(), Progress.NONE);
      var asOf = AsOf.read(NightShop.NIGHT, inputs.shop().settings().zone());
      var outcome =
          new NightlyRun(inputs, new PlainDocuments()).run(folder.resolve("out"), asOf, List.of());
      return ((NightOutcome.Done) outcome).report();
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  private List<String> told() {
    return night().notices().stream().map(n -> n.code().id() + " " + n.place().line()).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "+999999999-12-31T23:59:59-18:00",
        "-999999999-01-01T00:00:00+18:00",
        "+10000-01-01T00:00:00",
        "9999-12-31T23:59:59-18:00",
        "0000-01-01T00:00:00"
      })
  void aTimeOfNoCenturyIsNoTime(String time) {
    shop.add(EXPORT, "bench,900," + time + ",B1,fat,0.5");

    assertTrue(told().contains("time-bad 8"), () -> told().toString());
  }

  @Test
  void aCellLongerThanAnyLabelSetsItsRowAside() {
    shop.add(EXPORT, "bench,900,2026-03-05T11:00,B1,fat,0.5" + " ".repeat(50_000) + "kg");
    shop.add(EXPORT, "bench,901,2026-03-05T11:00," + "B".repeat(501) + ",fat,0.5");

    var notices = night().notices().stream().filter(n -> n.place().line() >= 8).toList();
    assertEquals(
        List.of(
            "The row cannot be used: its net is longer than 500 characters.",
            "The row cannot be used: its body is longer than 500 characters."),
        notices.stream().map(ENGLISH::message).toList());
  }

  @Test
  void manyContentsOfOneTicketNameOnlyAFewOfEachOther() {
    for (int i = 0; i < 9; i++) {
      shop.add(EXPORT, "bench,900,2026-03-05T11:00,B1,fat,0." + i + "5");
    }

    var first = night().notices().stream().filter(n -> n.place().line() == 8).findFirst();
    assertEquals(
        "Ticket 900 of scale bench appears with different content in exports/a.csv:9 (net 0.15),"
            + " exports/a.csv:10 (net 0.25), exports/a.csv:11 (net 0.35), exports/a.csv:12 (net"
            + " 0.45), exports/a.csv:13 (net 0.55) and more.",
        ENGLISH.message(first.orElseThrow()));
  }

  @Test
  void anExpressionThatNestsTooDeepIsNoExpression() {
    shop.add("exports/bench/layout.properties", "ignore=" + "(".repeat(9_000) + ")".repeat(9_000));
    shop.add("exports/bench/b.csv", "scale,ticket,time,body,code,net");

    assertTrue(told().contains("setting-bad 1"), () -> told().toString());
  }

  @Test
  void aSettingsFileOfTenThousandLinesIsNoSettingsFile() {
    IntStream.range(0, 10_001).forEach(i -> shop.add("exports/bench/layout.properties", "k" + i));
    shop.add("exports/bench/b.csv", "scale,ticket,time,body,code,net");

    assertTrue(told().contains("setting-bad 0"), () -> told().toString());
  }

  @Test
  void aFolderNamedLikeAnExportIsAFolder() {
    shop.add("exports/x.csv/c.csv", "scale,ticket,time,body,code,net");
    shop.add("exports/x.csv/c.csv", "bench,900,2026-03-05T11:00,B1,fat,0.5");

    night();
    assertTrue(
        Trees.lines(folder.resolve("out/data/rows.csv")).contains("exports/x.csv/c.csv,1,1,0,0,0"));
  }

  @Test
  void aMessageIsNeverLongerThanAPersonReads() {
    for (int i = 0; i < 200; i++) {
      shop.add(EXPORT, "bench,9" + i + "-" + "0".repeat(60) + ",2026-03-05T11:00,B1,none,0.5");
    }

    assertTrue(night().notices().stream().allMatch(n -> ENGLISH.message(n).length() <= 2_000));
  }
}
