package gambrel.laws;

import gambrel.oracle.ExactNight;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** The figures on the owner's month: every table of bodies, averages, sums, sentences. */
final class MonthPlaces {
  static final List<String> OWNERS = List.of("customers", "own", "shared");
  private static final List<String> SPECIES =
      List.of("beef", "veal", "lamb", "pork", "goat", "game");
  private static final List<String> LOSSES = List.of("chill_loss", "ageing_loss", "bench_loss");

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
    yields(page, month, numbers);
    five(page, month, numbers);
    sums(page, month, numbers);
    batches(page, month);
    var story = new MonthStory(exact, words, agreement);
    story.compare(page, month);
    story.waiting(page, month);
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

  /** Calls for each row of a table by owner and species. */
  private interface ByOwner {
    void row(String owner, String species, PrintedPage.Row row);
  }

  private int byOwner(PrintedPage page, String table, ByOwner reader) {
    var owner = "";
    int rows = 0;
    for (var row : page.rows(table)) {
      if (row.style().equals("group")) {
        owner = key(OWNERS, "summary.", row.cell(0));
      } else {
        rows++;
        reader.row(owner, key(SPECIES, "species.", row.cell(0)), row);
      }
    }
    return rows;
  }

  private String key(List<String> keys, String prefix, String printed) {
    return keys.stream()
        .filter(key -> words.say(prefix + key).equals(printed))
        .findFirst()
        .orElseThrow(() -> new AssertionError(prefix + " of " + printed));
  }

  private void losses(PrintedPage page, String month, Map<String, BigFraction> numbers) {
    int rows =
        byOwner(
            page,
            "lost",
            (owner, species, row) -> {
              for (int i = 0; i < LOSSES.size(); i++) {
                var name = owner + " " + species + " " + LOSSES.get(i);
                counted(month + " lost " + name, row, 1 + 3 * i, name, numbers);
                agreement.number(month + " lost " + name, row.cell(3 + 3 * i), numbers.get(name));
              }
            });
    agreement.same(month + " lost, rows", expected(numbers, LOSSES), rows);
  }

  private static int expected(Map<String, BigFraction> numbers, List<String> names) {
    int rows = 0;
    for (var owner : OWNERS) {
      for (var species : SPECIES) {
        var prefix = owner + " " + species + " ";
        rows += names.stream().anyMatch(name -> numbers.containsKey(prefix + name)) ? 1 : 0;
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

  private void yields(PrintedPage page, String month, Map<String, BigFraction> numbers) {
    var names = List.of("dressing", "take_home", "meat", "bone", "fat");
    int rows =
        byOwner(
            page,
            "yields",
            (owner, species, row) -> {
              for (int i = 0; i < names.size(); i++) {
                var name = owner + " " + species + " " + names.get(i);
                counted(month + " yields " + name, row, 1 + 2 * i, name, numbers);
              }
            });
    agreement.same(month + " yields, rows", expected(numbers, names), rows);
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

  private void sums(PrintedPage page, String month, Map<String, BigFraction> numbers) {
    var owners = new ArrayList<String>();
    page.heads("sums").stream()
        .filter(head -> !head.isEmpty())
        .forEach(head -> owners.add(key(OWNERS, "summary.", head)));
    var names =
        List.of("killed", "hot", "cut", "boning", "take_home", "offal", "bone", "fat", "waste");
    for (var row : page.rows("sums")) {
      var name = key(names, "summary.total.", row.cell(0));
      for (int i = 0; i < owners.size(); i++) {
        var number = numbers.get(owners.get(i) + " all sum " + name);
        var place = month + " sums " + owners.get(i) + " " + name;
        agreement.numberOrBlank(place, row.cell(1 + i), number);
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
