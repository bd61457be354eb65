package gambrel.weighing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Weighings, earliest first, as bytes; they unpack themselves when they are used. */
final class PackedWeighings extends PackedList {
  private final WeighingPacker packer;
  private final Unpacked unpacked;
  private final byte[][] packed;
  private final int size;
  private volatile List<Weighing> list;

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

  /** Gives up what was unpacked. */
  void forget() {
    list = null;
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
