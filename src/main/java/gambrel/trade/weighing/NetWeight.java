package gambrel.trade.weighing;

import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Scale;
import gambrel.trade.shop.ScaleCode;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The net weight of a row: as shown, or gross less tare.
 *
 * @param net in the shop's unit
 * @param shown in the row's unit
 * @param unit the row's unit
 */
record NetWeight(Weight net, BigDecimal shown, WeightUnit unit) {
  /**
   * Divisions above its capacity up to which a scale may show a weight, as OIML R 76 has it. No
   * published source of the number is at hand; the notice says so.
   */
  private static final BigDecimal OVERLOAD_DIVISIONS = BigDecimal.valueOf(9);

  /** Reads the weights of {@code row}. */
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
    var division = in(scale.division(), scale.unit(), unit);
    if (net.isPresent() && gross.isPresent() && tare.isPresent()) {
      var difference = gross.get().subtract(tare.get()).subtract(net.get()).abs();
      if (difference.compareTo(division) > 0) {
        throw new Refusal(
            Notice.of(NoticeCode.NET_DISAGREES, row.place())
                .with("gross", new Value.Shown(gross.get()))
                .with("tare", new Value.Shown(tare.get()))
                .with("expected", new Value.Shown(gross.get().subtract(tare.get())))
                .with("found", new Value.Shown(net.get()))
                .with("difference", new Value.Shown(difference))
                .with("tolerance", new Value.Shown(division, unit)));
      }
    }
    if (net.isEmpty() && gross.isEmpty()) {
      throw new Refusal(Notice.of(NoticeCode.NET_MISSING, row.place()));
    }
    checkCapacity(gross.or(() -> net).get(), unit, scale);
    if (net.isPresent() || tare.isPresent()) {
      return of(net.orElseGet(() -> gross.get().subtract(tare.get())), unit, shopUnit);
    }
    return of(gross.get(), unit, tare(code, pieces), shopUnit);
  }

  private static NetWeight of(BigDecimal shown, WeightUnit unit, WeightUnit shopUnit)
      throws Refusal {
    return of(unit.weight(shown, shopUnit), shown, unit);
  }

  /** The code's tare is in the shop's unit; the difference is exact and rounded once. */
  private static NetWeight of(BigDecimal gross, WeightUnit unit, Weight tare, WeightUnit shopUnit)
      throws Refusal {
    var net = Weight.of(unit.convert(gross, shopUnit).subtract(tare.fraction()));
    return of(net, gross.subtract(in(tare.decimal(), shopUnit, unit)), unit);
  }

  private static NetWeight of(Weight net, BigDecimal shown, WeightUnit unit) throws Refusal {
    if (net.isNegative()) {
      throw new Refusal(
          Notice.of(NoticeCode.NET_NEGATIVE, Place.NONE).with("found", new Value.Shown(shown)));
    }
    return new NetWeight(net, shown, unit);
  }

  private static Weight tare(ScaleCode code, Optional<Integer> pieces) {
    int number = code.tareEach() ? pieces.orElse(1) : 1;
    return new Weight(Math.multiplyExact(code.tare().hundredThousandths(), (long) number));
  }

  private static void checkCapacity(BigDecimal load, WeightUnit unit, Scale scale) throws Refusal {
    if (scale.capacity().isEmpty()) {
      return;
    }
    var most = scale.capacity().get().add(scale.division().multiply(OVERLOAD_DIVISIONS));
    if (in(load, unit, scale.unit()).compareTo(most) > 0) {
      throw new Refusal(
          Notice.of(NoticeCode.OVER_CAPACITY, Place.NONE)
              .with("found", new Value.Shown(load, unit))
              .with("capacity", new Value.Shown(scale.capacity().get(), scale.unit())));
    }
  }

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
          Notice.of(NoticeCode.NUMBER_BAD, row.place())
              .with("cell", row.quoted(field))
              .with("column", field.id()));
    }
    return number;
  }
}
