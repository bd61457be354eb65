package gambrel.weighing;

import java.lang.ref.SoftReference;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.RandomAccess;
import java.util.Spliterator;

/**
 * A list of weighings, earliest first, that unpacks itself when it is used and stays so as long as
 * there is room.
 */
final class PackedWeighings extends AbstractList<Weighing> implements RandomAccess {
  private final WeighingPacker packer;
  private final byte[][] packed;
  private final int size;
  private volatile SoftReference<List<Weighing>> unpacked = new SoftReference<>(null);

  PackedWeighings(WeighingPacker packer, List<byte[]> packed, int size) {
    this.packer = packer;
    this.packed = packed.toArray(byte[][]::new);
    this.size = size;
  }

  private List<Weighing> list() {
    var list = unpacked.get();
    if (list == null) {
      list = unpack();
      unpacked = new SoftReference<>(list);
    }
    return list;
  }

  private List<Weighing> unpack() {
    var list = new ArrayList<Weighing>(size);
    for (byte[] part : packed) {
      packer.unpack(part, list);
    }
    list.sort(Weighing.BY_TIME);
    return Collections.unmodifiableList(list);
  }

  @Override
  public Weighing get(int index) {
    return list().get(index);
  }

  @Override
  public int size() {
    return size;
  }

  @Override
  public Iterator<Weighing> iterator() {
    return list().iterator();
  }

  @Override
  public Spliterator<Weighing> spliterator() {
    return list().spliterator();
  }
}
