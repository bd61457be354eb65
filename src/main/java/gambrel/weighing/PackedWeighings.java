package gambrel.weighing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;

/** Weighings, earliest first, as bytes; they unpack themselves when they are used. */
final class PackedWeighings extends PackedList {
  private final WeighingPacker packer;
  private final Unpacked unpacked;
  private final byte[][] packed;
  private final int size;
  private volatile List<Weighing> list;
  private volatile Object drawn;

  PackedWeighings(WeighingPacker packer, Unpacked unpacked, List<byte[]> packed, int size) {
    this.packer = packer;
    this.unpacked = unpacked;
    this.packed = packed.toArray(byte[][]::new);
    this.size = size;
  }

  @Override
  List<Weighing> list() {
    var known = list;
    if (known == null) {
      known = unpack();
      list = known;
      unpacked.add(this);
    }
    return known;
  }

  /** Gives up what was unpacked and what was drawn from it. */
  void forget() {
    list = null;
    drawn = null;
  }

  /** What {@code how} draws from it, kept as long as it is unpacked; always the same {@code how}. */
  <T> T drawn(Supplier<T> how) {
    var known = drawn;
    if (known == null) {
      known = how.get();
      drawn = known;
    }
    @SuppressWarnings("unchecked") // nothing else is ever put in
    var found = (T) known;
    return found;
  }

  private List<Weighing> unpack() {
    var all = new ArrayList<Weighing>(size);
    for (byte[] part : packed) {
      packer.unpack(part, all);
    }
    all.sort(Weighing.BY_TIME);
    return Collections.unmodifiableList(all);
  }

  @Override
  public int size() {
    return size;
  }

  @Override
  PackedWeighings whole() {
    return this;
  }

  @Override
  int number(int index) {
    return index;
  }
}
