package gambrel.pages.owner.month;

import gambrel.insight.month.MonthReport;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.pages.owner.Names;
import gambrel.pages.words.Wording;

/**
 * The month, and how it is printed.
 *
 * @param report the month
 * @param wording the shop's language
 * @param weights how weights are printed
 * @param names what bodies and customers are called
 */
record MonthPage(MonthReport report, Wording wording, WeightPrinter weights, Names names) {
  static MonthPage of(MonthReport report, Wording wording) {
    var records = report.records();
    var bodies = records.bodies().bodies().stream().map(MonthBody::balance).toList();
    var weights = WeightPrinter.of(bodies, wording.formats(), records.settings().unit());
    return new MonthPage(report, wording, weights, new Names(records.night(), wording));
  }
}
