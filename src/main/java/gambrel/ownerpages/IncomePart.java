package gambrel.ownerpages;

import gambrel.cuts.Species;
import gambrel.month.MonthRecords;
import gambrel.month.Settled;
import gambrel.month.money.Income;
import gambrel.month.pace.Pace;
import gambrel.month.pace.PaceReadings;
import gambrel.month.pace.Stints;
import gambrel.reckoning.BodyAccount;
import gambrel.statement.MoneyChapter;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** What customers were charged for a unit of weight and for an hour on the block. */
final class IncomePart {
  private final Wording wording;
  private final Rates rates;
  private final List<BodyAccount> month;
  private final List<BodyAccount> before;
  private final PaceReadings pace;

  IncomePart(MonthRecords records, Wording wording) {
    this.wording = wording;
    this.rates = new Rates(wording, records.night().shop().settings().currency());
    this.month = Settled.of(records.bodies().cut());
    this.before = Settled.of(records.baseline().cut());
    this.pace = PaceReadings.of(records);
  }

  List<MoneyChapter.Income> rows() {
    return Income.species(month).stream().map(this::row).toList();
  }

  private MoneyChapter.Income row(Species species) {
    var now = Income.of(species, month);
    var then = Income.of(species, before);
    return new MoneyChapter.Income(
        wording.say("species." + species.id()),
        wording.formats().count(now.bodies()),
        wording.formats().bareMoney(now.charges()),
        rates.minor(now.minorAUnit()),
        rates.minor(anHour(now, species, pace.month())),
        rates.minor(then.minorAUnit()),
        rates.minor(anHour(then, species, pace.before())));
  }

  private static Optional<BigFraction> anHour(Income income, Species species, Stints stints) {
    var weight = stints.of(species).flatMap(Pace::weightAnHour);
    return income.minorAUnit().flatMap(rate -> weight.map(rate::multiply));
  }

  /** How the hour is reckoned, where one is printed. */
  List<String> remarks() {
    var remarks = new ArrayList<String>();
    var rows = rows();
    if (!rows.isEmpty()) {
      remarks.add(wording.say("month.income.read"));
    }
    if (rows.stream().anyMatch(row -> !row.anHour().isEmpty())) {
      remarks.add(wording.say("month.income.hour"));
    }
    return remarks;
  }
}
