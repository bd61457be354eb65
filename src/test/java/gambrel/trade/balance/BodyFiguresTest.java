package gambrel.trade.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.FiguresTest;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Shares and times of a body. */
class BodyFiguresTest extends FiguresTest {

  @Test
  void everyShareKeepsItsPartAndItsWhole() {
    scene.simpleBody();
    var shares = balance().shares();
    assertEquals(share("300", "560"), shares.dressing());
    assertEquals(share("6", "300"), shares.chillShrink());
    assertEquals(Optional.empty(), shares.ageingShrink());
    assertEquals(share("0", "294"), shares.cuttingLoss());
    assertEquals(Optional.empty(), shares.unweighed());
    assertEquals(Optional.empty(), shares.batchLoss());
    assertEquals(share("200", "300"), shares.takeHomeOfHot());
    assertEquals(share("200", "294"), shares.takeHomeOfCold());
    assertEquals(share("200", "294"), shares.takeHomeOfBoning());
    assertEquals(share("200", "294"), shares.meatOfCold());
    assertEquals(share("34", "294"), shares.fatOfBoning());
  }

  @Test
  void sharesOfTheBoningRoomWeightAreOfTheAgedWeight() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 294
        09T10:00 B1 aged carcase 280
        09T11:00 B1 pack rump    200
        09T11:10 B1 bin  bone     70
        """);
    var shares = balance().shares();
    assertEquals(share("14", "294"), shares.ageingShrink());
    assertEquals(share("200", "294"), shares.takeHomeOfCold());
    assertEquals(share("200", "280"), shares.takeHomeOfBoning());
    assertEquals(share("10", "280"), shares.cuttingLoss());
    assertEquals(known("280"), balance().rail().aged().weight());
    assertEquals(known("280"), balance().boning());
  }

  @Test
  void hotAndColdOfDifferentPartsHaveNoChillShrink() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold side    147
        05T10:00 B1 pack rump    140
        """);
    assertEquals(Optional.empty(), balance().shares().chillShrink());
    assertEquals(share("140", "147"), balance().shares().takeHomeOfCold());
  }

  @Test
  void whatBatchesLostIsOfTheTubsThatWentIn() {
    scene.weigh(
        """
        05T10:00 B1 tub  trim 100 batch=M1
        05T12:00 -  pack mince 98 batch=M1
        """);
    assertEquals(share("2", "100"), balance().shares().batchLoss());
  }

  @Test
  void withoutBinsWhatIsMissingIsUnweighed() {
    scene.set("bins=no").simpleBody();
    var shares = balance().shares();
    assertEquals(share("94", "294"), shares.unweighed());
    assertEquals(Optional.empty(), shares.cuttingLoss());
    assertEquals(Optional.empty(), shares.fatOfBoning());
  }

  @Test
  void timesRunFromSlaughterToTheLastCut() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T16:30 B1 cold carcase 294
        09T10:00 B1 aged carcase 280
        10T11:00 B1 block hindquarter 140
        11T09:15 B1 pack rump    200
        12T08:00 B1 pack liver     6
        """);
    var times = balance().times();
    assertEquals(Optional.of(LocalDate.of(2026, 3, 10)), times.firstCut());
    assertEquals(Optional.of(OffsetDateTime.parse("2026-03-11T09:15:00Z")), times.lastCut());
    assertEquals(Optional.of(LocalDate.of(2026, 3, 3)), times.lastCold());
    assertEquals(Optional.of(LocalDate.of(2026, 3, 9)), times.lastAged());
    assertEquals(Optional.of(8), times.daysHung());
    assertEquals(Optional.of(BigFraction.of(61, 2)), times.hoursChilled());
  }

  @Test
  void withoutWeighingsNothingIsKnown() {
    var times = balance().times();
    assertEquals(
        new BodyBalance.Times(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        times);
    assertEquals(Optional.empty(), balance().outputs());
    assertEquals(Optional.empty(), balance().boningSplit());
    assertEquals(known("560"), balance().body().liveWeight());
    assertEquals(Optional.empty(), balance().boning());
  }

  @Test
  void aBalanceReadsTheFiguresOfItsBody() {
    scene.simpleBody();
    var balance = balance();
    assertEquals(known("300"), balance.hot());
    assertEquals(known("294"), balance.cold());
    assertEquals(known("294"), balance.boning());
    assertEquals(known("0"), balance.outputs().orElseThrow().cuttingLoss());
    assertEquals(share("6", "300"), balance.shares().chillShrink());
    assertEquals("2026-03-05T10:30Z", balance.lastCut().orElseThrow().toString());
    assertEquals(Optional.of(3), balance.daysHung());
    assertEquals(Optional.of(BigFraction.of(24)), balance.hoursChilled());
  }

  @Test
  void aBodysOwnWeighingsMoveMassAndAreNoPacksOfABatch() {
    scene.simpleBody();
    scene.weigh(
        """
        05T11:00 B1 other rump  5
        05T11:01 B1 pack  mince 4 batch=M1
        05T11:02 B1 pack  liver 6
        """);
    var weighings = balance().weighings();
    assertEquals(7, weighings.all().size());
    assertEquals(2, weighings.rail().size());
    assertEquals(5, weighings.out().size());
    assertEquals(4, weighings.cuts().size());
  }

  @Test
  void cutsPackedWithVertebraeAreNamedOnceInTheTreesOrder() {
    scene.weigh(
        """
        05T10:00 B1 pack  neck             10
        05T10:01 B1 pack  rump             10
        05T10:02 B1 pack  chuck-square-cut 10
        05T10:03 B1 pack  neck             10
        05T10:04 B1 block rib-set          10
        """);
    assertEquals(List.of("chuck-square-cut", "neck"), balance().weighings().packedWithVertebra());
  }
}
