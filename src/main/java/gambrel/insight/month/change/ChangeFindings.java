package gambrel.insight.month.change;

import gambrel.insight.month.figures.AlarmRates;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Groups;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What changed in a month, as findings: each names the explanation that covers most of what is
 * seen.
 *
 * @param records the records of the month
 */
public record ChangeFindings(MonthRecords records) {
  /**
   * The findings of a month.
   *
   * @param boners boners of whom another finding tells that meat stays on the bone
   * @param left the ids of bodies that another finding tells were left hanging
   */
  public static List<Finding> of(MonthRecords records, Set<String> boners, Set<String> left) {
    var findings = new ChangeFindings(records);
    var series =
        Stream.of(Measure.CHILL, Measure.BENCH)
            .flatMap(measure -> Series.of(records, measure, body -> true).stream())
            .toList();
    var losses = findings.search(series, AlarmRates.LOSSES);
    var bone = findings.search(Measure.BONE, body -> true);
    var known = new TreeSet<>(boners);
    bone.stream().filter(ChangeFindings::isTold).forEach(one -> known.add(name(one)));
    // Where few were left hanging, the others hang as before.
    boolean fewHang = findings.search(Measure.DAYS, body -> !left.contains(body.id())).isEmpty();
    var explanations =
        List.of(
            losses,
            findings.search(Measure.DRESSING, body -> true),
            bone,
            findings.search(Measure.HOME, body -> !known.contains(body.boner().orElse(""))),
            findings.search(Measure.DAYS, body -> !fewHang));
    return Stream.of(
            explanations.stream()
                .flatMap(List::stream)
                .filter(ChangeFindings::isTold)
                .map(findings::finding),
            OddBodies.findings(records, series, losses).stream(),
            BatchFindings.of(records, losses).stream())
        .flatMap(all -> all)
        .toList();
  }

  private List<ChangeExplanation> search(Measure measure, Predicate<MonthBody> counted) {
    return search(Series.of(records, measure, counted), AlarmRates.CHANGE);
  }

  private List<ChangeExplanation> search(List<Series> series, double falseAlarms) {
    return new Search(series, records.month().atDay(1), falseAlarms).found();
  }

  /** What changed the dressing or the bone of all bodies accuses nothing. */
  private static boolean isTold(ChangeExplanation one) {
    return !one.factor().isGeneral()
        || !one.changes(Measure.DRESSING) && !one.changes(Measure.BONE);
  }

  private Finding finding(ChangeExplanation one) {
    var measure = one.parts().get(0).series().measure();
    var name = new Evidence.Name(name(one));
    var which = new Evidence.Bodies(MonthBody.ids(one.bodies()));
    return switch (one.factor()) {
      case LATE -> late(one, which);
      case SCALE -> scale(one);
      case KILL -> finding(Finding.Kind.CHILLED_BODIES, "day", one, Map.of("which", which));
      case CHILLER -> chiller(one);
      case CLASS -> finding(Finding.Kind.CLASS, measure.id(), one, Map.of("class", name));
      case SUPPLIER -> finding(Finding.Kind.SUPPLIER, measure.id(), one, Map.of("supplier", name));
      case BONER -> finding(Finding.Kind.BONER, "since", one, Map.of("boner", name));
      case EVERYTHING, SPECIES ->
          switch (measure) {
            case CHILL -> chiller(one);
            case BENCH -> finding(Finding.Kind.BENCH, "", one, Map.of());
            case DAYS -> finding(Finding.Kind.HANGING, "since", one, Map.of());
            case HOME, DRESSING, BONE -> finding(Finding.Kind.YIELD, "", one, Map.of());
          };
    };
  }

  private static String name(ChangeExplanation one) {
    return one.factor().name(one.bodies().get(0));
  }

  private Finding chiller(ChangeExplanation one) {
    var names = new TreeSet<String>();
    one.bodies().forEach(body -> names.add(body.body().chiller()));
    var chillers = new Evidence.Names(List.copyOf(names));
    return finding(Finding.Kind.CHILLER, "", one, Map.of("chillers", chillers));
  }

  private Finding late(ChangeExplanation one, Evidence which) {
    var series = one.parts().get(0).series();
    var evidence = new HashMap<String, Evidence>();
    evidence.put("which", which);
    var before = series.bodies().subList(0, series.baseline());
    evidence.put("usual_hours", Evidence.number(Series.hours(before), 0));
    evidence.put("hours", Evidence.number(Series.hours(one.bodies()), 0));
    return finding(Finding.Kind.CHILLED_BODIES, "late", one, evidence);
  }

