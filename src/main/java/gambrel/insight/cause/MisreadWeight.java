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
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds weights that are ten or a hundred times too large or too small for what was weighed, or in
 * which two digits beside each other are exchanged; and pounds taken for kilograms, or the reverse,
 * in one row or on a scale's whole day.
 */
record MisreadWeight(RowIndex rows, BodyFacts suspect) {
  private static final long MISREAD = 500;

  /** It still counts among the changes that might have been. */
  private static final long RULED_OUT = -10_000;

  private static final long UNIT_OF_A_DAY = 500;
  private static final long UNIT_OF_A_BODY = 700;
  private static final long UNIT_OF_A_ROW = 800;
  private static final int LEAST_ROWS = 3;
  private static final Map<WeightUnit, WeightUnit> OTHER_UNIT =
      Map.of(WeightUnit.KG, WeightUnit.LB, WeightUnit.LB, WeightUnit.KG);

  Stream<Candidate> candidates() {
    return Stream.of(
            suspect.weighings().stream().filter(this::isTyped).flatMap(this::slips),
            suspect.weighings().stream().filter(this::isTyped).flatMap(this::exchanges),
            rows.setAside(NoticeCode.OVER_CAPACITY)
                .filter(aside -> aside.bodies().contains(suspect.id))
                .map(aside -> rows.row(aside.notice().place()))
                .flatMap(this::overCapacity),
            suspect.weighings().stream().flatMap(row -> unitOfRow(row).stream()),
            rows.days(suspect.id).flatMap(this::unitOfDay),
            packsOfBatches().flatMap(packs -> unitOf(packs, UNIT_OF_A_BODY)))
        .flatMap(found -> found);
  }

  /** Whether a row has its net weight alone, which no other weight of the row contradicts. */
  private boolean isTyped(Weighing row) {
    return !rows.cell(row, Field.NET).isEmpty()
        && rows.cell(row, Field.GROSS).isEmpty()
        && row.shown().signum() > 0
        && rows.isUncorrected(row);
  }

  /** A weight far from that of others, with the point one or two places further. */
  private Stream<Candidate> slips(Weighing row) {
    return rows.ranges.ofOthers(row).stream()
        .flatMap(
            range ->
                Stream.of(1, -1, 2, -2)
                    .map(places -> row.shown().scaleByPowerOfTen(places))
                    .map(net -> misread(Cause.DECIMAL, row, net, range, isFar(row, range))));
  }

  /** A weight with each two digits beside each other exchanged. */
  private Stream<Candidate> exchanges(Weighing row) {
    // One digit at least stands before the point.
    int places = Math.max(0, row.shown().scale());
    var unscaled = row.shown().setScale(places).unscaledValue().toString();
    var digits = "0".repeat(Math.max(0, places + 1 - unscaled.length())) + unscaled;
    return rows.ranges.ofOthers(row).stream()
        .flatMap(
            range ->
                IntStream.range(1, digits.length())
                    .filter(at -> digits.charAt(at) != digits.charAt(at - 1))
                    .mapToObj(at -> new BigDecimal(exchanged(digits, at), places))
                    .filter(net -> net.signum() > 0)
                    .map(net -> misread(Cause.DIGITS_TRANSPOSED, row, net, range, true)));
  }

  private static boolean isFar(Weighing row, CodeRanges.Range range) {
    return range.isFar(row.net().hundredThousandths());
  }

  private static BigInteger exchanged(String digits, int at) {
    return new BigInteger(
        digits.substring(0, at - 1)
            + digits.charAt(at)
            + digits.charAt(at - 1)
            + digits.substring(at + 1));
  }

  /**
   * A row with another weight. It is ruled out unless it is possible, and the scale can show the
   * weight as one of its like.
   */
  private Candidate misread(
      Cause cause, Weighing row, BigDecimal net, CodeRanges.Range range, boolean possible) {
    var change = RowChange.net(row, Tares.plain(net), Optional.empty(), rows.unit());
    return witnessed(Candidate.of(cause, change, MISREAD), range, possible && row.isWhole(net));
  }

  /** With the evidence of the row itself; ruled out if its weight would then be unlike others. */
  private Candidate witnessed(Candidate candidate, CodeRanges.Range range, boolean possible) {
    long net = candidate.first().net();
    long odder = rows.ranges.odder(candidate.first().weighing(), net);
    return candidate
        .witnessed(possible && range.holds(net) ? odder : RULED_OUT)
        .with("witness", range.phrase());
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
        .flatMap(
            weighing ->
                rows
                    .ranges
                    .ofOthers(weighing)
                    .filter(range -> range.holds(weighing.net().hundredThousandths()))
                    .map(range -> misread(Cause.DECIMAL, weighing, weighing.shown(), range, true))
                    .stream())
        .map(slip -> slip.with("witness", Phrase.of("CAUSE.CAPACITY")).notEstimated());
  }

  /** A row outside the range of others and, read in the other unit, inside. */
  private Optional<Candidate> unitOfRow(Weighing row) {
    return inOtherUnit(List.of(row), UNIT_OF_A_ROW)
        .flatMap(
            candidate ->
                rows.ranges
                    .ofOthers(row)
                    .map(
                        range ->
                            witnessed(
                                candidate, range, !range.holds(row.net().hundredThousandths()))));
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

  private Stream<Candidate> unitOf(List<Weighing> some, long prior) {
    return some.size() < LEAST_ROWS ? Stream.empty() : inOtherUnit(some, prior).stream();
  }

  /** Rows read in the other unit; empty if one was corrected or is in neither unit. */
  private Optional<Candidate> inOtherUnit(List<Weighing> some, long prior) {
    return some.stream()
            .allMatch(row -> rows.isUncorrected(row) && OTHER_UNIT.containsKey(row.unit()))
        ? Optional.of(
            Candidate.of(
                Cause.UNIT,
                some.stream()
                    .map(row -> RowChange.unit(row, OTHER_UNIT.get(row.unit()), rows.unit()))
                    .toList(),
                prior))
        : Optional.empty();
  }
}
