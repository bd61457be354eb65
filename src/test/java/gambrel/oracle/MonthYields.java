package gambrel.oracle;

import java.math.BigInteger;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Yields, primals and charges of the settled bodies of a species that were cut in a month. */
final class MonthYields {
  private final Months months;
  private final YearMonth month;
  private final String species;

  /** A part and the whole of it; null for a body of which one is not known or the whole is 0. */
  private record Ratio(BigFraction part, BigFraction whole) {
    static Ratio of(BigFraction part, BigFraction whole) {
      return part == null || whole == null || whole.signum() == 0 ? null : new Ratio(part, whole);
    }

    BigFraction percent() {
      return Num.percent(part, whole);
    }
  }

  MonthYields(Months months, YearMonth month, String species) {
    this.months = months;
    this.month = month;
    this.species = species;
  }

  void rows(Consumer<MonthTable.Figure> rows) {
    var now = like(months.settled(month));
    var before = like(months.before(month, months::settled));
    yields(rows, "all", now, before);
    var classes = new TreeSet<String>();
    now.stream().map(MonthYields::grade).filter(g -> !g.isEmpty()).forEach(classes::add);
    for (var grade : classes.size() > 1 ? classes : List.<String>of()) {
      yields(rows, "class " + grade, named(now, grade), named(before, grade));
    }
    for (var item : months.world.setup.trees.get(species).items()) {
      row(rows, "primal_pct", item, now, before, m -> primal(m, item));
    }
    charges(rows, now, before);
  }

  private List<Months.Member> like(List<Months.Member> bodies) {
    return bodies.stream().filter(m -> m.species().equals(species)).toList();
  }

  private static String grade(Months.Member member) {
    return member.yield().body.beast.grade();
  }

  private static List<Months.Member> named(List<Months.Member> bodies, String grade) {
    return bodies.stream().filter(m -> grade(m).equals(grade)).toList();
  }

  private void yields(
      Consumer<MonthTable.Figure> rows,
      String group,
      List<Months.Member> now,
      List<Months.Member> before) {
    row(
        rows,
        "take_home_pct",
        group,
        now,
        before,
        m -> Ratio.of(m.number("take_home"), m.number("cold")));
    row(rows, "bone_pct", group, now, before, MonthYields::bone);
    row(rows, "fat_pct", group, now, before, m -> Ratio.of(m.number("fat"), m.number("boning")));
    row(rows, "trim_pct", group, now, before, this::trim);
  }

  private void row(
      Consumer<MonthTable.Figure> rows,
      String name,
      String group,
      List<Months.Member> now,
      List<Months.Member> before,
      Function<Months.Member, Ratio> ratio) {
    var known = now.stream().map(ratio).filter(Objects::nonNull).toList();
    if (known.isEmpty()) {
      return;
    }
    var part = known.stream().map(Ratio::part).reduce(BigFraction.ZERO, BigFraction::add);
    var whole = known.stream().map(Ratio::whole).reduce(BigFraction.ZERO, BigFraction::add);
    var others = before.stream().map(ratio).filter(Objects::nonNull).map(Ratio::percent).toList();
    rows.accept(
        new MonthTable.Figure(
            month,
            name,
            "",
            species,
            group,
            known.size(),
            Num.text(Num.percent(part, whole)),
            "%",
            others.size(),
            "",
            others));
  }

  /** Bone in bins, and in packs that are no rail trim. */
  private static Ratio bone(Months.Member member) {
    var bins = member.number("bone");
    return bins == null
        ? null
        : Ratio.of(bins.add(member.number("bone_packed_after_rail")), member.number("boning"));
  }

  private Ratio trim(Months.Member member) {
    var body = member.yield().body;
    var minced = body.setup.minced.get(species);
    var trim =
        body.cuts().stream()
            .filter(r -> r.isPack() || r.is("tub") && r.hasBatch())
            .filter(r -> body.tree.kind(r.item).equals("trim") || minced.contains(r.item))
            .toList();
    return Ratio.of(BodyFigures.sum(trim), body.boning);
  }

  /** Packs and tubs of a primal: the first part of a quarter that does not hang itself. */
  private static Ratio primal(Months.Member member, String primal) {
    var body = member.yield().body;
    var tree = body.tree;
    boolean isPrimal =
        !tree.kind(primal).equals("carcase")
            && !tree.parent(primal).equals(Tree.ROOT)
            && tree.has(tree.parent(primal))
            && tree.kind(tree.parent(primal)).equals("carcase");
    var of =
        body.cuts().stream()
            .filter(r -> r.isPack() || r.is("tub") && r.hasBatch())
            .filter(r -> isPrimal && tree.isUnder(r.item, primal))
            .toList();
    var weight = BodyFigures.sum(of);
    return weight.signum() == 0 ? null : Ratio.of(weight, body.boning);
  }

  private void charges(
      Consumer<MonthTable.Figure> rows, List<Months.Member> now, List<Months.Member> before) {
    var known = now.stream().map(this::income).filter(Objects::nonNull).toList();
    var others = before.stream().map(this::income).filter(Objects::nonNull).toList();
    if (!known.isEmpty()) {
      var setup = months.world.setup;
      rows.accept(
          new MonthTable.Figure(
              month,
              "charges_of_boning",
              "",
              species,
              "",
              known.size(),
              Num.text(rate(known)),
              setup.setting("currency", "") + "/" + setup.unit,
              others.size(),
              others.isEmpty() ? "" : Num.text(rate(others)),
              List.of()));
    }
  }

  private static BigFraction rate(List<Ratio> incomes) {
    var part = incomes.stream().map(Ratio::part).reduce(BigFraction.ZERO, BigFraction::add);
    var whole = incomes.stream().map(Ratio::whole).reduce(BigFraction.ZERO, BigFraction::add);
    return part.divide(whole);
  }

  /** Charges without tax in the major unit, and the customers' part of the boning-room weight. */
  private Ratio income(Months.Member member) {
    var verdict = months.world.verdicts.get(member.id());
    if (verdict.charges.isUnsettled() || member.number("boning") == null) {
      return null;
    }
    var net =
        verdict.recipients().stream()
            .map(verdict.charges::net)
            .reduce(BigInteger.ZERO, BigInteger::add);
    var own = verdict.shares().all().getOrDefault("shop", BigFraction.ZERO);
    var part = member.number("boning").multiply(BigFraction.ONE.subtract(own));
    return Ratio.of(Num.ofSteps(net, months.world.setup.minorDigits()), part);
  }
}