  /** One scale, or several that explain it about as well, one of which is off. */
  private Finding scale(ChangeExplanation one) {
    var scales = new Evidence.Names(List.copyOf(one.names()));
    double change = one.effect().mean() * exposure(one);
    boolean rail = one.changes(Measure.CHILL) || exposure(one) < 0;
    boolean single = scales.values().size() == 1;
    String variant =
        single || rail && change > 0
            ? rail ? "rail" : one.isMore() ? "light" : "heavy"
            : told(one) == Measure.CHILL
                ? "chill"
                : change > 0 ? "either" : mean(one) < 0 ? "gain" : "balance";
    return finding(Finding.Kind.SCALE, variant, one, Map.of("scales", scales));
  }

  /** The measure whose figures a finding gives: bench loss if it changed, else the first one. */
  private static Measure told(ChangeExplanation one) {
    return one.changes(Measure.BENCH) ? Measure.BENCH : one.parts().get(0).series().measure();
  }

  /** The mean exposure of the bodies whose figures a finding gives. */
  private static double exposure(ChangeExplanation one) {
    return mean(one, part -> i -> part.exposure()[i]);
  }

  /** The mean of the figures that a finding gives. */
  private static double mean(ChangeExplanation one) {
    return mean(one, part -> i -> part.series().listed().get(i).value());
  }

  private static double mean(
      ChangeExplanation one, Function<ChangeExplanation.Part, IntToDoubleFunction> number) {
    return one.parts().stream()
        .filter(part -> part.series().measure() == told(one))
        .flatMapToDouble(part -> part.places().mapToDouble(number.apply(part)))
        .average()
        .orElse(0);
  }

  private Finding finding(
      Finding.Kind kind, String variant, ChangeExplanation one, Map<String, Evidence> more) {
    var measure = told(one);
    var bodies = one.bodies();
    double change = one.effect().mean() * exposure(one);
    double mean = mean(one);
    double half = one.limit() * Math.sqrt(one.effect().variance());
    double size = Math.abs(one.effect().mean());
    int before =
        one.parts().stream()
            .map(ChangeExplanation.Part::series)
            .filter(series -> series.measure() == measure)
            .mapToInt(Series::baseline)
            .sum();
    var evidence = new HashMap<String, Evidence>(more);
    if (one.factor() != Factor.LATE) {
      evidence.put("since", new Evidence.Day(one.since()));
    }
    evidence.put("species", Evidence.species(bodies));
    evidence.put("bodies", new Evidence.Count(bodies.size()));
    evidence.put("bodies_before", new Evidence.Count(before));
    evidence.put("loss", value(measure, mean));
    evidence.put("usual", value(measure, mean - change));
    evidence.put("difference", value(measure, Math.abs(change)));
    evidence.put("lower", value(measure, Math.max(0, size - half)));
    evidence.put("upper", value(measure, size + half));
    evidence.put("t", Evidence.number(one.effect().strength(), 2));
    evidence.put("t_limit", Evidence.number(one.limit(), 2));
    var costs = new ArrayList<Finding.Cost>();
    if (measure != Measure.DAYS) {
      var percent = Exact.ofStatistic(Math.abs(change));
      evidence.put("weight", new Evidence.Borne(measure.figure().lost(bodies, percent)));
      for (var species : Species.values()) {
        var lost = measure.figure().lost(MonthBody.of(species, bodies), percent);
        costs.addAll(Finding.Cost.of(lost, rate(kind, species), records.settings().currency()));
      }
    }
    var scales = one.factor() == Factor.SCALE ? List.copyOf(one.names()) : List.<String>of();
    var subjects = Groups.both(scales, MonthBody.ids(bodies));
    return Finding.likely(kind, variant, subjects, evidence, Finding.Cost.merged(costs));
  }

  /** What a unit of weight lost is worth; meat that was left on the bone would have been mince. */
  private Optional<BigFraction> rate(Finding.Kind kind, Species species) {
    return kind == Finding.Kind.BONER
        ? records.values().minceOverBone(records.night().shop().cuts().of(species))
        : records.values().onRail(species);
  }

  private static Evidence value(Measure measure, double value) {
    return measure == Measure.DAYS ? Evidence.number(value, 0) : Evidence.percent(value);
  }
}
