package gambrel.ownerpages;

import gambrel.measure.Weight;
import gambrel.month.Hanging;
import gambrel.month.MonthRecords;
import gambrel.statement.ShrinkChapter;
import gambrel.statement.SummaryView.Counted;
import gambrel.wording.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What a day on the rail costs. */
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
            .orElse(""));
  }

  private String percent(double value) {
    return wording
        .formats()
        .number(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP));
  }
}
