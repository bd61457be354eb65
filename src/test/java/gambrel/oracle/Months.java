package gambrel.oracle;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Which bodies belong to which month: to that of the kill for hanging and chilling, to that of the
 * last cut for cutting. A body that is still open has no figures of cutting.
 */
final class Months {
  static final int BASELINE = 12;

  private static final List<String> OF_THE_RAIL =
      List.of(
          "live",
          "hot",
          "cold",
          "dressing_pct",
          "chill_shrink_pct",
          "chill_loss",
          "ageing_shrink_pct",
          "ageing_loss",
          "cold_of_aged");

  final World world;

  private final List<Member> members;
  private final Map<YearMonth, List<Member>> killed = new HashMap<>();
  private final Map<YearMonth, List<Member>> cut = new HashMap<>();

  Months(World world) {
    this.world = world;
    members = members();
  }

  /** A body with its figures. */
  record Member(Yield yield, Map<String, BigFraction> numbers, String state) {
    String id() {
      return yield.body.beast.id();
    }

    String species() {
      return yield.body.beast.species();
    }

    LocalDate killed() {
      return yield.body.beast.killed();
    }

    /** A figure; null if it is not known. */
    BigFraction number(String name) {
      return numbers.get(name);
    }

    boolean isUncut() {
      return yield.body.beast.uncut();
    }

    YearMonth lastCut() {
      var cuts = yield.body.cuts();
      return cuts.isEmpty() ? null : YearMonth.from(cuts.get(cuts.size() - 1).date);
    }

    boolean isDone() {
      return !state.equals("open") && yield.takeHome != null;
    }
  }

  private List<Member> members() {
    var all = new ArrayList<Member>();
    world.yields.forEach(
        (id, yield) ->
            all.add(new Member(yield, BodyNumbers.of(yield), world.verdicts.get(id).state)));
    all.sort(
        Comparator.comparing(
                (Member m) -> m.killed() == null ? LocalDate.MAX : m.killed(),
                Comparator.naturalOrder())
            .thenComparing(Months::firstHot)
            .thenComparing(Member::id, Split.byBytes()));
    return all;
  }

  private static Instant firstHot(Member member) {
    var first = member.yield().body.firstHot();
    return first == null ? Instant.MAX : first;
  }

  private List<Member> where(Predicate<Member> which) {
    return members.stream().filter(which).toList();
  }

  /** The bodies killed in a month, in order of kill. */
  List<Member> killed(YearMonth month) {
    var today = world.setup.localDate(world.asOf);
    return killed.computeIfAbsent(
        month,
        of ->
            where(
                m ->
                    m.killed() != null
                        && !m.killed().isAfter(today)
                        && YearMonth.from(m.killed()).equals(of)));
  }

  /** The bodies cut in a month, if cutting is over. */
  List<Member> cut(YearMonth month) {
    return cut.computeIfAbsent(
        month, of -> where(m -> !m.isUncut() && m.isDone() && of.equals(m.lastCut())));
  }

  /** The bodies cut in a month that count. */
  List<Member> settled(YearMonth month) {
    return cut(month).stream().filter(this::isCounted).toList();
  }

  /** Whether a body is not held, not in an open batch and not released with a known fault. */
  boolean isCounted(Member member) {
    return !member.state().equals("held") && isCharted(member);
  }

  /** The same, but held bodies too. */
  boolean isCharted(Member member) {
    return !world.verdicts.get(member.id()).releasedSome
        && member.yield().batches.stream().noneMatch(b -> b.open);
  }

  /** The bodies that left a month as they hung. */
  List<Member> whole(YearMonth month) {
    return where(
        m ->
            m.yield().body.beast.outcome().equals("whole")
                && m.isDone()
                && month.equals(
                    m.lastCut() == null && m.killed() != null
                        ? YearMonth.from(m.killed())
                        : m.lastCut()));
  }

  /** The same of the twelve months before a month, earliest month first. */
  List<Member> before(YearMonth month, Function<YearMonth, List<Member>> which) {
    var all = new ArrayList<Member>();
    for (int i = BASELINE; i > 0; i--) {
      all.addAll(which.apply(month.minusMonths(i)));
    }
    return all;
  }

  /** Every month up to this one in which a body is killed or was cut last. */
  TreeSet<YearMonth> all() {
    var all = new TreeSet<YearMonth>();
    var today = world.setup.localDate(world.asOf);
    for (var member : members) {
      if (member.killed() != null && !member.killed().isAfter(today)) {
        all.add(YearMonth.from(member.killed()));
      }
      if (member.lastCut() != null) {
        all.add(member.lastCut());
      }
    }
    return new TreeSet<>(all.headSet(YearMonth.from(today), true));
  }

  /** Whose a body is: {@code customers}, {@code own} or {@code shared}. */
  String whose(Member member) {
    var shares = world.verdicts.get(member.id()).shares();
    return shares.onlyShop() ? "own" : shares.all().containsKey("shop") ? "shared" : "customers";
  }

  /** The figures of a body that belong to a month. */
  Map<String, BigFraction> figuresOf(String body, YearMonth month) {
    var figures = new LinkedHashMap<String, BigFraction>();
    boolean killed = killed(month).stream().anyMatch(m -> m.id().equals(body));
    boolean cut = cut(month).stream().anyMatch(m -> m.id().equals(body));
    boolean whole = whole(month).stream().anyMatch(m -> m.id().equals(body));
    BodyNumbers.of(world.yields.get(body))
        .forEach(
            (name, number) -> {
              if (OF_THE_RAIL.contains(name) ? killed : cut || whole) {
                figures.put(name, number);
              }
            });
    return figures;
  }
}
