package gambrel.oracle;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** Days and scales by which what was lost in the chiller and on the bench is told. */
enum MonthPlace {
  KILLED("day", true, m -> m.killed() == null ? null : m.killed().toString()),
  HUNG_SCALE("scale", false, m -> heaviest(hung(m))),
  CUT("day", true, m -> lastCut(m)),
  BENCH_SCALE("scale", false, m -> heaviest(m.yield().body.cutOut()));

  final String id;
  final boolean isDay;
  private final Function<Months.Member, String> name;

  MonthPlace(String id, boolean isDay, Function<Months.Member, String> name) {
    this.id = id;
    this.isDay = isDay;
    this.name = name;
  }

  static List<MonthPlace> of(MonthLoss loss) {
    return switch (loss) {
      case CHILL -> List.of(KILLED, HUNG_SCALE);
      case BENCH -> List.of(CUT, BENCH_SCALE);
      default -> List.of();
    };
  }

  private static String lastCut(Months.Member member) {
    var cuts = member.yield().body.cuts();
    return cuts.isEmpty() ? null : cuts.get(cuts.size() - 1).date.toString();
  }

  private static List<Row> hung(Months.Member member) {
    return member.yield().body.hungRows();
  }

  /** The scale of most weight; of equal ones the last by id. */
  private static String heaviest(List<Row> rows) {
    var weights = new TreeMap<String, BigFraction>();
    rows.forEach(r -> weights.merge(r.scale.id(), r.net, BigFraction::add));
    return weights.entrySet().stream()
        .max(Map.Entry.<String, BigFraction>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .orElse(null);
  }

  TreeSet<String> names(List<Months.Member> bodies) {
    var names = new TreeSet<String>();
    bodies.stream().map(name).filter(n -> n != null).forEach(names::add);
    return names;
  }

  List<Months.Member> in(List<Months.Member> bodies, String wanted) {
    return bodies.stream().filter(m -> wanted.equals(name.apply(m))).toList();
  }
}
