package gambrel.month;

import gambrel.cuts.Species;
import gambrel.measure.Exact;
import gambrel.month.LikeWithLike.Difference;
import gambrel.month.MonthFigure.Comparison;
import gambrel.month.MonthFigure.Interval;
import gambrel.month.money.Income;
import gambrel.month.pace.Pace;
import gambrel.month.pace.PaceLine;
import gambrel.month.value.BodyWorth;
import gambrel.month.value.WorthLine;
import gambrel.month.yields.Yields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The figures of a month, in the order of {@code month-figures.csv}. The pages' tables select from
 * them.
 *
 * @param all the figures
 */
public record MonthFigures(List<MonthFigure> all) {
  /** Copies the list. */
  public MonthFigures {
    all = List.copyOf(all);
  }

  static MonthFigures of(MonthRecords records, MonthParts parts) {
    return new MonthFigures(new Builder(records).build(parts));
  }

  /** All figures of a name. */
  public Stream<MonthFigure> of(FigureName name) {
    return all.stream().filter(figure -> figure.name() == name);
  }

  /** The figure of a species and group; empty if unknown. */
  public Optional<MonthFigure> find(FigureName name, Species species, FigureGroup group) {
    return of(name)
        .filter(f -> f.species().filter(species::equals).isPresent() && f.group().equals(group))
        .findFirst();
  }

  /** The figure of an owner's bodies of a species and group; empty if unknown. */
  public Optional<MonthFigure> find(
      FigureName name, Ownership whose, Species species, FigureGroup group) {
    return of(name)
        .filter(f -> f.whose().filter(whose::equals).isPresent())
        .filter(f -> f.species().filter(species::equals).isPresent() && f.group().equals(group))
        .findFirst();
  }

  private static final class Builder {
    private final MonthRecords records;
    private final List<MonthFigure> figures = new ArrayList<>();

    Builder(MonthRecords records) {
      this.records = records;
    }

    List<MonthFigure> build(MonthParts parts) {
      parts.losses().forEach(this::loss);
      parts.hanging().forEach(this::hanging);
      parts.furtherDays().forEach(this::furtherDay);
      parts.completeness().forEach(this::known);
      figures.addAll(Yields.of(records));
      for (var comparison : parts.boners()) {
        comparison.differences().forEach((boner, d) -> boner(comparison.species(), boner, d));
      }
      parts.paceLines().forEach(this::pace);
      parts.worths().forEach(this::worth);
      for (var choice : parts.choices()) {
        for (var way : choice.ways()) {
          var name =
              choice.perPiece() ? FigureName.CUT_WORTH_OF_PIECE : FigureName.CUT_WORTH_OF_BODY;
          var group = new FigureGroup.Way(choice.piece(), way.items());
          var interval = way.toBest().map(difference -> interval(difference, 1));
          var value = Optional.of(way.value());
          add(name, choice.species(), group, way.bodies(), value, Comparison.NONE, interval);
        }
      }
      for (var line : parts.income()) {
        var before = new Comparison(line.before().bodies(), major(line.before()), Optional.empty());
        int bodies = line.month().bodies();
        var value = major(line.month());
        plain(FigureName.CHARGES_OF_BONING, line.species(), Band.ALL, bodies, value, before);
      }
      for (var line : parts.suppliers()) {
        add(
            FigureName.MARGIN_OF_COLD,
            line.species(),
            new FigureGroup.Named(line.supplier()),
            line.counted(),
            line.marginAUnit().map(this::major),
            Comparison.NONE,
            line.toOthers().map(difference -> interval(difference, records.minorUnits())));
      }
      return figures;
    }

    private void add(
        FigureName name,
        Species species,
        FigureGroup group,
        int bodies,
        Optional<BigFraction> value,
        Comparison before,
        Optional<Interval> interval) {
      figures.add(
          new MonthFigure(
              name,
              Optional.empty(),
              Optional.of(species),
              group,
              bodies,
              value,
              before,
              interval));
    }

    private void plain(
        FigureName name,
        Species species,
        FigureGroup group,
        int bodies,
        Optional<BigFraction> value,
        Comparison before) {
      add(name, species, group, bodies, value, before, Optional.empty());
    }

    private void loss(LossRow row) {
      var before = row.before();
      int others = before.bodies();
      var part =
          Optional.of(before).filter(Ratio::isKnown).map(ratio -> ratio.part().fraction());
      loss(
          row,
          FigureName.percentOf(row.loss()),
          row.month().percent(),
          new Comparison(others, before.percent(), row.spread()));
      loss(
          row,
          FigureName.weightOf(row.loss()),
          Optional.of(row.month().part().fraction()),
          new Comparison(others, part, Optional.empty()));
      if (row.money().isPresent()) {
        loss(
            row,
            FigureName.valueOf(row.loss()),
            row.money().map(money -> major(BigFraction.of(money.minor()))),
            new Comparison(others, Optional.empty(), Optional.empty()));
      }
    }

    private void loss(
        LossRow row, FigureName name, Optional<BigFraction> value, Comparison before) {
      figures.add(
          new MonthFigure(
              name,
              Optional.of(row.whose()),
              Optional.of(row.species()),
              row.band(),
              row.month().bodies(),
              value,
              before,
              Optional.empty()));
    }

