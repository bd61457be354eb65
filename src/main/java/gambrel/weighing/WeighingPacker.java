package gambrel.weighing;

import gambrel.measure.Weight;
import gambrel.measure.WeightUnit;
import gambrel.notice.Place;
import gambrel.shop.Scale;
import gambrel.shop.ScaleCode;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/**
 * Packs lists of weighings into a few bytes a weighing and unpacks them. What many weighings share,
 * such as file, scale and code, is kept once; used by several threads at once.
 */
final class WeighingPacker {
  private static final int NONE = -1;

  private final Map<Object, Integer> numbers = new HashMap<>();
  private final List<Object> shared = new ArrayList<>();

  /** The weighings as bytes. */
  byte[] pack(List<Weighing> weighings) {
    var to = new ColumnWriter();
    to.count(weighings.size());
    to.numbers(weighings, numberOf(w -> w.place().file()));
    to.numbers(weighings, w -> w.place().line());
    to.numbers(weighings, numberOf(Weighing::scale));
    to.texts(weighings, Weighing::ticket);
    to.numbers(weighings, w -> w.time().toEpochSecond());
    to.numbers(weighings, w -> w.time().getNano());
    to.numbers(weighings, numberOf(w -> w.time().getOffset()));
    to.numbers(weighings, numberOf(Weighing::body));
    to.numbers(weighings, numberOf(Weighing::code));
    to.numbers(weighings, w -> w.net().hundredThousandths());
    to.numbers(weighings, w -> isLong(w.shown()) ? w.shown().unscaledValue().longValue() : 0);
    to.numbers(weighings, w -> w.shown().scale());
    to.texts(weighings, w -> isLong(w.shown()) ? "" : w.shown().unscaledValue().toString());
    to.numbers(weighings, numberOf(Weighing::unit));
    to.numbers(weighings, w -> w.pieces().orElse(NONE));
    to.numbers(weighings, numberOf(Weighing::batch));
    to.numbers(weighings, numberOf(Weighing::customer));
    to.numbers(weighings, numberOf(Weighing::boner));
    return to.deflated();
  }

  /** Adds the weighings that were packed to a list, in the same order. */
  void unpack(byte[] packed, List<Weighing> to) {
    var from = new ColumnReader(packed);
    int size = (int) from.count();
    var files = shared(from.numbers(size));
    var lines = from.numbers(size);
    var scales = shared(from.numbers(size));
    var tickets = from.texts(size);
    var seconds = from.numbers(size);
    var nanos = from.numbers(size);
    var offsets = shared(from.numbers(size));
    var bodies = shared(from.numbers(size));
    var codes = shared(from.numbers(size));
    var nets = from.numbers(size);
    var shown = from.numbers(size);
    var decimals = from.numbers(size);
    var longer = from.texts(size);
    var units = shared(from.numbers(size));
    var pieces = from.numbers(size);
    var batches = shared(from.numbers(size));
    var customers = shared(from.numbers(size));
    var boners = shared(from.numbers(size));
    for (int i = 0; i < size; i++) {
      to.add(
          new Weighing(
              new Place((String) files[i], (int) lines[i]),
              (Scale) scales[i],
              tickets[i],
              time(seconds[i], nanos[i], (ZoneOffset) offsets[i]),
              (String) bodies[i],
              (ScaleCode) codes[i],
              Weight.ofHundredThousandths(nets[i]),
              longer[i].isEmpty()
                  ? BigDecimal.valueOf(shown[i], (int) decimals[i])
                  : new BigDecimal(new BigInteger(longer[i]), (int) decimals[i]),
              (WeightUnit) units[i],
              pieces[i] == NONE ? Optional.empty() : Optional.of((int) pieces[i]),
              (String) batches[i],
              (String) customers[i],
              (String) boners[i]));
    }
  }

  /** No scale shows more digits; a row may. */
  private static boolean isLong(BigDecimal shown) {
    return shown.unscaledValue().bitLength() < Long.SIZE;
  }

  /** Not by way of an instant, which makes rules for the offset each time. */
  private static OffsetDateTime time(long seconds, long nanos, ZoneOffset offset) {
    return OffsetDateTime.of(
        LocalDateTime.ofEpochSecond(seconds, (int) nanos, offset), offset);
  }

  /** Looks up once what stands in a run of weighings. */
  private ToLongFunction<Weighing> numberOf(Function<Weighing, Object> part) {
    return new ToLongFunction<>() {
      private Object last;
      private int number;

      @Override
      public long applyAsLong(Weighing weighing) {
        var one = part.apply(weighing);
        if (one != last) {
          last = one;
          number = number(one);
        }
        return number;
      }
    };
  }

  private synchronized int number(Object one) {
    return numbers.computeIfAbsent(
        one,
        o -> {
          shared.add(o);
          return shared.size() - 1;
        });
  }

  private synchronized Object[] shared(long[] numbers) {
    var parts = new Object[numbers.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = shared.get((int) numbers[i]);
    }
    return parts;
  }
}
