package gambrel.insight.month.figures;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.FileWord;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Which of the month's bodies lack a weight that figures need.
 *
 * @param what the weight
 * @param of how many bodies should have it
 * @param known how many bodies have it
 * @param asked the bodies without it, of species of which most bodies have it: it was forgotten
 */
public record Completeness(What what, int of, int known, List<MonthBody> asked) {
  /** A weight that a body may lack. */
  public enum What implements FileWord {
    /** Live weight, not guessed. */
    LIVE(b -> b.body().liveWeight().isPresent() && !b.body().liveGuessed()),
    /** Hot weight on the rail. */
    HOT(b -> b.hot().isPresent()),
    /** Cold weight on the rail. */
    COLD(b -> b.cold().isPresent()),
    /** Bone in bins. */
    BONE(b -> b.outputs().flatMap(Outputs::bone).filter(w -> !w.isZero()).isPresent()),
    /** Fat in bins. */
    FAT(b -> b.outputs().flatMap(Outputs::fat).filter(w -> !w.isZero()).isPresent());

    private final Predicate<BodyBalance> known;

    What(Predicate<BodyBalance> known) {
      this.known = known;
    }

    private boolean isKnown(MonthBody body) {
      return known.test(body.balance());
    }

    private List<MonthBody> in(MonthBodies months) {
      return this == BONE || this == FAT ? months.cut() : months.killed();
    }
  }

  /** The completeness of each weight. */
  public static List<Completeness> of(MonthRecords records) {
    return Stream.of(What.values()).map(what -> of(records, what)).toList();
  }

  private static Completeness of(MonthRecords records, What what) {
    var bodies = what.in(records.bodies());
    var lacking = bodies.stream().filter(a -> !what.isKnown(a)).toList();
    var before = what.in(records.baseline()).stream();
    var usual = usual(what, Stream.concat(before, bodies.stream()).toList());
    var asked = lacking.stream().filter(a -> usual.contains(a.species())).toList();
    return new Completeness(what, bodies.size(), bodies.size() - lacking.size(), asked);
  }

  /** The species of which more than half of the bodies have the weight. */
  private static Set<Species> usual(What what, List<MonthBody> all) {
    var balance = new EnumMap<Species, Integer>(Species.class);
    all.forEach(a -> balance.merge(a.species(), what.isKnown(a) ? 1 : -1, Integer::sum));
    balance.values().removeIf(more -> more <= 0);
    return balance.keySet();
  }

  /** How many bodies have the weight. */
  public MonthFigure figure() {
    return MonthFigure.ofAll(FigureName.of(what), BodyGroup.ALL, of, BigFraction.of(known));
  }

  /** The finding that asks for the weight; empty if it was not forgotten. */
  public Stream<Finding> finding() {
    if (asked.isEmpty()) {
      return Stream.empty();
    }
    var ids = asked.stream().map(MonthBody::id).toList();
    return Stream.of(
        Finding.certain(
            Finding.Kind.PAPERWORK,
            what.id(),
            ids,
            Map.of(
                "lacking", new Evidence.Count(asked.size()),
                "bodies", new Evidence.Count(of),
                "which", new Evidence.Bodies(ids)),
            List.of()));
  }
}
