package gambrel.trade.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.FiguresTest;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is trimmed off a body while it hangs. */
class RailTrimTest extends FiguresTest {

  private static List<String> items(List<Weighing> weighings) {
    return weighings.stream().map(Weighing::item).toList();
  }

  @Test
  void trimBetweenHotAndColdIsTakenOutOfTheChillShrink() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T11:00 B1 bin  fat       4
        03T10:00 B1 cold carcase 290
        05T10:00 B1 pack rump    290
        """);
    assertEquals(List.of("fat"), items(balance().trim().beforeCold()));
    assertEquals(List.of(), balance().trim().afterCold());
    assertEquals(kg("4"), balance().trim().weightBeforeCold());
    assertEquals(share("6", "300"), balance().shares().chillShrink());
    assertEquals(kg("4"), balance().outputs().orElseThrow().railTrim());
    assertEquals(known("4"), balance().outputs().orElseThrow().fat());
    assertEquals(known("0"), balance().outputs().orElseThrow().cuttingLoss());
  }

  @Test
  void trimBetweenColdAndAgedIsTakenOutOfTheAgeingShrink() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 290
        05T10:00 B1 bin  waste     3
        09T10:00 B1 aged carcase 280
        09T10:30 B1 pack rump    280
        """);
    assertEquals(List.of("waste"), items(balance().trim().afterCold()));
    assertEquals(kg("3"), balance().trim().weightAfterCold());
    assertEquals(share("7", "290"), balance().shares().ageingShrink());
    assertEquals(share("10", "300"), balance().shares().chillShrink());
  }

  @Test
  void whatIsCutOnTheDayOfTheWeighingThatEndsTheStepIsNoTrim() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T08:00 B1 bin  fat       4
        03T10:00 B1 cold carcase 290
        """);
    assertEquals(List.of(), balance().trim().all());
    assertEquals(1, balance().cuts().size());
  }

  @Test
  void whatIsCutBeforeTheFirstHotWeighingIsNoTrim() {
    scene.weigh(
        """
        02T09:00 B1 bin  fat       4
        02T10:00 B1 hot  carcase 300
        03T10:00 B1 cold carcase 290
        """);
    assertEquals(List.of(), balance().trim().all());
  }

  @Test
  void offalAndPiecesOnTheBlockAreNoTrim() {
    scene.weigh(
        """
        02T10:00 B1 hot   carcase     300
        02T11:00 B1 pack  liver         6
        02T12:00 B1 block hindquarter  70
        03T10:00 B1 cold  carcase     290
        """);
    assertEquals(List.of(), balance().trim().all());
    assertEquals(List.of("hindquarter"), items(balance().cuts()));
  }

  @Test
  void aTubIsTrimOnlyIfItGoesIntoABatch() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T11:00 B1 tub  trim      5
        02T12:00 B1 tub  trim      2 batch=M1
        03T10:00 B1 cold carcase 290
        """);
    assertEquals(kg("2"), balance().trim().weightBeforeCold());
    assertEquals(1, balance().trim().tubs().size());
    assertEquals(List.of(), balance().cuts());
  }

  @Test
  void withoutHotWeightsTrimCountsFromTheFirstColdOne() {
    scene.set("rail=cold");
    scene.weigh(
        """
        02T09:00 B1 bin  fat       1
        03T10:00 B1 cold carcase 290
        04T10:00 B1 bin  waste     3
        09T10:00 B1 aged carcase 280
        """);
    assertEquals(List.of("waste"), items(balance().trim().all()));
  }

  @Test
  void whatIsCutAtTheMinuteOfTheFirstHotWeighingIsNoTrim() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T10:00 B1 bin  fat       4
        03T10:00 B1 cold carcase 290
        """);
    assertEquals(List.of(), balance().trim().all());
    scene.weigh("02T10:01 B1 bin waste 1");
    assertEquals(List.of("waste"), items(balance().trim().all()));
  }

  @Test
  void withoutRailWeightsNothingIsTrim() {
    scene.weigh("02T11:00 B1 bin fat 4\n05T10:00 B1 pack rump 10");
    assertEquals(List.of(), balance().trim().all());
    assertEquals(2, balance().cuts().size());
  }

  @Test
  void onTheDayOfTheColdWeighingTrimBelongsToTheAgeing() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        03T08:00 B1 bin  fat       4
        03T10:00 B1 cold carcase 290
        09T10:00 B1 aged carcase 280
        """);
    assertEquals(List.of(), balance().trim().beforeCold());
    assertEquals(List.of("fat"), items(balance().trim().afterCold()));
    assertEquals(share("6", "290"), balance().shares().ageingShrink());
  }

  @Test
  void trimIsListedBeforeColdAndThenAfterIt() {
    scene.weigh(
        """
        02T10:00 B1 hot  carcase 300
        02T11:00 B1 bin  fat       4
        03T10:00 B1 cold carcase 290
        05T10:00 B1 tub  trim      2
        05T11:00 B1 bin  waste     3
        09T10:00 B1 aged carcase 280
        09T11:00 B1 pack rump    200
        """);
    assertEquals(List.of("fat", "waste"), items(balance().trim().all()));
    assertEquals(List.of("trim"), items(balance().trim().tubs()));
    assertEquals(List.of("rump"), items(balance().cuts()));
    assertEquals(List.of("rump"), items(balance().outOfBoning()));
    assertEquals(kg("7"), balance().outputs().orElseThrow().railTrim());
  }

  @Test
  void whereOnlySomePartsAgeTheAgedWeighingEndsTheTrim() {
    scene.weigh(
        """
        03T10:00 B1 cold forequarter 140 pieces=2
        03T10:01 B1 cold hindquarter 150 pieces=2
        05T10:00 B1 pack rump          3
        09T10:00 B1 aged hindquarter 140 pieces=2
        """);
    assertEquals(List.of("rump"), items(balance().trim().afterCold()));
    assertEquals(share("7", "150"), balance().shares().ageingShrink());
  }

  @Test
  void aPieceOnTheBlockIsNoTrimHoweverEarly() {
    scene.weigh(
        """
        02T10:00 B1 hot   carcase     300
        02T15:00 B1 block hindquarter 140
        03T10:00 B1 cold  carcase     294
        """);
    assertEquals(List.of(), balance().trim().all());
    assertEquals(List.of("hindquarter"), items(balance().cuts()));
  }

  @Test
  void whereSomePartsWereAgedOnlyWhatIsCutFromThemIsTrim() {
    scene.weigh(
        """
        03T10:00 B1 cold forequarter      140 pieces=2
        03T10:01 B1 cold hindquarter      150 pieces=2
        05T10:00 B1 pack chuck-square-cut  20
        05T10:01 B1 pack rump              10
        09T10:00 B1 aged hindquarter      138 pieces=2
        """);
    assertEquals(List.of("rump"), items(balance().trim().afterCold()));
    assertEquals(List.of("chuck-square-cut"), items(balance().cuts()));
  }

  @Test
  void whereAllPartsWereAgedAllThatIsCutBeforeIsTrim() {
    scene.weigh(
        """
        03T10:00 B1 cold left-side  147
        03T10:01 B1 cold right-side 145
        05T10:00 B1 bin  waste        3
        09T10:00 B1 aged left-side  141
        09T10:01 B1 aged right-side 140
        """);
    assertEquals(List.of("waste"), items(balance().trim().afterCold()));
  }
}
