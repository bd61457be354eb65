package gambrel.trade.rows;

import gambrel.trade.measure.Groups;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Numbers the equal rows of scales that count no tickets. Equal rows in one file are different
 * weighings: the first is number 0, the next number 1. Each file begins at 0 again. Where files
 * overlap, rows with one number are therefore the same weighing, and the file with the most equal
 * rows decides how many weighings there were.
 */
final class EqualRowCounter {
  /** For each key, the contents of its weighings in the order of their numbers. */
  private final Map<KeyedRow.Key, List<String>> contents = new HashMap<>();

  private final List<KeyedRow> numbered;

  private EqualRowCounter(List<KeyedRow> rows) {
    numbered = new ArrayList<>(rows);
  }

  /**
   * The same rows; each row whose layout gives it an identity has its number in its key.
   *
   * @param rows in file and line order
   */
  static List<KeyedRow> number(List<KeyedRow> rows) {
    var counter = new EqualRowCounter(rows);
    // Voids come last: they cancel a weighing of any file and add none.
    counter.numberGroups(false);
    counter.numberGroups(true);
    return counter.numbered;
  }

  private void numberGroups(boolean voids) {
    var positions =
        IntStream.range(0, numbered.size())
            .boxed()
            .filter(i -> numbered.get(i).key().isIdentity())
            .filter(i -> numbered.get(i).status().isVoid() == voids);
    Groups.inOrder(positions, i -> List.of(numbered.get(i).place().file(), numbered.get(i).key()))
        .values()
        .forEach(this::numberGroup);
  }

  /**
   * Numbers the rows of one file and key: first each row that has the content of a known weighing,
   * then the others in their order.
   */
  private void numberGroup(List<Integer> group) {
    var first = numbered.get(group.get(0));
    var known = contents.computeIfAbsent(first.key(), k -> new ArrayList<>());
    var free =
        Groups.inOrder(IntStream.range(0, known.size()).boxed(), number -> known.get(number));
    var taken = new HashSet<Integer>();
    var used = new HashMap<String, Integer>();
    var rest = new ArrayList<Integer>();
    for (int at : group) {
      var equal = free.getOrDefault(numbered.get(at).content(), List.of());
      int next = used.merge(numbered.get(at).content(), 1, Integer::sum) - 1;
      if (next >= equal.size()) {
        rest.add(at);
      } else {
        taken.add(equal.get(next));
        give(at, equal.get(next));
      }
    }
    int number = 0;
    for (int at : rest) {
      while (taken.contains(number)) {
        number++;
      }
      if (number == known.size() && !first.status().isVoid()) {
        known.add(numbered.get(at).content());
      }
      give(at, number++);
    }
  }

  private void give(int at, int number) {
    var row = numbered.get(at);
    numbered.set(at, row.under(row.key().numbered(number)));
  }
}
