package gambrel.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;

/** Veal bought in as rumps and striploins: weighed on the block, with all that came of them. */
final class BoughtIn {
  static final String BODY = "V0901";
  private static final LocalDate CUT = LocalDate.parse("2026-09-04");

  private final Floor floor;
  private final Dice dice = new Dice("bought in");

  BoughtIn(Floor floor) {
    this.floor = floor;
  }

  void cut() {
    piece("202", 2_460, "308", "360", "362");
    piece("202", 2_380, "308", "360", "362");
    piece("203", 3_120, "309", "361", "363");
    piece("203", 3_020, "309", "361", "363");
  }

  private void piece(String block, long grams, String steak, String trim, String fat) {
    floor.bench1.weigh(at(), block, grams).body(BODY);
    long steaks = grams * dice.around(625, 655) / 1000;
    for (long pack : Packs.of(steaks, 420, 640, dice)) {
      floor.bench1.weigh(at(), steak, pack).body(BODY).pieces(2);
    }
    long dry = grams * dice.around(4, 9) / 1000;
    long waste = grams * dice.around(70, 95) / 1000;
    floor.bench1.weigh(at(), trim, grams - steaks - waste - dry).body(BODY);
    floor.bench1.weigh(at(), fat, waste).body(BODY);
  }

  private LocalDateTime at() {
    return floor.boning(CUT).after(dice.between(40, 90));
  }
}
