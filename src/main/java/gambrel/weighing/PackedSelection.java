package gambrel.weighing;

import java.util.Arrays;
import java.util.List;

/** Some of a list of packed weighings, known by their numbers in it. */
final class PackedSelection extends PackedList {
  private final PackedWeighings whole;

  /** A body has thousands of weighings at the most: two bytes each are enough, four rarely needed. */
  private final char[] few;

  private final int[] many;

  /** The first {@code count} of {@code numbers}. */
  PackedSelection(PackedWeighings whole, int[] numbers, int count) {
    this.whole = whole;
    if (whole.size() <= Character.MAX_VALUE) {
      few = new char[count];
      for (int i = 0; i < count; i++) {
        few[i] = (char) numbers[i];
      }
      many = null;
    } else {
      few = null;
      many = Arrays.copyOf(numbers, count);
    }
  }

  @Override
  List<Weighing> list() {
    var all = whole.list();
    var chosen = new Weighing[size()];
    for (int i = 0; i < chosen.length; i++) {
      chosen[i] = all.get(number(i));
    }
    return List.of(chosen);
  }

  @Override
  public Weighing get(int index) {
    return whole.get(number(index));
  }

  @Override
  public int size() {
    return few == null ? many.length : few.length;
  }

  @Override
  PackedWeighings whole() {
    return whole;
  }

  @Override
  int number(int index) {
    return few == null ? many[index] : few[index];
  }
}
