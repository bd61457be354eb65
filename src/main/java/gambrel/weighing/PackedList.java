package gambrel.weighing;

import java.util.AbstractList;
import java.util.Iterator;
import java.util.List;
import java.util.RandomAccess;
import java.util.Spliterator;
import java.util.function.Predicate;

/** A list that keeps no weighing as an object but while it is used. */
abstract sealed class PackedList extends AbstractList<Weighing> implements RandomAccess
    permits PackedWeighings, PackedSelection {
  /** The weighings as objects, for as long as the caller holds them. */
  abstract List<Weighing> list();

  /** What this list is packed in. */
  abstract PackedWeighings whole();

  /** Which one of {@link #whole()} stands here. */
  abstract int number(int index);

  /** Those that pass, packed too. */
  List<Weighing> choose(Predicate<Weighing> which) {
    var all = list();
    var numbers = new int[all.size()];
    int count = 0;
    for (int i = 0; i < numbers.length; i++) {
      if (which.test(all.get(i))) {
        numbers[count++] = number(i);
      }
    }
    return count == numbers.length ? this : selection(numbers, count);
  }

  /** Some of its weighings in their own order, packed too. */
  List<Weighing> some(List<Weighing> some) {
    if (some.isEmpty()) {
      return List.of();
    }
    var all = list();
    var numbers = new int[some.size()];
    int count = 0;
    for (var weighing : some) {
      int at = 0;
      while (!all.get(at).place().equals(weighing.place())) {
        at++;
      }
      numbers[count++] = number(at);
    }
    return selection(numbers, count);
  }

  /** Nothing is not packed, so that nobody unpacks a body to find nothing in it. */
  private List<Weighing> selection(int[] numbers, int count) {
    return count == 0 ? List.of() : new PackedSelection(whole(), numbers, count);
  }

  @Override
  public Weighing get(int index) {
    return list().get(index);
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
