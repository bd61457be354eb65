package gambrel.laws;

import gambrel.oracle.ExactNight;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** The figures on the owner's month: every table of bodies, averages, sums, sentences. */
final class MonthPlaces {
  static final List<String> OWNERS = List.of("customers", "own", "shared");
  private static final List<String> SPECIES =
      List.of("beef", "veal", "lamb", "pork", "goat", "game");
  private static final List<String> ROOM = List.of("first", "whole", "boning", "home", "offal");
  private static final List<String> LOSSES = List.of("chill", "ageing", "bench", "batch");

  /** Columns of the list of bodies after body, owner, kind and day. */
  private static final List<String> BODY =
      List.of(
          "hot",
          "cold",
          "boning",
          "take_home",
          "cutting_loss",
          "chill_shrink_pct",
          "cutting_loss_pct",
          "take_home_of_cold_pct");

  private final ExactNight exact;
  private final EnglishWords words;
  private final Agreement agreement;

  MonthPlaces(ExactNight exact, EnglishWords words, Agreement agreement) {
    this.exact = exact;
    this.words = words;
    this.agreement = agreement;
  }

  void compare(PrintedPage page, String month) {
    var numbers = exact.month(month);
    bodies(page, month);
    losses(page, month, numbers);
    five(page, month, numbers);
    sums(page, month, numbers);
    batches(page, month);
  }

  private void bodies(PrintedPage page, String month) {
    for (var row : page.rows("bodies")) {
      var numbers = exact.body(row.cell(0), month);
      for (int i = 0; i < BODY.size(); i++) {
        var place = month + " bodies " + row.cell(0) + " " + BODY.get(i);
        agreement.number(place, row.cell(4 + i), numbers.get(BODY.get(i)));
      }
    }
  }

  private String key(List<String> keys, String prefix, String printed) {
    return keys.stream()
        .filter(key -> words.say(prefix + key).equals(printed))
        .findFirst()
        .orElseThrow(() -> new AssertionError(prefix + " of " + printed));
  }

  /** The losses by owner, each below a title that names owner and loss. */
  private void losses(PrintedPage page, String month, Map<String, BigFraction> numbers) {
    var titled = "";
    int rows = 0;
    for (var row : page.rows("against")) {
      if (row.style().equals("group")) {
        titled = row.cell(0);
      } else if (isSpecies(row.cell(0))) {
        rows++;
        var name = title(titled, key(SPECIES, "species.", row.cell(0)));
        counted(month + " lost " + name, row, 3, name, numbers);
        agreement.number(month + " lost " + name, row.cell(1), numbers.get(name));
      }
    }
    agreement.same(month + " lost, rows", expected(numbers), rows);
  }

  private boolean isSpecies(String printed) {
    return SPECIES.stream().anyMatch(species -> words.say("species." + species).equals(printed));
  }

  /** The name of a sum: {@code customers beef chill_loss}. */
  private String title(String printed, String species) {
    for (var owner : OWNERS) {
      for (var loss : LOSSES) {
        var title =
            words.say(
                "shrink.group", words.say("summary." + owner), words.say("shrink.loss." + loss));
        if (title.equals(printed)) {
          return owner + " " + species + " " + loss + "_loss";
        }
      }
    }
    throw new AssertionError(printed);
  }

  private static int expected(Map<String, BigFraction> numbers) {
    int rows = 0;
    for (var owner : OWNERS) {
      for (var species : SPECIES) {
        for (var loss : LOSSES) {
          rows += numbers.containsKey(owner + " " + species + " " + loss + "_loss") ? 1 : 0;
        }
      }
    }
    return rows;
  }

  /** A percentage and of how many bodies it is. */
  private void counted(
      String place,
      PrintedPage.Row row,
      int column,
      String name,
      Map<String, BigFraction> numbers) {
    agreement.number(place + " pct", row.cell(column), numbers.get(name + " pct"));
    agreement.number(place + " bodies", row.cell(column + 1), numbers.get(name + " bodies"));
  }

  private void five(PrintedPage page, String month, Map<String, BigFraction> numbers) {
    var keys =
        Map.of(
            "first.chill", "chill_loss",
            "first.ageing", "ageing_loss",
            "first.bench", "bench_loss",
            "first.home", "take_home");
    for (var row : page.rows("five")) {
      for (var species : SPECIES) {
        keys.forEach(
            (key, figure) -> {
              if (row.cell(0).equals(words.say(key, words.say("species." + species)))) {
                var name = "any " + species + " " + figure;
                counted(month + " five " + name, row, 1, name, numbers);
              }
            });
      }
    }
  }

  /** The sums of each owner, in the columns that the picture has. */
  private void sums(PrintedPage page, String month, Map<String, BigFraction> numbers) {
    var heads = page.heads("sums");
    for (var row : page.rows("sums")) {
      var owner = key(OWNERS, "summary.", row.cell(0));
      for (int i = 2; i < heads.size(); i++) {
        var name = key(ROOM, "kilos.room_", heads.get(i).replaceFirst(", \\w+$", ""));
        var number = numbers.get(owner + " all room_" + name);
        agreement.numberOrBlank(month + " sums " + owner + " " + name, row.cell(i), number);
      }
    }
  }

  private void batches(PrintedPage page, String month) {
    for (var row : page.rows("batches")) {
      var batch = exact.batches().get(row.cell(0));
      var place = month + " batches " + row.cell(0);
      agreement.numberOrBlank(place + " meat_in", row.cell(2), batch.get("meat_in"));
      agreement.numberOrBlank(place + " added", row.cell(3), batch.get("added"));
      agreement.numberOrBlank(place + " out", row.cell(4), batch.get("out"));
      agreement.number(place + " loss", row.cell(5), batch.get("loss"));
      agreement.number(place + " loss_pct", row.cell(6), batch.get("loss_pct"));
    }
  }
}
