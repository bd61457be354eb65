package gambrel.night;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * A year of a small shop, made from a seed, day by day: export files that are late or repeated,
 * weighings with a wrong key, and the corrections and releases that follow.
 */
final class YearShop {
  /** The first day. */
  static final LocalDate START = LocalDate.of(2026, 1, 5);

  /** A moment after the last line has been added. */
  static final LocalDate END = START.plusDays(400);

  private static final String HEADER =
      "scale,ticket,time,body,code,net,pieces,batch,customer,status";
  private static final List<String> OWNERS = List.of("ann", "bob", "cyd", "dan", "eve");
  private static final int KILL_DAYS = 340;

  private final SplittableRandom dice;
  private final Map<String, List<String>> exports = new LinkedHashMap<>();
  private final Map<String, LocalDate> arrivals = new LinkedHashMap<>();
  private final List<Entry> entries = new ArrayList<>();
  private int ticket;

  /** A line that is added to a file of the shop folder on a day. */
  private record Entry(LocalDate day, String file, String line) {}

  YearShop(long seed, int bodies) {
    dice = new SplittableRandom(seed);
    for (int i = 0; i < bodies; i++) {
      body(i, "B" + (100 + i), START.plusDays(dice.nextInt(KILL_DAYS)));
    }
  }

  /** The shop folder with all lines added before a day. */
  NightShop before(LocalDate night, Path folder) {
    var shop = new NightShop(folder);
    shop.add("shop.properties", "limit.revisions=1000");
    OWNERS.stream().skip(2).forEach(owner -> shop.add("customers.csv", owner + ",Farmer " + owner));
    shop.add("scales.csv", "other,0.005").add("shares.csv", "body,customer,share");
    shop.add("corrections.csv", "scale,ticket,date,field,value,by,on,reason");
    shop.add("releases.csv", "body,by,on,reason,action");
    entries.stream()
        .filter(entry -> entry.day().isBefore(night))
        .forEach(entry -> shop.add(entry.file(), entry.line()));
    exports.forEach(
        (file, lines) -> {
          if (arrivals.get(file).isBefore(night)) {
            shop.add(file, HEADER).add(file, lines.toArray(new String[0]));
          }
        });
    return shop;
  }

  private boolean chance(int percent) {
    return dice.nextInt(100) < percent;
  }

  private LocalDate soon(LocalDate day, int most) {
    return day.plusDays(1 + dice.nextInt(most));
  }

  private void body(int number, String id, LocalDate killed) {
    var known = chance(15) ? soon(killed, 6) : killed;
    entry(known, "bodies.csv", id, "beef", killed, owner(id, killed));
    int hot = 280_000 + 200 * dice.nextInt(200);
    int cold = hot * 98 / 100 / 200 * 200;
    weigh("rail", killed, id, "hot", hot);
    weigh("rail", killed.plusDays(1), id, "cold", cold);
    var cut = killed.plusDays(3 + dice.nextInt(14));
    var next = chance(25) ? cut.plusDays(1) : cut;
    int rest = cold * 985 / 1000 / 5 * 5;
    int rump = weigh("bench", cut, id, "rump", slip(number, cut, rest * 2 / 5 / 5 * 5));
    weigh("bench", next, id, "mince", rest * 3 / 10 / 5 * 5);
    weigh("bench", next, id, "fat", rest / 10 / 5 * 5);
    weigh("other", next, id, "rump", 1_005);
    if (number % 9 != 7) {
      weigh("bench", next, id, "bone", rest / 5 / 5 * 5);
    } else {
      var on = cut.plusDays(7);
      entry(on, "releases.csv", id, "Hetty", on + "T09:00", "spilt", "release");
    }
    trouble(number, id, cut, rump);
  }

  private String owner(String id, LocalDate killed) {
    String owner = OWNERS.get(dice.nextInt(OWNERS.size()));
    if (chance(25)) {
      var other = OWNERS.get((OWNERS.indexOf(owner) + 1) % OWNERS.size());
      entry(killed, "shares.csv", id, owner, "1/3");
      entry(killed, "shares.csv", id, other, "2/3");
      return "";
    }
    return owner;
  }

  /** A wrong key that is noticed days later. */
  private int slip(int number, LocalDate cut, int grams) {
    if (number % 5 != 2) {
      return grams;
    }
    var found = soon(cut, 20);
    correct(found, "bench", "" + (ticket + 1), "net", kilos(grams));
    return grams + 500;
  }

  private void trouble(int number, String id, LocalDate cut, int rump) {
    if (number % 7 == 3) {
      weigh("other", cut, id, "trim", 5_000, "", "M" + id);
      weigh("other", cut.plusDays(1), "", "mince", 4_900, "", "M" + id);
    }
    if (number % 11 == 4) {
      weigh("other", cut, id, "nothing", 500);
    }
    if (number % 6 == 1) {
      // The ticket is exported again with another weight, long after the statement was issued.
      var again = cut.plusDays(12);
      var file = "exports/again/" + id + ".csv";
      export(file, again, "bench," + rump + ',' + cut + "T11:00:00," + id + ",rump,9,,,,");
      correct(soon(again, 10), "bench", file + ":2", "status", "void");
    }
  }

  private void correct(LocalDate on, String scale, String ticket, String field, String value) {
    entry(on, "corrections.csv", scale, ticket, "", field, value, "Hetty", on + "T09:00", "a slip");
  }

  private void entry(LocalDate day, String file, Object... cells) {
    var line = new ArrayList<String>();
    for (var cell : cells) {
      line.add(cell.toString());
    }
    entries.add(new Entry(day, file, String.join(",", line)));
  }

  private int weigh(
      String scale, LocalDate day, String body, String code, int grams, String... rest) {
    int number = ++ticket;
    var time = day + "T" + (10 + number % 7) + ":" + (10 + number % 50) + ":00";
    var row = new ArrayList<>(List.of(scale, "" + number, time, body, code, kilos(grams)));
    row.addAll(List.of(rest));
    var line = String.join(",", row);
    export("exports/" + scale + "/" + day + ".csv", chance(20) ? soon(day, 12) : day, line);
    if (chance(20)) {
      export("exports/" + scale + "/until-" + day.plusDays(3) + ".csv", day.plusDays(3), line);
    }
    return number;
  }

  /** A file exists from the day of its last line. */
  private void export(String file, LocalDate day, String line) {
    exports.computeIfAbsent(file, f -> new ArrayList<>()).add(line);
    arrivals.merge(file, day, (one, other) -> one.isAfter(other) ? one : other);
  }

  private static String kilos(int grams) {
    return BigDecimal.valueOf(grams, 3).toPlainString();
  }
}
