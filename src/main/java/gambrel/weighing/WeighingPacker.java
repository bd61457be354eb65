package gambrel.weighing;

import gambrel.measure.Weight;
import gambrel.measure.WeightUnit;
import gambrel.notice.Place;
import gambrel.shop.Scale;
import gambrel.shop.ScaleCode;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * Packs lists of weighings into a few tens of bytes a weighing and unpacks them. What many weighings
 * share, such as file, scale and code, is kept once; used by several threads at once.
 */
final class WeighingPacker {
  private static final int NONE = -1;

  /** Two longs, and fewer than sixteen whole numbers. */
  private static final int FIXED = 2 * Long.BYTES + 16 * Integer.BYTES;

  /** What cannot be deflated grows by a few bytes. */
  private static final int SLACK = 64;

  private final Map<Object, Integer> numbers = new HashMap<>();
  private final List<Object> shared = new ArrayList<>();

  /** The weighings as bytes. */
  byte[] pack(List<Weighing> weighings) {
    int most = weighings.stream().mapToInt(WeighingPacker::most).sum();
    var plain = ByteBuffer.allocate(Integer.BYTES + most).putInt(weighings.size());
    weighings.forEach(weighing -> put(weighing, plain));
    return deflated(plain.flip());
  }

  /** So many bytes hold a weighing, whatever its texts are. */
  private static int most(Weighing weighing) {
    int texts = weighing.ticket().length() + weighing.shown().toString().length();
    return FIXED + texts * Character.BYTES;
  }

  private void put(Weighing weighing, ByteBuffer to) {
    to.putInt(number(weighing.place().file()))
        .putInt(weighing.place().line())
        .putInt(number(weighing.scale()));
    put(weighing.ticket(), to);
    to.putLong(weighing.time().toEpochSecond())
        .putInt(weighing.time().getNano())
        .putInt(number(weighing.time().getOffset()))
        .putInt(number(weighing.body()))
        .putInt(number(weighing.code()))
        .putLong(weighing.net().hundredThousandths());
    put(weighing.shown().toString(), to);
    to.putInt(number(weighing.unit()))
        .putInt(weighing.pieces().orElse(NONE))
        .putInt(number(weighing.batch()))
        .putInt(number(weighing.customer()))
        .putInt(number(weighing.boner()));
  }

  private static void put(String text, ByteBuffer to) {
    to.putInt(text.length());
    text.chars().forEach(c -> to.putChar((char) c));
  }

  /** The length before, then what it was deflated to. */
  private static byte[] deflated(ByteBuffer plain) {
    var deflater = new Deflater(Deflater.BEST_SPEED);
    try {
      deflater.setInput(plain.array(), 0, plain.limit());
      deflater.finish();
      var room = ByteBuffer.allocate(Integer.BYTES + plain.limit() + SLACK).putInt(plain.limit());
      while (!deflater.finished()) {
        if (!room.hasRemaining()) {
          room = ByteBuffer.allocate(2 * room.capacity()).put(room.flip());
        }
        deflater.deflate(room);
      }
      return Arrays.copyOf(room.array(), room.position());
    } finally {
      deflater.end();
    }
  }

  private static ByteBuffer inflated(byte[] packed) {
    var inflater = new Inflater();
    try {
      var plain = ByteBuffer.allocate(ByteBuffer.wrap(packed).getInt());
      inflater.setInput(packed, Integer.BYTES, packed.length - Integer.BYTES);
      while (plain.hasRemaining()) {
        inflater.inflate(plain);
      }
      return plain.flip();
    } catch (DataFormatException e) {
      throw new IllegalStateException(e);
    } finally {
      inflater.end();
    }
  }

  /** Adds the weighings that were packed to a list, in the same order. */
  void unpack(byte[] packed, List<Weighing> to) {
    var from = inflated(packed);
    for (int left = from.getInt(); left > 0; left--) {
      to.add(weighing(from));
    }
  }

  private Weighing weighing(ByteBuffer from) {
    var place = new Place(text(from), from.getInt());
    var scale = (Scale) shared(from);
    String ticket = string(from);
    var moment = Instant.ofEpochSecond(from.getLong(), from.getInt());
    var time = moment.atOffset((ZoneOffset) shared(from));
    String body = text(from);
    var code = (ScaleCode) shared(from);
    var net = Weight.ofHundredThousandths(from.getLong());
    var shown = new BigDecimal(string(from));
    var unit = (WeightUnit) shared(from);
    int pieces = from.getInt();
    return new Weighing(
        place,
        scale,
        ticket,
        time,
        body,
        code,
        net,
        shown,
        unit,
        pieces == NONE ? Optional.empty() : Optional.of(pieces),
        text(from),
        text(from),
        text(from));
  }

  private static String string(ByteBuffer from) {
    var chars = new char[from.getInt()];
    for (int i = 0; i < chars.length; i++) {
      chars[i] = from.getChar();
    }
    return new String(chars);
  }

  private String text(ByteBuffer from) {
    return (String) shared(from);
  }

  private synchronized int number(Object one) {
    return numbers.computeIfAbsent(
        one,
        o -> {
          shared.add(o);
          return shared.size() - 1;
        });
  }

  private synchronized Object shared(ByteBuffer from) {
    return shared.get(from.getInt());
  }
}
