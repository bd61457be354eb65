package gambrel.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** What goes wrong in any shop: slips at the scales, some put right there, some not. */
final class Mishaps {
  private final Floor floor;

  /** Rows that a correction or the bench list settles, by the trait of their body. */
  final Map<String, List<Row>> remembered = new HashMap<>();

  Mishaps(Floor floor) {
    this.floor = floor;
  }

  void happen(List<Beast> beasts) {
    Map<String, Consumer<Beast>> slips =
        Map.of(
            "voidhot", this::hookWeighedToo,
            "voidbin", this::binKeyedTwice,
            "oldtare", this::packWeighedWithTray,
            "rawconflict", this::counterStuck,
            "conflict", this::counterStuck,
            "wrongbody", this::bodyBefore,
            "badnumber", beast -> garble(beast, "O"),
            "badkey", beast -> garble(beast, ".."),
            "losttag", this::tagLost);
    Map<String, Consumer<Beast>> others =
        Map.of(
            "badcode", this::unknownCode,
            "twice", this::tubKeyedTwice,
            "unlisted", this::digitsSwapped,
            "friend", this::packsForFriend);
    for (var beast : beasts) {
      slips.forEach((trait, slip) -> apply(beast, trait, slip));
      others.forEach((trait, slip) -> apply(beast, trait, slip));
    }
    floor.bench1.overlap(LocalDate.parse("2026-07-23"), 9);
    floor.bench1.overlap(LocalDate.parse("2026-08-20"), 12);
    floor.bench2.overlap(LocalDate.parse("2026-08-27"), 6);
    floor.rail.overlap(LocalDate.parse("2026-09-08"), 4);
  }

  private static void apply(Beast beast, String trait, Consumer<Beast> slip) {
    if (beast.is(trait)) {
      slip.accept(beast);
    }
  }

  /** Packs on the day of cutting, in order, without offal. */
  private List<Row> packs(Beast beast) {
    var day = beast.cut().get(0);
    return floor.bench1.of(beast.id()).stream()
        .filter(r -> r.time.toLocalDate().equals(day))
        .toList();
  }

  private Row bin(Beast beast, String code) {
    return floor.bench2.of(beast.id()).stream()
        .filter(r -> r.code.equals(code))
        .findFirst()
        .orElseThrow();
  }

  private void hookWeighedToo(Beast beast) {
    var right = floor.rail.of(beast.keyed()).get(0);
    var wrong = right.copy(-28);
    wrong.net = floor.rail.shown(grams(right.net) + 8_400);
    voided(floor.rail, wrong, 14);
  }

  private void binKeyedTwice(Beast beast) {
    voided(floor.bench2, bin(beast, "802").copy(9), 11);
  }

  private static void voided(ScaleBook scale, Row wrong, int secondsLater) {
    scale.add(wrong);
    var cancel = wrong.copy(secondsLater);
    cancel.cancels = wrong;
    scale.add(cancel);
  }

  private void packWeighedWithTray(Beast beast) {
    var right = packs(beast).get(5);
    var wrong = right.copy(-24);
    wrong.net = floor.bench1.shown(grams(right.net) + 185);
    floor.bench1.add(wrong);
    var cancel = wrong.copy(12);
    cancel.sharesTicketOf = wrong;
    cancel.status = "void";
    floor.bench1.add(cancel);
  }

  private void counterStuck(Beast beast) {
    var right = packs(beast).get(11);
    var wrong = right.copy(7);
    wrong.net = floor.bench1.shown(grams(right.net) + 640);
    wrong.sharesTicketOf = right;
    floor.bench1.add(wrong);
    remembered.put("conflict" + beast.id(), List.of(right, wrong));
  }

  private void bodyBefore(Beast beast) {
    var first = packs(beast).subList(0, 4);
    first.forEach(row -> row.body = "B0701");
    remembered.put("wrongbody", first);
  }

  private void garble(Beast beast, String instead) {
    var row = packs(beast).get(3);
    remembered.put("right" + beast.id(), List.of(row.copy(0), row));
    row.net = row.net.replaceFirst(instead.equals("O") ? "0(?=[^.]*$)" : "\\.", instead);
  }

  private void tagLost(Beast beast) {
    var rows = packs(beast);
    var heavy = floor.bench2.of(beast.id());
    rows.forEach(row -> row.body = "");
    heavy.forEach(row -> row.body = "");
    remembered.put("bench1", rows);
    remembered.put("bench2", heavy);
  }

  private void unknownCode(Beast beast) {
    packs(beast).stream().filter(r -> r.code.equals("321")).limit(3).forEach(r -> r.code = "371");
  }

  private void tubKeyedTwice(Beast beast) {
    floor.bench2.add(bin(beast, "802").copy(13));
  }

  private void digitsSwapped(Beast beast) {
    packs(beast).subList(20, 23).forEach(row -> row.body = "B0772");
  }

  private void packsForFriend(Beast beast) {
    packs(beast).stream()
        .filter(r -> r.code.equals("308") || r.code.equals("327"))
        .limit(4)
        .forEach(r -> r.customer("sutter"));
  }

  private static long grams(String kilograms) {
    return new BigDecimal(kilograms).movePointRight(3).longValueExact();
  }
}
