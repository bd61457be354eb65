package gambrel.trade.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.FiguresTest;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What came of a body. */
class OutputsTest extends FiguresTest {

  private Outputs outputs() {
    return balance().outputs().orElseThrow();
  }

  private void everything() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase   300
        03T10:00 B1 cold carcase   294
        05T10:00 B1 pack rump      120
        05T10:01 B1 pack dog-bones  10
        05T10:02 B1 pack liver       6
        05T10:03 B1 tub  trim       50 batch=M1
        05T10:04 B1 tub  trim        7
        05T10:05 B1 bin  bone       60
        05T10:06 B1 bin  fat        30
        05T10:07 B1 bin  waste       4
        05T12:00 -  pack mince      49 batch=M1
        """);
  }

  @Test
  void packsAndTheMeatOfBatchesGoHomeAndOffalDoesNot() {
    everything();
    assertEquals(kg("179"), outputs().takeHome());
    assertEquals(known("169"), outputs().meatHome());
    assertEquals(kg("6"), outputs().offal());
  }

  @Test
  void binsAreBoneFatAndWaste() {
    everything();
    assertEquals(known("60"), outputs().bone());
    assertEquals(known("30"), outputs().fat());
    assertEquals(known("4"), outputs().waste());
  }

  @Test
  void theCuttingLossSubtractsPacksTubsWithABatchAndBins() {
    everything();
    assertEquals(kg("50"), outputs().tub());
    // 294 - 120 - 10 - 50 - 60 - 30 - 4
    assertEquals(known("20"), outputs().cuttingLoss());
    assertEquals(Optional.empty(), outputs().unweighed());
    assertEquals(known("1"), outputs().batchLoss());
  }

  @Test
  void theSplitAndTheLossMakeTheBoningRoomWeight() {
    everything();
    assertEquals(
        Optional.of(
            new BodyBalance.BoningSplit(kg("179"), kg("0"), kg("60"), kg("30"), kg("4"), kg("1"))),
        balance().boningSplit());
  }

  @Test
  void meatInAnOpenBatchIsPending() {
    scene.simpleBody().weigh("05T11:00 B1 tub trim 8 batch=M1");
    assertEquals(kg("200"), outputs().takeHome());
    assertEquals(Optional.empty(), outputs().batchLoss());
    var split = balance().boningSplit().orElseThrow();
    assertEquals(kg("8"), split.pending());
    assertEquals(kg("0"), split.batchLoss());
  }

  @Test
  void theUncertaintyCountsEveryWeighingOfTheLoss() {
    everything();
    // 4/12 d^2 for each of one cold weighing, two packs, one tub and three bins, d = 0.01
    assertEquals(Optional.of(BigFraction.of(7, 30_000)), outputs().resolutionSquared());
    assertEquals(Optional.empty(), outputs().permittedSquared());
    assertEquals(BigFraction.of(7, 30_000), outputs().uncertaintySquared());
  }

  @Test
  void permittedErrorsOfOneScaleCancelAndOfTwoAddAsSquares() {
    scene.file("scales.csv", "scale,division,class", "rail,0.5,III", "bench,0.02,III");
    scene.weigh(
        """
        03T10:00 B1 cold carcase 294
        05T10:00 B1 pack rump    200
        05T10:01 B1 pack mince     5
        """);
    // rail: 588 divisions, within 2 of 0.5; bench: 10,000 divisions, 3 of 0.02, and 250, 1 of 0.02
    assertEquals(Optional.of(BigFraction.of(10_064, 10_000)), outputs().permittedSquared());
    // 4/12 (0.25 + 0.0004 + 0.0004) beside it
    assertEquals(
        BigFraction.of(10_064, 10_000).add(BigFraction.of(2508, 30_000)),
        outputs().uncertaintySquared());
  }

  @Test
  void aScaleWithoutAClassLeavesPermittedErrorsUnknown() {
    scene.file("scales.csv", "scale,division,class", "rail,0.5,III", "bench,0.02,");
    scene.simpleBody();
    assertEquals(Optional.empty(), outputs().permittedSquared());
  }

  @Test
  void withoutBinsTheRestIsUnweighedAndHasNoUncertainty() {
    scene.set("bins=no").simpleBody();
    assertEquals(known("94"), outputs().unweighed());
    assertEquals(Optional.empty(), outputs().cuttingLoss());
    assertEquals(Optional.empty(), outputs().bone());
    assertEquals(Optional.empty(), outputs().waste());
    assertEquals(Optional.empty(), outputs().resolutionSquared());
    var split = balance().boningSplit().orElseThrow();
    assertEquals(kg("0"), split.bone().plus(split.fat()).plus(split.waste()));
  }

  @Test
  void nothingIsKnownBeforeTheFirstPackOrBin() {
    scene.weigh(
        """
        03T10:00 B1 cold  carcase     294
        05T10:00 B1 block hindquarter 140
        05T10:01 B1 tub   trim          9 batch=M1
        """);
    assertEquals(Optional.empty(), balance().outputs());
  }

  @Test
  void aFinishedBatchIsAnEndProduct() {
    scene.weigh(
        """
        03T10:00 B1 cold carcase 294
        05T10:01 B1 tub  trim    290 batch=M1
        05T12:00 -  pack mince   290 batch=M1
        """);
    assertEquals(kg("290"), outputs().takeHome());
  }

  @Test
  void aWholeBodyGoesHomeAsItHung() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,whole");
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 294");
    assertEquals(kg("294"), outputs().takeHome());
    assertEquals(Optional.empty(), outputs().meatHome());
    assertEquals(Optional.empty(), outputs().cuttingLoss());
    assertEquals(Optional.empty(), balance().boningSplit());
  }

  @Test
  void nothingOfACondemnedBodyGoesHome() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,condemned");
    scene.weigh("03T10:00 B1 cold carcase 294");
    assertEquals(kg("0"), outputs().takeHome());
  }

  @Test
  void aCancelledBodyHasNoFigures() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,cancelled");
    scene.simpleBody();
    assertEquals(Optional.empty(), balance().outputs());
    assertEquals(Optional.empty(), balance().hot());
  }

  @Test
  void aBinAloneIsAnEndProduct() {
    scene.weigh("03T10:00 B1 cold carcase 294\n05T10:00 B1 bin bone 60");
    assertEquals(kg("0"), outputs().takeHome());
    assertEquals(known("234"), outputs().cuttingLoss());
  }

  @Test
  void aPackOfOffalIsNoEndProduct() {
    scene.weigh("03T10:00 B1 cold carcase 294\n05T10:00 B1 pack liver 6");
    assertEquals(Optional.empty(), balance().outputs());
  }

  @Test
  void whatIsNeitherBoneNorFatInABinIsWaste() {
    scene.weigh("03T10:00 B1 cold carcase 294\n05T10:00 B1 bin rump 2\n05T10:01 B1 bin waste 1");
    assertEquals(known("3"), outputs().waste());
    assertEquals(known("0"), outputs().bone());
    assertEquals(known("0"), outputs().fat());
  }

  @Test
  void aPackOfBoneIsTakeHomeAndNoMeatAndNoBin() {
    scene.weigh("03T10:00 B1 cold carcase 294\n05T10:00 B1 pack bone 20\n05T10:01 B1 pack trim 5");
    assertEquals(kg("25"), outputs().takeHome());
    assertEquals(known("5"), outputs().meatHome());
    assertEquals(known("0"), outputs().bone());
  }

  @Test
  void withoutTubsBatchesLostNothing() {
    scene.simpleBody();
    assertEquals(known("0"), outputs().batchLoss());
    assertEquals(kg("0"), outputs().tub());
  }

  @Test
  void oneOpenBatchLeavesTheLossOfAllUnknown() {
    scene.simpleBody();
    scene.weigh(
        """
        05T10:40 B1 tub  trim  8 batch=M1
        05T10:41 -  pack mince 7 batch=M1
        05T10:42 B1 tub  trim  4 batch=M2
        """);
    assertEquals(Optional.empty(), outputs().batchLoss());
    assertEquals(kg("207"), outputs().takeHome());
    assertEquals(known("207"), outputs().meatHome());
    var split = balance().boningSplit().orElseThrow();
    assertEquals(kg("4"), split.pending());
    assertEquals(kg("1"), split.batchLoss());
    assertEquals(kg("207"), split.home());
  }

  @Test
  void withoutAWeightIntoTheBoningRoomThereIsNoLoss() {
    scene.weigh("05T10:00 B1 pack rump 120");
    assertEquals(kg("120"), outputs().takeHome());
    assertEquals(Optional.empty(), outputs().cuttingLoss());
    assertEquals(Optional.empty(), outputs().resolutionSquared());
    assertEquals(Optional.empty(), outputs().permittedSquared());
    assertEquals(BigFraction.ZERO, outputs().uncertaintySquared());
  }

  @Test
  void binsWeighedInPartShowALoss() {
    scene.set("bins=partly").simpleBody();
    assertEquals(known("0"), outputs().cuttingLoss());
    assertEquals(known("60"), outputs().bone());
    assertEquals(Optional.empty(), outputs().unweighed());
  }

  @Test
  void withoutBinsTheUnweighedRestCountsTubs() {
    scene.set("bins=no").simpleBody().weigh("05T10:40 B1 tub trim 8 batch=M1");
    // 294 - 120 - 80 - 8
    assertEquals(known("86"), outputs().unweighed());
    assertEquals(Optional.empty(), outputs().fat());
  }

  @Test
  void railTrimIsInTheSumsAndNotInTheLoss() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T11:00 B1 pack rump      2
        02T11:01 B1 bin  bone      1
        03T10:00 B1 cold carcase 290
        05T10:00 B1 pack rump    200
        05T10:01 B1 bin  bone     80
        """);
    assertEquals(kg("202"), outputs().takeHome());
    assertEquals(known("81"), outputs().bone());
    assertEquals(kg("3"), outputs().railTrim());
    assertEquals(known("10"), outputs().cuttingLoss());
    var split = balance().boningSplit().orElseThrow();
    assertEquals(kg("200"), split.home());
    assertEquals(kg("80"), split.bone());
  }

  /** Loads of 500 and 501 divisions of class III may be 1 and 2 off, of 2000 and 2001 2 and 3. */
  @ParameterizedTest
  @CsvSource({"50,1", "50.1,2", "200,2", "200.1,3"})
  void permittedErrorsStepUpBeyondTheLimitOfTheLoad(String cold, int divisions) {
    scene.file("scales.csv", "scale,division,class", "rail,0.1,III", "bench,0.1,III");
    scene.weigh("03T10:00 B1 cold carcase " + cold + "\n05T10:00 B1 pack rump 1");
    // the pack may be 1 division of the bench off
    var error = BigFraction.of(divisions, 10);
    assertEquals(
        Optional.of(error.multiply(error).add(BigFraction.of(1, 100))),
        outputs().permittedSquared());
  }

  @Test
  void aLoadShownInAnotherUnitIsCountedInTheScalesOwn() {
    // 1100 lb are 498.95 kg: 499 divisions of class III, 1 off; 1110 lb are 503.5 kg, 2 off
    scene.file("scales.csv", "scale,division,class", "rail,1,III", "bench,0.1,III");
    scene.weigh("03T10:00 B1 cold carcase 1100 unit=lb\n05T10:00 B1 pack rump 1");
    assertEquals(Optional.of(BigFraction.of(101, 100)), outputs().permittedSquared());
    scene.correct("rail", "1", "net", "1110", "06");
    assertEquals(Optional.of(BigFraction.of(401, 100)), outputs().permittedSquared());
  }

  @Test
  void theDivisionsOfAScaleInPoundsAreConverted() {
    // division 1 lb = 0.45359237 kg on the rail, 0.3 kg on the bench: U² = (d² + 0.09) / 3
    scene.file("scales.csv", "scale,division,class,unit", "rail,1,,lb", "bench,0.3,,kg");
    scene.weigh("03T10:00 B1 cold carcase 294 unit=kg\n05T10:00 B1 pack rump 1 unit=kg");
    var pound = BigFraction.of(45_359_237, 100_000_000);
    assertEquals(
        Optional.of(pound.multiply(pound).add(BigFraction.of(9, 100)).divide(3)),
        outputs().resolutionSquared());
  }
}
