package gambrel.weighing;

import java.util.ArrayDeque;
import java.util.Queue;

/**
 * The packed lists that are unpacked just now; the longest so are given up once there are too many
 * weighings. Softly held objects would fill the heap instead, and have it collected over and over.
 */
final class Unpacked {
  private final int most;
  private final Queue<PackedWeighings> lists = new ArrayDeque<>();
  private int weighings;

  /** Room for so many weighings. */
  Unpacked(int most) {
    this.most = most;
  }

  /** Counts a list that was unpacked. */
  synchronized void add(PackedWeighings list) {
    lists.add(list);
    weighings += list.size();
    while (weighings > most && lists.size() > 1) {
      var oldest = lists.remove();
      weighings -= oldest.size();
      oldest.forget();
    }
  }
}
