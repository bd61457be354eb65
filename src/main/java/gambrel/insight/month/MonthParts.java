package gambrel.insight.month;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.Compared;
import gambrel.insight.month.bodies.MonthRecords;
import gambrel.insight.month.findings.Completeness;
import gambrel.insight.month.loss.ChillDays;
import gambrel.insight.month.loss.FurtherDay;
import gambrel.insight.month.loss.Hanging;
import gambrel.insight.month.loss.LossChart;
import gambrel.insight.month.money.Income;
import gambrel.insight.month.money.OwnStock;
import gambrel.insight.month.money.SupplierLine;
import gambrel.insight.month.pace.BoningIntervals;
import gambrel.insight.month.pace.PaceLine;
import gambrel.insight.month.value.BodyWorth;
import gambrel.insight.month.value.CutChoice;
import gambrel.insight.month.value.CutChoices;
import gambrel.insight.month.yields.BonerComparison;
import java.util.List;

/**
 * The computed parts of a month, each made once. Findings, figures and pages read them.
 *
 * @param chills charts of chill shrink, by species
 * @param benches charts of bench loss, by species
 * @param chillDays chill shrink by day, by species
 * @param hanging ageing shrink on days hung, by species
 * @param furtherDays what one more day on the rail takes and brings
 * @param completeness how many bodies have which weight
 * @param boners the bone of each boner's bodies compared with the others'
 * @param pace times of work on the block
 * @param paceLines how fast each kind of piece was boned
 * @param worths the worth of bodies, by species
 * @param choices pieces that were cut in several ways, in the month and the twelve before
 * @param stock the shop's own bodies of the month
 * @param suppliers the shop's own bodies of the month and the twelve before, by supplier
 * @param income the charges of customers, by species
 */
public record MonthParts(
    List<LossChart> chills,
    List<LossChart> benches,
    List<ChillDays> chillDays,
    List<Hanging> hanging,
    List<FurtherDay> furtherDays,
    List<Completeness> completeness,
    List<BonerComparison> boners,
    BoningIntervals.Both pace,
    List<PaceLine> paceLines,
    List<Compared<List<BodyWorth>>> worths,
    List<CutChoice> choices,
    List<OwnStock> stock,
    List<SupplierLine> suppliers,
    List<Compared<Income>> income) {

  /** Computes the parts of a month. */
  public static MonthParts of(MonthRecords records) {
    var chills = LossChart.of(records, BodyFigure.CHILL);
    var pace = BoningIntervals.of(records);
    return new MonthParts(
        chills,
        LossChart.of(records, BodyFigure.BENCH),
        chills.stream().flatMap(chart -> ChillDays.of(chart).stream()).toList(),
        Hanging.of(records),
        FurtherDay.of(records),
        Completeness.of(records),
        BonerComparison.of(records),
        pace,
        PaceLine.of(records, pace),
        BodyWorth.of(records),
        new CutChoices(records.rail().items()).of(records.settledOfAll()),
        OwnStock.of(records, records.bodies().settled()),
        SupplierLine.of(OwnStock.of(records, records.settledOfAll())),
        Income.of(records));
  }
}
