package gambrel.trade.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.FiguresTest;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Pieces weighed on the block and what came of them. */
class PieceBalanceTest extends FiguresTest {

  @Test
  void aPieceIsHeldAgainstAllThatLiesUnderIt() {
    scene.weigh(
        """
        03T10:00 B1 cold  carcase     294
        05T09:00 B1 block hindquarter  60
        05T09:01 B1 block hindquarter  61
        05T10:00 B1 pack  rump         70
        05T10:01 B1 pack  topside      50
        """);
    var piece = balance().pieces().get(0);
    assertEquals("hindquarter", piece.item());
    assertEquals(kg("121"), piece.block());
    assertEquals(known("120"), piece.out());
    assertEquals(known("1"), piece.loss());
    assertEquals(BigFraction.of(4, 30_000), piece.resolutionSquared());
    assertEquals(2, piece.weighings().size());
  }

  @Test
  void whereEndProductsLieOutsideItsLossIsNotKnown() {
    scene.weigh(
        """
        03T10:00 B1 cold  carcase     294
        05T09:00 B1 block hindquarter 121
        05T10:00 B1 pack  rump         70
        05T10:01 B1 pack  chuck        50
        """);
    assertEquals(Optional.empty(), balance().pieces().get(0).loss());
  }

  @Test
  void piecesStandInTreeOrder() {
    scene.weigh(
        """
        05T09:00 B1 block forequarter 120
        05T09:01 B1 block butt         60
        05T09:02 B1 block hindquarter 121
        """);
    assertEquals(
        List.of("hindquarter", "butt", "forequarter"),
        balance().pieces().stream().map(PieceBalance::item).toList());
  }

  @Test
  void aPieceOfWhichNothingCameYetLostAllOfIt() {
    scene.weigh("03T10:00 B1 cold carcase 294\n05T09:00 B1 block hindquarter 121");
    assertEquals(known("0"), balance().pieces().get(0).out());
    assertEquals(known("121"), balance().pieces().get(0).loss());
  }

  @Test
  void tubsWithABatchAndBinsComeOfAPieceAndOffalDoesNot() {
    scene.weigh(
        """
        03T10:00 B1 cold  carcase     294
        05T09:00 B1 block hindquarter 121
        05T10:00 B1 pack  rump         70
        05T10:01 B1 tub   topside      20 batch=M1
        05T10:02 B1 tub   topside       9
        05T10:03 B1 bin   topside       5
        05T10:04 B1 pack  liver         6
        """);
    assertEquals(known("95"), balance().pieces().get(0).out());
    assertEquals(known("26"), balance().pieces().get(0).loss());
  }

  @Test
  void railTrimDoesNotComeOfAPiece() {
    scene.weigh(
        """
        02T10:00 B1 hot   carcase     300
        02T11:00 B1 bin   chuck         4
        03T10:00 B1 cold  carcase     290
        05T09:00 B1 block hindquarter 121
        05T10:00 B1 pack  rump        120
        """);
    assertEquals(known("1"), balance().pieces().get(0).loss());
  }

  @Test
  void eachPieceHasItsOwnProducts() {
    scene.weigh(
        """
        03T10:00 B1 cold  carcase     294
        05T09:00 B1 block hindquarter 121
        05T09:01 B1 block forequarter 100
        05T10:00 B1 pack  rump        120
        05T10:01 B1 pack  chuck        98
        """);
    assertEquals(
        List.of(known("1"), known("2")),
        balance().pieces().stream().map(PieceBalance::loss).toList());
  }
}
