package gambrel.insight.cause;

import gambrel.trade.measure.Groups;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
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
 * in a run of weighings or on a scale's whole day.
 */
record MisreadWeight(RowIndex rows, BodyFacts suspect) {
  private static final long SLIPPED = 500;
  private static final long EXCHANGED = 800;

  /** It still counts among the changes that might have been. */
  private static final long RULED_OUT = -10_000;

  private static final long UNIT_OF_A_DAY = 500;
  private static final long UNIT_OF_A_RUN = 500;
  private static final Map<WeightUnit, WeightUnit> OTHER_UNIT =
      Map.of(WeightUnit.KG, WeightUnit.LB, WeightUnit.LB, WeightUnit.KG);

  Stream<Candidate> candidates() {
    var weighed = suspect.weighings().stream().filter(w -> w.step().movesMass());
    var runs = Groups.inOrder(weighed.sorted(Weighing.BY_TIME), RowIndex.ScaleDay::of);
    return Stream.of(
            suspect.weighings().stream().filter(this::isTyped).flatMap(this::slips),
            rows.setAside(NoticeCode.OVER_CAPACITY)
                .filter(aside -> aside.bodies().contains(suspect.id))
                .map(aside -> rows.row(aside.notice().place()))
                .flatMap(this::overCapacity),
            rows.days(suspect.id).flatMap(day -> inOtherUnit(day, UNIT_OF_A_DAY)),
            runs.values().stream().flatMap(this::unitOfRun))
        .flatMap(found -> found);
  }

  /** Whether a row has its net weight alone, which no other weight of the row contradicts. */
  private boolean isTyped(Weighing row) {
    return !rows.cell(row, Field.NET).isEmpty()
        && rows.cell(row, Field.GROSS).isEmpty()
        && row.shown().signum() > 0
        && rows.isUncorrected(row);
  }

  /** A weight with its point one or two places further, and with each two digits exchanged. */
  private Stream<Candidate> slips(Weighing row) {
    // One digit at least stands before the point.
    int places = Math.max(0, row.shown().scale());
    var unscaled = row.shown().setScale(places).unscaledValue().toString();
    var digits = "0".repeat(Math.max(0, places + 1 - unscaled.length())) + unscaled;
    return Stream.concat(
        Stream.of(1, -1, 2, -2)
            .flatMap(far -> misread(Cause.DECIMAL, row, row.shown().scaleByPowerOfTen(far))),
        IntStream.range(1, digits.length())
            .filter(at -> digits.charAt(at) != digits.charAt(at - 1))
            .mapToObj(at -> new BigDecimal(exchanged(digits, at), places))
            .filter(net -> net.signum() > 0)
            .flatMap(net -> misread(Cause.DIGITS_TRANSPOSED, row, net)));
  }

  private static BigInteger exchanged(String digits, int at) {
    return new BigInteger(
        digits.substring(0, at - 1)
            + digits.charAt(at)
            + digits.charAt(at - 1)
            + digits.substring(at + 1));
  }

  /** A row like some others with another weight; ruled out if the scale cannot show it. */
  private Stream<Candidate> misread(Cause cause, Weighing row, BigDecimal net) {
    var change = RowChange.net(row, Tares.plain(net), Optional.empty(), rows.unit());
    return rows.ranges.ofOthers(row).stream()
        .map(
            range ->
                Candidate.of(cause, change, cause == Cause.DECIMAL ? SLIPPED : EXCHANGED)
                    .witnessed(row.isWhole(net) ? odder(change) : RULED_OUT)
                    .with("witness", range.phrase()));
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
        .flatMap(weighing -> misread(Cause.DECIMAL, weighing, weighing.shown()))
        .map(slip -> slip.with("witness", Phrase.of("CAUSE.CAPACITY")).notEstimated());
  }

  /** The run of a body's weighings at a scale that looks the most odd beside the other unit. */
  private Stream<Candidate> unitOfRun(List<Weighing> own) {
    var odder = own.stream().map(w -> inOtherUnit(w).map(this::odder).orElse(RULED_OUT)).toList();
    var best = List.<Weighing>of();
    long most = 0;
    for (int from = 0; from < own.size(); from++) {
      long sum = 0;
      for (int to = from; to < own.size(); to++) {
        sum += odder.get(to);
        if (sum > most) {
          most = sum;
          best = own.subList(from, to + 1);
        }
      }
    }
    return inOtherUnit(best, UNIT_OF_A_RUN + Odds.of(own.size() * (own.size() + 1L) / 2));
  }

  private long odder(RowChange change) {
    return rows.ranges.odder(change.weighing(), change.net());
  }

  /** Rows read in the other unit; none if one was corrected or is in neither unit. */
  private Stream<Candidate> inOtherUnit(List<Weighing> some, long prior) {
    var changes = some.stream().flatMap(row -> inOtherUnit(row).stream()).toList();
    if (changes.isEmpty() || changes.size() < some.size()) {
      return Stream.empty();
    }
    var unit =
        Candidate.of(Cause.UNIT, changes, prior)
            .witnessed(changes.stream().mapToLong(this::odder).sum());
    var range = rows.ranges.ofOthers(some.get(0));
    return Stream.of(range.map(r -> unit.with("witness", r.phrase())).orElse(unit));
  }

  private Optional<RowChange> inOtherUnit(Weighing row) {
    return Optional.of(row)
        .filter(rows::isUncorrected)
        .map(w -> OTHER_UNIT.get(w.unit()))
        .map(unit -> RowChange.unit(row, unit, rows.unit()));
  }
}
