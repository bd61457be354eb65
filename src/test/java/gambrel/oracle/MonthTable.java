package gambrel.oracle;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/** {@code data/month-figures.csv}, but for what needs values, boners or a line through points. */
final class MonthTable {
  private final Months months;
  private final MonthGroups groups;
  private final List<List<String>> table;

  MonthTable(Months months, MonthGroups groups) {
    this.months = months;
    this.groups = groups;
    table =
        Print.table(
            months.world.setup,
            "month,figure,whose,species,group,bodies,value,unit,baseline_bodies,baseline_value,"
                + "baseline_lower_quartile,baseline_median,baseline_upper_quartile,interval,lower,"
                + "upper");
  }

  List<List<String>> rows() {
    for (var month : months.all()) {
      new MonthRoom(months, month).rows(this::row);
      known(month);
      for (var species : months.world.setup.trees.keySet()) {
        for (var loss : MonthLoss.values()) {
          losses(month, species, loss);
        }
        new MonthYields(months, month, species).rows(this::row);
      }
    }
    return table;
  }

  /** A figure beside what it is compared with; texts as they are printed. */
  record Figure(
      YearMonth month,
      String name,
      String whose,
      String species,
      String group,
      int bodies,
      String value,
      String unit,
      int others,
      String otherValue,
      List<BigFraction> spread) {}

  private void row(Figure figure) {
    var quartiles =
        figure.spread().isEmpty()
            ? List.of("", "", "")
            : ExactNight.quartiles(figure.spread()).stream().map(Num::text).toList();
    var row = new ArrayList<String>();
    row.addAll(List.of(figure.month().toString(), figure.name(), figure.whose()));
    row.addAll(List.of(figure.species(), Print.text(figure.group()), "" + figure.bodies()));
    row.addAll(List.of(figure.value(), figure.unit(), "" + figure.others(), figure.otherValue()));
    row.addAll(quartiles);
    row.addAll(List.of("", "", ""));
    table.add(row);
  }

  private void known(YearMonth month) {
    var killed = months.killed(month);
    var cut = months.cut(month);
    known(month, "live_known", killed, m -> m.number("live") != null);
    known(month, "hot_known", killed, m -> m.number("hot") != null);
    known(month, "cold_known", killed, m -> m.number("cold") != null);
    known(month, "bone_known", cut, m -> isSome(m.number("bone")));
    known(month, "fat_known", cut, m -> isSome(m.number("fat")));
  }

  private static boolean isSome(BigFraction weight) {
    return weight != null && weight.signum() != 0;
  }

  private void known(
      YearMonth month, String name, List<Months.Member> bodies, Predicate<Months.Member> known) {
    var count = "" + bodies.stream().filter(known).count();
    row(new Figure(month, name, "", "", "", bodies.size(), count, "bodies", 0, "", List.of()));
  }

  private void losses(YearMonth month, String species, MonthLoss loss) {
    var now = of(loss.of(months, month), species);
    var before = of(loss.before(months, month), species);
    for (var group : groups.of(month, species, loss, now)) {
      for (var whose : List.of("customers", "own", "shared")) {
        Predicate<Months.Member> in =
            m -> months.whose(m).equals(whose) && MonthGroups.isIn(m, group);
        var of = now.stream().filter(in).toList();
        if (!of.isEmpty()) {
          loss(month, species, loss, whose, group, of, before.stream().filter(in).toList());
        }
      }
    }
    if (!now.isEmpty()) {
      loss(month, species, loss, "", "", now, before);
    }
    MonthPlace.of(loss)
        .forEach(
            place -> {
              for (var name : place.names(now)) {
                loss(
                    month,
                    species,
                    loss,
                    "",
                    place.id + " " + name,
                    place.in(now, name),
                    place.isDay ? before : place.in(before, name));
              }
            });
  }

  private static List<Months.Member> of(List<Months.Member> bodies, String species) {
    return bodies.stream().filter(m -> m.species().equals(species)).toList();
  }

  private void loss(
      YearMonth month,
      String species,
      MonthLoss loss,
      String whose,
      String group,
      List<Months.Member> now,
      List<Months.Member> before) {
    var unit = months.world.setup.unit;
    Function<List<Months.Member>, BigFraction> percent =
        bodies -> Num.percent(sum(bodies, loss.lost), sum(bodies, loss.of));
    var each =
        before.stream().map(m -> Num.percent(m.number(loss.lost), m.number(loss.of))).toList();
    row(
        new Figure(
            month,
            loss.id() + "_loss_pct",
            whose,
            species,
            group,
            now.size(),
            Num.text(percent.apply(now)),
            "%",
            before.size(),
            before.isEmpty() ? "" : Num.text(percent.apply(before)),
            each));
    row(
        new Figure(
            month,
            loss.id() + "_loss",
            whose,
            species,
            group,
            now.size(),
            Num.text(sum(now, loss.lost)),
            unit,
            before.size(),
            before.isEmpty() ? "" : Num.text(sum(before, loss.lost)),
            List.of()));
  }

  static BigFraction sum(List<Months.Member> bodies, String name) {
    return bodies.stream()
        .map(m -> m.number(name))
        .filter(n -> n != null)
        .reduce(BigFraction.ZERO, BigFraction::add);
  }
}
