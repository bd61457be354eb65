package gambrel.trade.weighing;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The net weight of a row: as the scale shows it, or gross less tare.
 *
 * @param net in the shop's unit
 * @param shown in the row's unit
 */
record NetWeight(Weight net, BigDecimal shown) {
  /**
   * A scale may show weights up to so many divisions above its capacity, as OIML R 76 has it. The
   * number has no published source at hand; the notice says so.
   */
  private static final BigDecimal OVERLOAD_DIVISIONS = BigDecimal.valueOf(9);

  /**
   * Reads the weights of {@code row}, which are in {@code unit}. A net weight counts before gross
   * less tare; without a tare cell the tare of the code is subtracted. Zero is refused but for a
   * test weight.
   */
  static NetWeight of(
      ExportRow row,
      WeightUnit unit,
      Scale scale,
      ScaleCode code,
      Optional<Integer> pieces,
      WeightUnit shopUnit)
      throws Refusal {
    var net = number(row, Field.NET);
    var gross = number(row, Field.GROSS);
    var tare = number(row, Field.TARE);
    if (net.isPresent() && gross.isPresent() && tare.isPresent()) {
      checkDifference(gross.get(), tare.get(), net.get(), unit, scale);
    }
    var load =
        gross.or(() -> net).orElseThrow(() -> new Refusal(Notice.of(NoticeCode.NET_MISSING)));
    checkCapacity(load, unit, scale);
    if (net.isPresent() || tare.isPresent()) {
      var shown = net.orElseGet(() -> load.subtract(tare.get()));
      checkLabels(row, shown, unit, scale);
      return checked(unit.weight(shown, shopUnit), shown, code);
    }
    // The code's tare is in the shop's unit; the difference is exact and rounded once.
    var ofCode = tare(code, pieces);
    var shown = load.subtract(in(ofCode.decimal(), shopUnit, unit));
    checkLabels(row, shown, unit, scale);
    return checked(
        Weight.of(unit.convert(load, shopUnit).subtract(ofCode.fraction())), shown, code);
  }

  private static NetWeight checked(Weight net, BigDecimal shown, ScaleCode code) throws Refusal {
    if (net.isZero() && code.step() != Step.TEST) {
      throw new Refusal(Notice.of(NoticeCode.NET_ZERO));
    }
    if (net.isNegative()) {
      throw new Refusal(Notice.of(NoticeCode.NET_NEGATIVE).with("found", new Value.Shown(shown)));
    }
    return new NetWeight(net, shown);
  }

  private static Weight tare(ScaleCode code, Optional<Integer> pieces) {
    int number = code.tareEach() ? pieces.orElse(1) : 1;
    return new Weight(Math.multiplyExact(code.tare().hundredThousandths(), (long) number));
  }

  /** Refuses a net weight that differs from gross less tare by more than a division. */
  private static void checkDifference(
      BigDecimal gross, BigDecimal tare, BigDecimal net, WeightUnit unit, Scale scale)
      throws Refusal {
    var division = in(scale.division(), scale.unit(), unit);
    var expected = gross.subtract(tare);
    var difference = expected.subtract(net).abs();
    if (difference.compareTo(division) > 0) {
      throw new Refusal(
          Notice.of(NoticeCode.NET_DISAGREES)
              .with("gross", new Value.Shown(gross))
              .with("tare", new Value.Shown(tare))
              .with("expected", new Value.Shown(expected))
              .with("found", new Value.Shown(net))
              .with("difference", new Value.Shown(difference))
              .with("tolerance", new Value.Shown(division, unit)));
    }
  }

  /** Refuses a weight from which one on the label differs by more than a division. */
  private static void checkLabels(ExportRow row, BigDecimal shown, WeightUnit unit, Scale scale)
      throws Refusal {
    var division = in(scale.division(), scale.unit(), unit);
    for (var label : row.labels()) {
      var on = in(label.value(), label.unit().orElse(unit), unit);
      if (on.subtract(shown).abs().compareTo(division) > 0) {
        throw new Refusal(
            Notice.of(NoticeCode.NET_DISAGREES, "LABEL")
                .with("found", new Value.Shown(shown))
                .with("label", new Value.Shown(on))
                .with("tolerance", new Value.Shown(division, unit)));
      }
    }
  }

  private static void checkCapacity(BigDecimal load, WeightUnit unit, Scale scale) throws Refusal {
    if (scale.capacity().isEmpty()) {
      return;
    }
    var capacity = scale.capacity().get();
    var most = capacity.add(scale.division().multiply(OVERLOAD_DIVISIONS));
    if (in(load, unit, scale.unit()).compareTo(most) > 0) {
      throw new Refusal(
          Notice.of(NoticeCode.OVER_CAPACITY)
              .with("found", new Value.Shown(load, unit))
              .with("capacity", new Value.Shown(capacity, scale.unit())));
    }
  }

  /** A weight in another unit, rounded to the decimals of a weight. */
  private static BigDecimal in(BigDecimal value, WeightUnit from, WeightUnit to) {
    return from == to ? value : Exact.round(from.convert(value, to), Weight.DECIMALS);
  }

  private static Optional<BigDecimal> number(ExportRow row, Field field) throws Refusal {
    String text = row.get(field);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    var number = DecimalText.of(text);
    if (number.isEmpty()) {
      throw new Refusal(
          Notice.of(NoticeCode.NUMBER_BAD)
              .with("cell", row.quoted(field))
              .with("column", field.id()));
    }
    return number;
  }
}
