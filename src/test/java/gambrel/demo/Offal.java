package gambrel.demo;

import java.util.Map;

/** Offal, packed on the day of the kill where the owner wants it. */
final class Offal {
  /** Code, least and most grams a head. */
  private static final Map<String, int[][]> WANTED =
      Map.of(
          "beef",
              new int[][] {
                {101, 4800, 6600},
                {102, 1500, 2100},
                {103, 900, 1200},
                {104, 1100, 1500},
                {105, 900, 1300},
                {106, 700, 1000}
              },
          "lamb", new int[][] {{101, 480, 680}, {102, 140, 200}, {103, 110, 150}},
          "goat", new int[][] {{101, 380, 520}},
          "pork", new int[][] {{101, 1100, 1500}, {102, 260, 360}, {103, 240, 330}},
          "game", new int[][] {});

  private final Floor floor;

  Offal(Floor floor) {
    this.floor = floor;
  }

  void pack(Beast beast) {
    var dice = new Dice("offal" + beast.id());
    for (int[] kind : WANTED.get(beast.species())) {
      if (dice.between(1, 100) <= 55) {
        pack(
            beast,
            dice,
            Integer.toString(kind[0]),
            (long) beast.head() * dice.around(kind[1], kind[2]));
      }
    }
  }

  private void pack(Beast beast, Dice dice, String code, long grams) {
    var shift = floor.offal(beast.killed());
    for (long pack : Packs.of(grams, 900, 1_700, dice)) {
      floor.bench1.weigh(shift.after(dice.between(40, 90)), code, pack).body(beast.id()).pieces(1);
    }
  }
}
