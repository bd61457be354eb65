package gambrel.insight.month.change;

import gambrel.insight.month.figures.AlarmRates;
import gambrel.insight.month.figures.Evidence;
import gambrel.insight.month.figures.Finding;
import gambrel.insight.month.figures.MonthBody;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.cuts.Species;
import gambrel.trade.measure.Exact;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.EnumSet;
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
  private static final Set<Factor> OF_LOSSES =
      EnumSet.of(
          Factor.LATE,
          Factor.EVERYTHING,
          Factor.SPECIES,
          Factor.SCALE,
          Factor.CHILLER,
          Factor.CLASS);

  private static final Set<Factor> OF_YIELDS =
      EnumSet.of(Factor.EVERYTHING, Factor.SPECIES, Factor.CLASS, Factor.SUPPLIER, Factor.BONER);

  /**
   * The findings of a month.
   *
   * @param explained the ids of bodies whose yield another finding explains
   */
  public static List<Finding> of(MonthRecords records, Set<String> explained) {
    var findings = new ChangeFindings(records);
    var series =
        Stream.of(Measure.CHILL, Measure.BENCH)
            .flatMap(measure -> Series.of(records, measure, body -> true).stream())
            .toList();
    var losses = findings.search(series, OF_LOSSES, AlarmRates.LOSSES);
    var bone = findings.search(Measure.BONE, body -> true);
    var known = new TreeSet<>(explained);
    bone.forEach(one -> known.addAll(MonthBody.ids(one.bodies())));
    var explanations =
        List.of(
            losses,
            findings.search(Measure.DRESSING, body -> true),
            bone,
            findings.search(Measure.HOME, body -> !known.contains(body.id())),
            findings.search(Measure.DAYS, body -> true));
    return Stream.of(
            explanations.stream()
                .flatMap(List::stream)
                .flatMap(explanation -> findings.finding(explanation).stream()),
            OddBodies.findings(records, series, losses).stream(),
            BatchFindings.of(records).stream())
        .flatMap(all -> all)
        .toList();
  }

  private List<ChangeExplanation> search(Measure measure, Predicate<MonthBody> counted) {
    return search(Series.of(records, measure, counted), OF_YIELDS, AlarmRates.CHANGE);
  }

  private List<ChangeExplanation> search(
      List<Series> series, Set<Factor> factors, double falseAlarms) {
    return new Search(series, factors, records.month().atDay(1), falseAlarms).found();
  }

  /** The finding that tells an explanation; empty if nothing is wrong with what it explains. */
  private Optional<Finding> finding(ChangeExplanation one) {
    var measure = one.parts().get(0).series().measure();
    boolean worse = one.isMore() != (measure == Measure.DRESSING || measure == Measure.HOME);
    return switch (one.factor()) {
      case SCALE -> Optional.of(scale(one));
      case CHILLER -> Optional.of(chiller(one));
      case EVERYTHING, SPECIES -> general(measure, one);
      case LATE, CLASS, SUPPLIER, BONER ->
          worse ? Optional.of(accusing(measure, one)) : Optional.empty();
    };
  }

  private Finding accusing(Measure measure, ChangeExplanation one) {
    var name = new Evidence.Name(one.level());
    return switch (one.factor()) {
      case CLASS -> finding(Finding.Kind.CLASS, measure.id(), one, Map.of("class", name));
      case SUPPLIER -> finding(Finding.Kind.SUPPLIER, measure.id(), one, Map.of("supplier", name));
      case BONER -> finding(Finding.Kind.BONER, "since", one, Map.of("boner", name));
      default -> late(one);
    };
  }

  private Optional<Finding> general(Measure measure, ChangeExplanation one) {
    return switch (measure) {
      case CHILL -> Optional.of(chiller(one));
      case BENCH ->
          Optional.of(
              one.isMore()
                  ? finding(Finding.Kind.BENCH, "", one, Map.of())
                  : finding(
                      Finding.Kind.SCALE,
                      isGain(one) ? "gain" : "balance",
                      one,
                      scales(balanceScales(one))));
      case HOME ->
          Optional.of(one)
              .filter(o -> !o.isMore())
              .map(o -> finding(Finding.Kind.YIELD, "", o, Map.of()));
      case DAYS ->
          Optional.of(one)
              .filter(ChangeExplanation::isMore)
              .map(o -> finding(Finding.Kind.HANGING, "since", o, Map.of()));
      case DRESSING, BONE -> Optional.empty();
    };
  }

  /** A chiller does not get better by itself: if it seems to take less, a rail scale is wrong. */
  private Finding chiller(ChangeExplanation one) {
    var names = new TreeSet<String>();
    one.bodies().forEach(body -> names.add(body.body().chiller()));
    var chillers = Map.<String, Evidence>of("chillers", new Evidence.Names(List.copyOf(names)));
    return one.isMore()
        ? finding(Finding.Kind.CHILLER, "", one, chillers)
        : finding(Finding.Kind.SCALE, "chill", one, scales(railScales(one)));
  }

  private Finding late(ChangeExplanation one) {
    var series = one.parts().get(0).series();
    var evidence = new HashMap<String, Evidence>();
    evidence.put("which", new Evidence.Bodies(MonthBody.ids(one.bodies())));
    evidence.put("usual_hours", new Evidence.Number(Exact.ofStatistic(series.usualHours()), 0));
    evidence.put("hours", new Evidence.Number(Exact.ofStatistic(Series.hours(one.bodies())), 0));
    return finding(Finding.Kind.CHILLED_BODIES, "late", one, evidence);
  }

  private static boolean isGain(ChangeExplanation one) {
    return mean(one) < 0;
  }

  private Finding scale(ChangeExplanation one) {
    boolean rail = one.changes(Measure.CHILL) || exposure(one) < 0;
    String variant = rail ? "rail" : one.isMore() ? "light" : "heavy";
    return finding(Finding.Kind.SCALE, variant, one, scales(Set.of(one.level())));
  }

  private static Map<String, Evidence> scales(Set<String> scales) {
    return Map.of("scales", new Evidence.Names(List.copyOf(scales)));
  }

  private static Set<String> railScales(ChangeExplanation one) {
    var scales = new TreeSet<String>();
    for (var body : one.bodies()) {
      Stream.of(body.balance().rail().hot(), body.balance().rail().cold())
          .flatMap(weights -> weights.weighings().stream())
          .map(Weighing::scale)
          .forEach(scale -> scales.add(scale.id()));
    }
    return scales;
  }

  private static Set<String> balanceScales(ChangeExplanation one) {
    var scales = new TreeSet<String>();
    for (var body : one.bodies()) {
      Stream.of(body.balance().boningWeighings(), body.balance().outOfBoning())
          .flatMap(List::stream)
          .map(Weighing::scale)
          .forEach(scale -> scales.add(scale.id()));
    }
    return scales;
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
    evidence.put("t", new Evidence.Number(Exact.ofStatistic(one.effect().strength()), 2));
    evidence.put("t_limit", new Evidence.Number(Exact.ofStatistic(one.limit()), 2));
    evidence.put("false_alarms", Evidence.FALSE_ALARMS);
    var costs = new ArrayList<Finding.Cost>();
    if (measure != Measure.DAYS) {
      var percent = Exact.ofStatistic(Math.abs(change));
      evidence.put("weight", new Evidence.Borne(measure.figure().lost(bodies, percent)));
      for (var species : Species.values()) {
        var lost = measure.figure().lost(MonthBody.of(species, bodies), percent);
        costs.addAll(Finding.Cost.of(lost, rate(kind, species), records.settings().currency()));
      }
    }
    var subjects = new ArrayList<String>();
    if (more.get("scales") instanceof Evidence.Names scales) {
      subjects.addAll(scales.values());
    }
    subjects.addAll(MonthBody.ids(bodies));
    return Finding.likely(kind, variant, subjects, evidence, Finding.Cost.merged(costs));
  }

  /** What a unit of weight lost is worth; meat that was left on the bone would have been mince. */
  private Optional<BigFraction> rate(Finding.Kind kind, Species species) {
    return kind == Finding.Kind.BONER
        ? records.values().minceOverBone(records.night().shop().cuts().of(species))
        : records.values().onRail(species);
  }

  private static Evidence value(Measure measure, double value) {
    return measure == Measure.DAYS
        ? new Evidence.Number(Exact.ofStatistic(value), 0)
        : new Evidence.Percent(Exact.ofStatistic(value), 2);
  }
}
