package gambrel.ownerpages;

import gambrel.measure.Exact;
import gambrel.measure.Money;
import gambrel.measure.Weight;
import gambrel.month.Hanging;
import gambrel.month.MonthRecords;
import gambrel.shop.Charge;
import gambrel.statement.ShrinkChapter;
import gambrel.statement.SummaryView.Counted;
import gambrel.wording.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What a day on the rail costs, and what is charged for it. */
final class HangingPart {
  private static final int DECIMALS = 2;

  private final MonthRecords records;
  private final Wording wording;

  HangingPart(MonthRecords records, Wording wording) {
    this.records = records;
    this.wording = wording;
  }

  List<ShrinkChapter.Hanging> rows() {
    return Hanging.of(records).stream().map(this::row).toList();
  }

  private ShrinkChapter.Hanging row(Hanging hanging) {
    var trend = hanging.trend();
    double margin = trend.slopeMargin(Hanging.CONFIDENCE);
    var weight = hanging.weightADay();
    return new ShrinkChapter.Hanging(
        wording.say("species." + hanging.species().id()),
        wording.say(
            "shrink.between",
            wording.formats().quantity(hanging.days().lower(), 0),
            wording.formats().quantity(hanging.days().upper(), 0)),
        new Counted(percent(trend.slope()), wording.formats().count(trend.number())),
        wording.say(
            "shrink.between", percent(trend.slope() - margin), percent(trend.slope() + margin)),
        wording.formats().bareWeight(Weight.of(weight), DECIMALS),
        records
            .rail()
            .of(hanging.species(), weight)
            .map(wording.formats()::bareMoney)
            .orElse(""),
        charged(hanging));
  }

  private String percent(double value) {
    return wording
        .formats()
        .number(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP));
  }

  /** The charge a day in force on the month's last day; of several the last that names no body. */
  private String charged(Hanging hanging) {
    var day = records.baseline().lastDay();
    var currency = records.night().shop().settings().currency();
    return records.night().shop().charges().stream()
        .filter(c -> c.basis() == Charge.Basis.DAY && c.body().isEmpty())
        .filter(c -> c.species().isEmpty() || c.species().equals(hanging.species().id()))
        .filter(c -> c.from().filter(from -> from.isAfter(day)).isEmpty())
        .filter(c -> c.to().filter(to -> to.isBefore(day)).isEmpty())
        .reduce((first, last) -> last)
        .map(c -> wording.formats().bareMoney(Money.of(Exact.fraction(c.price()), currency)))
        .orElse("");
  }
}
