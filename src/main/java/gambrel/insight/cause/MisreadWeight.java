package gambrel.insight.cause;

import gambrel.trade.measure.Groups;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds weights that are ten or a hundred times too large or too small for what was weighed; and
 * pounds taken for kilograms, or the reverse, in one row or on a scale's whole day.
 */
record MisreadWeight(RowIndex rows, BodyFacts suspect) {
  private static final long DECIMAL = 100;
  private static final long UNIT_OF_A_DAY = 200;
  private static final long UNIT_OF_A_BODY = 300;
  private static final long UNIT_OF_A_ROW = 200;
  private static final int LEAST_ROWS = 3;
  private static final Map<WeightUnit, WeightUnit> OTHER_UNIT =
      Map.of(WeightUnit.KG, WeightUnit.LB, WeightUnit.LB, WeightUnit.KG);

  Stream<Candidate> candidates() {
    return Stream.of(
            suspect.weighings().stream().flatMap(this::slips),
            rows.setAside(NoticeCode.OVER_CAPACITY)
                .filter(aside -> aside.bodies().contains(suspect.id))
                .map(aside -> rows.row(aside.notice().place()))
                .flatMap(this::overCapacity),
            suspect.weighings().stream().flatMap(row -> unitOfRow(row).stream()),
            rows.days(suspect.id).flatMap(this::unitOfDay),
            packsOfBatches().flatMap(packs -> unitOf(packs, UNIT_OF_A_BODY)))
        .flatMap(found -> found);
  }

  /** A weight far from that of others, with the point where the weight comes near theirs. */
  private Stream<Candidate> slips(Weighing row) {
    boolean typed = !rows.cell(row, Field.NET).isEmpty() && rows.cell(row, Field.GROSS).isEmpty();
    return rows.ranges.ofOthers(row).stream()
        .filter(range -> range.isFar(row.net().hundredThousandths()))
        .filter(range -> typed && rows.isUncorrected(row))
        .flatMap(
            range ->
                Stream.of(1, -1, 2, -2)
                    .map(places -> slip(row, row.shown().scaleByPowerOfTen(places)))
                    .filter(slip -> range.isNear(slip.first().net()))
                    .map(slip -> slip.with("witness", range.phrase())));
  }

  private Candidate slip(Weighing row, BigDecimal net) {
    var change = RowChange.net(row, Tares.plain(net), Optional.empty(), rows.unit());
    return Candidate.of(Cause.DECIMAL, change, DECIMAL);
  }

  /** A weight beyond what the scale can weigh is set aside and so in no sum. */
  private Stream<Candidate> overCapacity(ExportRow row) {
    return Stream.of(-1, -2)
        .filter(places -> row.get(Field.GROSS).isEmpty())
        .flatMap(
            places ->
                DecimalText.of(row.get(Field.NET)).stream()
                    .map(net -> net.scaleByPowerOfTen(places)))
        .flatMap(net -> rows.alone(row.with(Field.NET, net.toPlainString())).stream())
        .filter(rows::isUncorrected)
        .filter(
            weighing ->
                rows.ranges
                    .ofOthers(weighing)
                    .filter(range -> range.isNear(weighing.net().hundredThousandths()))
                    .isPresent())
        .map(weighing -> slip(weighing, weighing.shown()))
        .map(slip -> slip.with("witness", Phrase.of("CAUSE.CAPACITY")).notEstimated());
  }

  /** A row outside the range of others and, read in the other unit, inside. */
  private Optional<Candidate> unitOfRow(Weighing row) {
    return inOtherUnit(List.of(row), UNIT_OF_A_ROW)
        .flatMap(
            candidate ->
                rows.ranges
                    .ofOthers(row)
                    .filter(range -> !range.holds(row.net().hundredThousandths()))
                    .filter(range -> range.holds(candidate.first().net()))
                    .map(range -> candidate.with("witness", range.phrase())));
  }

  /** All that a scale weighed on a day, and what it weighed of the suspect. */
  private Stream<Candidate> unitOfDay(List<Weighing> day) {
    var own = day.stream().filter(w -> w.body().equals(suspect.id)).toList();
    var all = own.size() < day.size() ? unitOf(day, UNIT_OF_A_DAY) : Stream.<Candidate>empty();
    return Stream.concat(all, unitOf(own, UNIT_OF_A_BODY));
  }

  /** The packs of batches that are out of balance, for each scale and day. */
  private Stream<List<Weighing>> packsOfBatches() {
    var packs = suspect.weighings().stream().filter(w -> w.inBatch() && w.step() == Step.PACK);
    return Groups.inOrder(packs, RowIndex.ScaleDay::of).values().stream();
  }

  private Stream<Candidate> unitOf(List<Weighing> some, long penalty) {
    return some.size() < LEAST_ROWS ? Stream.empty() : inOtherUnit(some, penalty).stream();
  }

  /** Rows read in the other unit; empty if one was corrected or is in neither unit. */
  private Optional<Candidate> inOtherUnit(List<Weighing> some, long penalty) {
    return some.stream()
            .allMatch(row -> rows.isUncorrected(row) && OTHER_UNIT.containsKey(row.unit()))
        ? Optional.of(
            Candidate.of(
                Cause.UNIT,
                some.stream()
                    .map(row -> RowChange.unit(row, OTHER_UNIT.get(row.unit()), rows.unit()))
                    .toList(),
                penalty))
        : Optional.empty();
  }
}
