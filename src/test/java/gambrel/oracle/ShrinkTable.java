package gambrel.oracle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** {@code data/shrink.csv}; {@code signal} says only {@code beyond} or nothing. */
final class ShrinkTable {
  private static final BigFraction D2 = BigFraction.of(1128, 1000);

  private static final Comparator<Yield> ORDER =
      Comparator.comparing((Yield y) -> y.body.beast.killed())
          .thenComparing(y -> y.body.firstHot() == null ? Instant.MAX : y.body.firstHot())
          .thenComparing(y -> y.body.beast.id(), Split.byBytes());

  private ShrinkTable() {}

  static List<List<String>> of(World world) {
    var table =
        Print.table(
            world.setup,
            "month,killed,body,species,days_hung,hours_chilled,chill_shrink_pct,"
                + "ageing_shrink_pct,centre,lower,upper,signal");
    Map<String, List<Yield>> bySpecies = new TreeMap<>();
    var today = world.setup.localDate(world.asOf);
    for (var yield : world.yields.values()) {
      var killed = yield.body.beast.killed();
      if (killed != null && !killed.isAfter(today)) {
        bySpecies.computeIfAbsent(yield.body.beast.species(), s -> new ArrayList<>()).add(yield);
      }
    }
    bySpecies.values().forEach(bodies -> addSpecies(table, bodies));
    return table;
  }

  private static void addSpecies(List<List<String>> table, List<Yield> bodies) {
    bodies.sort(ORDER);
    var values = new ArrayList<BigFraction>();
    bodies.stream().map(y -> y.body.chillShrink()).filter(v -> v != null).forEach(values::add);
    var centre = values.isEmpty() ? null : mean(values);
    var reach = reach(values);
    for (var yield : bodies) {
      var body = yield.body;
      var shrink = body.chillShrink();
      boolean limits = shrink != null && reach != null;
      boolean beyond = limits && shrink.subtract(centre).abs().compareTo(reach) > 0;
      table.add(
          List.of(
              body.beast.killed().toString().substring(0, 7),
              body.beast.killed().toString(),
              Print.text(body.beast.id()),
              Print.text(body.beast.species()),
              Print.whole(yield.daysHung()),
              Num.text(body.hoursChilled()),
              Num.text(shrink),
              Num.text(body.ageingShrink()),
              shrink == null ? "" : Num.text(centre),
              limits ? Num.text(centre.subtract(reach)) : "",
              limits ? Num.text(centre.add(reach)) : "",
              beyond ? "beyond" : ""));
    }
  }

  private static BigFraction mean(List<BigFraction> values) {
    return values.stream().reduce(BigFraction.ZERO, BigFraction::add).divide(values.size());
  }

  /** Three mean moving ranges over 1.128; null with fewer than two values. */
  private static BigFraction reach(List<BigFraction> values) {
    if (values.size() < 2) {
      return null;
    }
    var ranges = new ArrayList<BigFraction>();
    for (int i = 1; i < values.size(); i++) {
      ranges.add(values.get(i).subtract(values.get(i - 1)).abs());
    }
    return mean(ranges).multiply(3).divide(D2);
  }
}
