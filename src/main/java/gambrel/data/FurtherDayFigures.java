package gambrel.data;

import gambrel.measure.Exact;
import gambrel.measure.Money;
import gambrel.month.FurtherDay;
import gambrel.month.MonthRecords;
import gambrel.month.Ownership;
import gambrel.month.Range;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What one day more on the rail takes, brings and would have to bring, as figures. */
final class FurtherDayFigures {
  private static final String CONFIDENCE = "95 % confidence";
  private static final int DECIMALS = 3;

  private final FurtherDay day;
  private final List<MonthFigure> figures = new ArrayList<>();

  private FurtherDayFigures(FurtherDay day) {
    this.day = day;
  }

  static List<MonthFigure> of(MonthRecords records) {
    var settings = records.night().shop().settings();
    String unit = settings.unit().id();
    String money = settings.currency().getCurrencyCode();
    int digits = Money.digits(settings.currency());
    return FurtherDay.of(records).stream()
        .flatMap(day -> new FurtherDayFigures(day).of(unit, money, digits).stream())
        .toList();
  }

  private List<MonthFigure> of(String unit, String money, int digits) {
    add("pct", day.loss(), "%", DECIMALS);
    add("weight", day.weight(), unit, DECIMALS);
    if (day.whose() == Ownership.OWN) {
      add("price_rise_pct", day.rise(), "%", DECIMALS);
      add("price_rise", day.priceRise(), money + "/" + unit, digits + 2);
    } else {
      add("value", day.weightWorth(), money, digits);
      var minor = BigFraction.of(1, 10).pow(digits);
      day.charge()
          .map(spread -> new Range(spread.lower(), spread.median(), spread.upper()))
          .map(range -> range.map(minor::multiply))
          .ifPresent(
              range ->
                  add("charge", day.charge().get().number(), range, money, digits, "middle half"));
    }
    return figures;
  }

  private void add(String name, Optional<Range> range, String unit, int decimals) {
    int bodies = day.sample().bodies().size();
    range.ifPresent(r -> add(name, bodies, r, unit, decimals, CONFIDENCE));
  }

  private void add(
      String name, int bodies, Range range, String unit, int decimals, String interval) {
    figures.add(
        new MonthFigure(
            "further_day_" + name,
            day.whose().id(),
            day.species().id(),
            "",
            bodies,
            round(range.middle(), decimals),
            unit,
            0,
            Optional.empty(),
            Optional.empty(),
            interval,
            round(range.low(), decimals),
            round(range.high(), decimals)));
  }

  private static Optional<BigDecimal> round(BigFraction value, int decimals) {
    return Optional.of(Exact.round(value, decimals));
  }
}
