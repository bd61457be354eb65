package gambrel.pages.owner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.insight.cause.LikelyCauses;
import gambrel.pages.owner.morning.MorningComposer;
import gambrel.pages.owner.morning.MorningReport;
import gambrel.pages.views.MorningView;
import gambrel.pages.views.MorningView.Hanging;
import gambrel.pages.views.MorningView.OnBlock;
import gambrel.pages.views.MorningView.Unpacked;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RailOnTheSheetTest {
  @TempDir private Path folder;
  private SmallShop shop;

  @BeforeEach
  void startAShop() {
    shop = new SmallShop(folder);
    shop.instead("bodies.csv", "body,species,class,killed,customer,chiller,cut_by,outcome");
  }

  @Test
  void aBodyThatHangsHasItsOwnerItsDaysItsWeightAndTheDayThatItsOwnerAskedFor() {
    body("A1", "2026-07-10", "c-ann", "north,2026-07-20");
    shop.hung("A1", "2026-07-10", "204", "200");
    assertEquals(
        List.of(
            new Hanging(
                "A1, beef, steer",
                "Ann Lowry",
                "north",
                "10 Jul",
                "5",
                "200.0\u00a0kg",
                "20 Jul, asked for",
                false)),
        rail().hanging());
    assertEquals("", rail().hangingNote());
    assertEquals(
        "Next to cut: A1 (Ann Lowry), by Monday 20 July 2026. No statement was issued.",
        sheet().story().get(1));
  }

  /** Killed on 2 July and hung 3, 4, 9, 10 and 12 days: the median is 9, so 9 July and 9 days. */
  @Test
  void withoutSuchADayItIsTheMedianOfTheDaysThatLikeBodiesHung() {
    int number = 0;
    for (int days : List.of(3, 9, 12, 4, 10)) {
      cut("S" + number++, "2026-06-0" + number, days);
    }
    body("A1", "2026-07-09", "c-ann", ",");
    shop.hung("A1", "2026-07-09", "204", "200");
    assertEquals("18 Jul, usual: 9 days", rail().hanging().get(0).cutBy());
    assertEquals(
        "Usual: the median of the days that the last bodies of that species and class hung here;"
            + " of the species, if these are few.",
        rail().hangingNote());
  }

  @Test
  void ofFewerThanFiveLikeBodiesNoDayIsUsual() {
    for (int i = 0; i < 4; i++) {
      cut("S" + i, "2026-06-0" + (i + 1), 3);
    }
    body("A1", "2026-07-10", "c-ann", ",");
    assertEquals("", rail().hanging().get(0).cutBy());
    assertEquals("No statement was issued.", sheet().story().get(1));
  }

  /** Eighteen bodies hang: sixteen have a row, the last two a name. */
  @Test
  void sixteenBodiesHaveARowAndTheOthersAreNamedBelow() {
    for (int i = 10; i < 28; i++) {
      body("A" + i, "2026-07-10", "c-ann", ",2026-08-" + i);
    }
    assertEquals(16, rail().hanging().size());
    assertEquals("Also on the rail, to be cut later: A26, A27.", rail().hangingNote());
  }

  @Test
  void whatIsDueFirstStandsFirstAndWhatIsDueTodayOrLateIsToldAtTheTop() {
    body("A1", "2026-07-10", "c-ann", ",2026-07-16");
    body("A2", "2026-07-11", "c-bob", ",2026-07-15");
    body("A3", "2026-07-12", "c-ann", ",");
    body("A4", "2026-07-13", "c-ann", ",2026-07-14");
    var rail = rail();
    assertEquals(
        List.of("A4", "A2", "A1", "A3"),
        rail.hanging().stream().map(row -> row.body().replaceAll(",.*", "")).toList());
    assertEquals(
        List.of(true, true, false, false), rail.hanging().stream().map(Hanging::now).toList());
    assertEquals(
        "To cut now, 2 bodies: A4 (Ann Lowry), A2 (Bob Teasel). No statement was issued.",
        sheet().story().get(1));
  }

  /** Of 200 kg 60 are out; 3 % may be lost, 6 kg: 200 less 60 less 6 is at least to come. */
  @Test
  void ofABodyCutInPartItSaysWhatIsOutAndWhatMustAtLeastCome() {
    body("A1", "2026-07-12", "c-ann", ",");
    shop.hung("A1", "2026-07-12", "204", "200").cut("A1", "2026-07-14", "50", "10");
    assertEquals(
        List.of(
            new OnBlock(
                "A1, beef, steer",
                "Ann Lowry",
                "14 Jul",
                "200.0\u00a0kg",
                "60.00\u00a0kg",
                "At least 134.00\u00a0kg more")),
        rail().onBlock());
    assertEquals("To finish: A1 (Ann Lowry). No statement was issued.", sheet().story().get(1));
  }

  /** The five before gave 156 of 200 each, 78 %; so of 200 kg 156 are usual, and 50 are packed. */
  @Test
  void whereBinsAreNotWeighedItSaysWhatLikeBodiesWouldStillGive() {
    shop.add("shop.properties", "bins=no");
    for (int i = 0; i < 5; i++) {
      cut("S" + i, "2026-06-0" + (i + 1), 3);
    }
    body("A1", "2026-07-06", "c-ann", ",");
    shop.hung("A1", "2026-07-06", "204", "200")
        .row("bench", "2026-07-14T09:00", "A1", "mince", "50");
    assertEquals("About 106.00\u00a0kg more", rail().onBlock().get(0).rest());
  }

  @Test
  void withoutAUsualWeightItOnlySaysThatTheRestIsToCome() {
    shop.add("shop.properties", "bins=no");
    body("A1", "2026-07-06", "c-ann", ",");
    shop.hung("A1", "2026-07-06", "204", "200")
        .row("bench", "2026-07-14T09:00", "A1", "mince", "50");
    assertEquals("The rest", rail().onBlock().get(0).rest());
    assertEquals("", rail().onBlockNote());
  }

  @Test
  void aBodyThatIsCutWaitsForItsBatchOrForQuietHours() {
    body("A1", "2026-07-06", "c-ann", ",");
    shop.hung("A1", "2026-07-06", "204", "200").cut("A1", "2026-07-09", "150", "40");
    shop.row("bench", "2026-07-09T10:00", "A1", "trim", "6", "M1");
    body("A2", "2026-07-06", "c-bob", ",");
    shop.hung("A2", "2026-07-06", "204", "200").cut("A2", "2026-07-15", "156", "40");
    assertEquals(List.of("Batch M1"), rail().onBlock().stream().map(OnBlock::rest).toList());
    assertEquals(
        List.of("Batch M1", "6 hours without a weighing"),
        sheet("2026-07-15T10:00:00Z").rail().onBlock().stream().map(OnBlock::rest).toList());
  }

  /** It is issued, since its day is known; its ham is not packed. */
  @Test
  void whatIsInCureStandsThereWithItsDayThoughItsBodyIsIssued() {
    shop.add("batches.csv", "H1,Ham,2026-07-30");
    body("A1", "2026-07-06", "c-ann", ",");
    shop.hung("A1", "2026-07-06", "204", "200").cut("A1", "2026-07-09", "150", "40");
    shop.row("bench", "2026-07-09T10:00", "A1", "trim", "6", "H1");
    assertEquals(List.of(), rail().onBlock());
    assertEquals(
        List.of(new Unpacked("H1, Ham", "A1 (Ann Lowry)", "9 Jul", "6.00\u00a0kg", "30 Jul")),
        rail().batches());
  }

  @Test
  void aBodyThatLeavesWholeHangsWithoutADayForTheKnife() {
    body("A1", "2026-07-10", "c-ann", ",,whole");
    assertEquals("A1, beef, steer, left whole", rail().hanging().get(0).body());
    assertEquals("", rail().hanging().get(0).cutBy());
  }

  private void body(String id, String killed, String customer, String more) {
    shop.add("bodies.csv", String.join(",", id, "beef,steer", killed, customer, more));
  }

  /** A body that gives 156 of 200 kg so many days after its kill. */
  private void cut(String id, String killed, int days) {
    body(id, killed, "c-ann", ",");
    shop.hung(id, killed, "204", "200");
    shop.cut(id, LocalDate.parse(killed).plusDays(days).toString(), "156", "40");
  }

  private MorningView.Rail rail() {
    return sheet().rail();
  }

  private MorningView sheet() {
    return sheet("2026-07-15T02:00:00Z");
  }

  private MorningView sheet(String moment) {
    var night = shop.at(moment);
    var report =
        new MorningReport(
            night, List.of(), List.of(), List.of(), List.of(), LikelyCauses.NONE, false);
    return MorningComposer.compose(report, SmallShop.wording(night));
  }
}