    /** The slope with its interval, and what one more body would lose in the usual days. */
    private void hanging(Hanging hanging) {
      var trend = hanging.trend();
      double days = hanging.days().median().doubleValue();
      hanging(
          hanging,
          FigureName.AGEING_PCT_A_DAY,
          trend.slope(),
          Interval.Kind.CONFIDENCE,
          trend.slopeMargin(Hanging.CONFIDENCE));
      hanging(
          hanging,
          FigureName.AGEING_PCT_AT_MEDIAN_DAYS,
          trend.at(days),
          Interval.Kind.PREDICTION,
          trend.predictionMargin(days, Hanging.CONFIDENCE));
    }

    private void hanging(
        Hanging hanging, FigureName name, double value, Interval.Kind kind, double margin) {
      add(
          name,
          hanging.species(),
          Band.ALL,
          hanging.trend().number(),
          Optional.of(Exact.ofStatistic(value)),
          Comparison.NONE,
          Optional.of(
              new Interval(
                  kind, Exact.ofStatistic(value - margin), Exact.ofStatistic(value + margin))));
    }

    private void furtherDay(FurtherDay day) {
      furtherDay(day, FigureName.FURTHER_DAY_PCT, day.loss());
      furtherDay(day, FigureName.FURTHER_DAY_WEIGHT, day.weight());
      if (day.whose() == Ownership.OWN) {
        furtherDay(day, FigureName.FURTHER_DAY_PRICE_RISE_PCT, day.rise());
        furtherDay(day, FigureName.FURTHER_DAY_PRICE_RISE, day.priceRise());
      } else {
        furtherDay(day, FigureName.FURTHER_DAY_VALUE, day.weightWorth());
        day.charge()
            .ifPresent(
                charge ->
                    furtherDay(
                        day,
                        FigureName.FURTHER_DAY_CHARGE,
                        charge.number(),
                        Interval.Kind.MIDDLE_HALF,
                        new Range(charge.lower(), charge.median(), charge.upper())
                            .map(this::major)));
      }
    }

    private void furtherDay(FurtherDay day, FigureName name, Optional<Range> range) {
      int bodies = day.sample().bodies().size();
      range.ifPresent(r -> furtherDay(day, name, bodies, Interval.Kind.CONFIDENCE, r));
    }

    private void furtherDay(
        FurtherDay day, FigureName name, int bodies, Interval.Kind kind, Range range) {
      figures.add(
          new MonthFigure(
              name,
              Optional.of(day.whose()),
              Optional.of(day.species()),
              Band.ALL,
              bodies,
              Optional.of(range.middle()),
              Comparison.NONE,
              Optional.of(new Interval(kind, range.low(), range.high()))));
    }

    private void known(Completeness weight) {
      figures.add(
          new MonthFigure(
              FigureName.of(weight.what()),
              Optional.empty(),
              Optional.empty(),
              Band.ALL,
              weight.of(),
              Optional.of(BigFraction.of(weight.known())),
              Comparison.NONE,
              Optional.empty()));
    }

    private void boner(Species species, String boner, Difference difference) {
      add(
          FigureName.BONE_TO_OTHERS_POINTS,
          species,
          new FigureGroup.Named(boner),
          difference.bodies(),
          Optional.of(Exact.ofStatistic(difference.mean())),
          new Comparison(difference.others(), Optional.empty(), Optional.empty()),
          Optional.of(interval(difference, 1)));
    }

    private void pace(PaceLine line) {
      var group = new FigureGroup.Part(line.item(), line.boner());
      var before = line.before();
      int pieces = line.month().pieces();
      int others = before.map(Pace::pieces).orElse(0);
      plain(
          FigureName.MINUTES_A_PIECE,
          line.species(),
          group,
          pieces,
          Optional.of(line.month().each().median()),
          new Comparison(others, Optional.empty(), before.map(Pace::each)));
      plain(
          FigureName.BONED_AN_HOUR,
          line.species(),
          group,
          pieces,
          line.month().weightAnHour(),
          new Comparison(others, before.flatMap(Pace::weightAnHour), Optional.empty()));
    }

    private void worth(WorthLine line) {
      var before = line.before();
      plain(
          FigureName.WORTH_OF_COLD,
          line.species(),
          Band.ALL,
          line.month().size(),
          BodyWorth.rateOf(line.month()),
          new Comparison(before.size(), BodyWorth.rateOf(before), BodyWorth.spreadOf(before)));
      for (var body : line.month()) {
        plain(
            FigureName.WORTH_OF_COLD,
            line.species(),
            new FigureGroup.OfBody(body.account()),
            1,
            Optional.of(body.rate()),
            Comparison.NONE);
      }
    }

    private static Interval interval(Difference difference, long minorUnits) {
      return new Interval(
          Interval.Kind.DIFFERENCE,
          Exact.ofStatistic(difference.low() / minorUnits),
          Exact.ofStatistic(difference.high() / minorUnits));
    }

    private Optional<BigFraction> major(Income income) {
      return income.minorAUnit().map(this::major);
    }

    private BigFraction major(BigFraction minor) {
      return minor.divide(BigFraction.of(records.minorUnits()));
    }
  }
}
