package gambrel.pages.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.insight.cause.Cause;
import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.cause.Suggestion;
import gambrel.night.AsOf;
import gambrel.night.Inputs;
import gambrel.night.NightShop;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Progress;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.shop.Correction;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplanationTest {
  @TempDir private Path folder;
  private NightShop shop;

  @BeforeEach
  void openShop() {
    shop = new NightShop(folder).beef("B1", "ann");
    shop.add("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
  }

  private Night night() throws Exception {
    var inputs = Inputs.read(shop.write(), Progress.NONE);
    var asOf = AsOf.read(NightShop.NIGHT, inputs.shop().settings().zone());
    return new Reckoner(inputs.shop(), inputs.exports()).at(asOf);
  }

  private List<String> explain(String body) throws Exception {
    return Explanation.of(night(), LikelyCauses.NONE, body).orElseThrow();
  }

  @Test
  void tellsTheLikelyCauseWithTheLineToPaste() throws Exception {
    var suggestion =
        new Suggestion(
            Cause.DOUBLE_PRESS,
            Notice.of(NoticeCode.LIKELY_CAUSE, Phrase.of("CAUSE.CAPACITY"), Place.NONE)
                .aboutBody("B1"),
            List.of(),
            List.of(
                new Correction(
                    "bench",
                    "7",
                    Optional.of(LocalDate.of(2026, 3, 5)),
                    "status",
                    "void",
                    "",
                    night().asOf(),
                    "",
                    Place.NONE)),
            Optional.empty(),
            Optional.empty());
    var causes = new LikelyCauses(new TreeMap<>(Map.of("B1", List.of(suggestion))), 0);
    var lines = Explanation.of(night(), causes, "B1").orElseThrow();
    int at = lines.indexOf("  likely cause: the scale cannot weigh so much");
    assertTrue(at > 0);
    assertEquals("    bench,7,2026-03-05,status,void,,,printed twice", lines.get(at + 2));
  }

  /** The lines under a figure, up to the next figure or heading, with single spaces. */
  private static List<String> under(List<String> lines, String figure) {
    var found = new ArrayList<String>();
    boolean inside = false;
    for (var line : lines) {
      if (!line.startsWith("  ")) {
        inside = line.startsWith(figure + ' ') || line.equals(figure);
      } else if (inside) {
        found.add(line.strip().replaceAll(" +", " "));
      }
    }
    return found;
  }

  private static String figure(List<String> lines, String name) {
    return lines.stream()
        .filter(line -> line.startsWith(name + ' '))
        .findFirst()
        .orElseThrow()
        .replaceAll(" +", " ");
  }

  @Test
  void aWeightNamesTheWeighingsThatMakeItWithFileLineScaleAndTicket() throws Exception {
    var lines = explain("B1");

    assertEquals("hot 300.000 sum of the standing hot weights", figure(lines, "hot"));
    assertEquals(
        List.of("300.000 hot carcase exports/a.csv:2 rail ticket 1 2026-03-02T10:00 body B1"),
        under(lines, "hot"));
    assertEquals(
        List.of("294.000 cold carcase exports/a.csv:3 rail ticket 2 2026-03-03T10:00 body B1"),
        under(lines, "boning"));
    assertEquals(
        List.of(
            "120.000 pack rump exports/a.csv:4 bench ticket 3 2026-03-05T10:00 body B1",
            "80.000 pack mince exports/a.csv:5 bench ticket 4 2026-03-05T10:10 body B1"),
        under(lines, "take_home"));
    assertEquals(
        List.of("60.000 bin bone exports/a.csv:6 bench ticket 5 2026-03-05T10:20 body B1"),
        under(lines, "bone"));
    assertEquals(
        List.of("28.000 bin fat exports/a.csv:7 bench ticket 6 2026-03-05T10:30 body B1"),
        under(lines, "fat"));
    assertEquals(List.of(), under(lines, "waste"));
  }

  @Test
  void everyFigureOfTheBodysRowIsThere() throws Exception {
    var lines = explain("B1");

    for (var name :
        List.of(
            "live",
            "hot",
            "cold",
            "boning",
            "take_home",
            "meat_home",
            "offal",
            "tub",
            "bone",
            "fat",
            "waste",
            "rail_trim",
            "cutting_loss",
            "unweighed",
            "balance_u",
            "balance_scale",
            "batch_loss",
            "dressing_pct",
            "chill_shrink_pct",
            "ageing_shrink_pct",
            "take_home_of_hot_pct",
            "take_home_of_cold_pct",
            "meat_of_cold_pct",
            "days_hung",
            "hours_chilled")) {
      assertEquals(1, lines.stream().filter(l -> l.startsWith(name + ' ')).count(), name);
    }
    assertTrue(figure(lines, "cutting_loss").startsWith("cutting_loss 6.000 "));
    assertTrue(figure(lines, "live").startsWith("live not known "));
  }

  @Test
  void theUncertaintyNamesItsScalesAndTheirDivisions() throws Exception {
    assertEquals(
        List.of(
            "scale bench: 4 weighings, d 0.005 scales.csv",
            "scale rail: 1 weighings, d 0.2 scales.csv"),
        under(explain("B1"), "balance_u"));
  }

  @Test
  void aCorrectedRowSaysWhatItWasWhoChangedItAndWhy() throws Exception {
    shop.add("corrections.csv", "bench,3,,net,119.9,Hetty,2026-03-05T17:00,label misread");

    assertTrue(
        under(explain("B1"), "take_home")
            .contains(
                "corrected: net was 120, now 119.9, by Hetty on 2026-03-05T17:00: label misread"
                    + " corrections.csv:2"));
  }

  @Test
  void rowsThatACorrectionTookAwayAreListed() throws Exception {
    shop.body("B2", "bob").weigh("bench", "05T11:00:00", "B1", "rump", "1");
    shop.add("corrections.csv", "bench,9,,body,B2,Hetty,2026-03-05T17:00,wrong key");
    shop.add("corrections.csv", "bench,3,,status,void,Hetty,2026-03-05T17:00,printed twice");

    assertEquals(
        List.of(
            "exports/a.csv:4 bench ticket 3 corrected: status was blank, now void, by Hetty on"
                + " 2026-03-05T17:00: printed twice corrections.csv:3",
            "exports/a.csv:10 bench ticket 9 corrected: body was B1, now B2, by Hetty on"
                + " 2026-03-05T17:00: wrong key corrections.csv:2"),
        under(explain("B1"), "Rows that a correction took away from it"));
  }

  @Test
  void rowsSetAsideAndReleasesAreListed() throws Exception {
    shop.weigh("bench", "05T11:00:00", "B1", "nothing", "1");
    shop.add("releases.csv", "body,by,on,reason", "B1,Hetty,2026-03-05T23:00,a slip");

    var lines = explain("B1");

    assertEquals(
        List.of("exports/a.csv:8 bench ticket 7 code-unknown codes.csv has no code nothing."),
        under(lines, "Rows set aside that name it"));
    assertEquals(
        List.of("release by Hetty on 2026-03-05T23:00: a slip releases.csv:2"),
        under(lines, "Releases"));
    assertTrue(
        lines.contains(
            "  released: row-set-aside bench 7: a row that names it was set aside (bench 7)"),
        lines::toString);
  }

  @Test
  void moneyIsTracedToThePriceListAndEachPayment() throws Exception {
    shop.add("payments.csv", "customer,body,date,amount,note");
    shop.add("payments.csv", "ann,B1,2026-03-04,40,cash", "ann,B1,2026-03-05,3,");
    shop.add("payments.csv", "ann,B1,2026-03-09,9,not yet", "bob,B1,2026-03-04,9,");

    var lines = explain("B1");

    assertTrue(figure(lines, "charge").startsWith("charge kill 130.00 charges.csv: head 1.000 x"));
    assertEquals("tax 13.00", figure(lines, "tax"));
    assertEquals(
        List.of("payment of 2026-03-04 40.00 cash", "payment of 2026-03-05 3.00"),
        under(lines, "paid"));
    assertEquals("due 100.00 charges + tax - paid", figure(lines, "due"));
  }

  @Test
  void aCustomerIsToldByShareAndByPacksWeighedInTheirName() throws Exception {
    shop.add("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    shop.weigh("bench", "05T11:00:00", "B1", "rump", "2", "", "", "bob");

    var lines = explain("B1");
    int bob = lines.indexOf("Customer bob, share 1 / 2  shares.csv");

    assertTrue(bob > 0, lines::toString);
    assertEquals(
        "rump 62.000 outright 2.000, the rest by share",
        figure(lines.subList(bob, lines.size()), "rump"));
    int ann = lines.indexOf("Customer ann, share 1 / 2  shares.csv");
    assertFalse(lines.subList(ann, bob).stream().anyMatch(line -> line.contains("customer bob")));
  }

  @Test
  void aBatchNamesEveryRowThatWentInAndCameOut() throws Exception {
    shop.beef("B2", "bob");
    shop.weigh("bench", "05T11:00:00", "B1", "trim", "2", "", "M1");
    shop.weigh("bench", "05T11:01:00", "B2", "trim", "1", "", "M1");
    shop.weigh("bench", "05T11:02:00", "", "mince", "2.97", "", "M1");

    var lines = explain("B1");
    int batch = lines.indexOf("Batch M1, balanced");

    assertEquals(
        List.of(
            "2.000 tub trim exports/a.csv:14 bench ticket 13 2026-03-05T11:00 body B1 batch M1",
            "1.000 tub trim exports/a.csv:15 bench ticket 14 2026-03-05T11:01 body B2 batch M1",
            "2.970 pack mince exports/a.csv:16 bench ticket 15 2026-03-05T11:02 batch M1"),
        under(lines.subList(batch, lines.size()), "part of this body"));
  }

  @Test
  void anUnknownBodyHasNone() throws Exception {
    assertTrue(Explanation.of(night(), LikelyCauses.NONE, "B9").isEmpty());
  }
}
