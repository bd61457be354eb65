package gambrel.trade.rows;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;

/**
 * Numbers the rows of scales that count no tickets: of equal rows in one file the first is the
 * first weighing, the next another. Each file begins anew, so that where files overlap the same
 * weighings meet, and the file that has most of them decides how many there were.
 */
public final class EqualRowCounter {
  /** How the key of a row begins that is known by its identity. */
  static final String KEY = "identity\n";

  /** What the weighings of each identity hold, in the order of their numbers. */
  private final Map<String, List<String>> contents = new HashMap<>();

  private final List<KeyedRow> numbered;

  private EqualRowCounter(List<KeyedRow> rows) {
    numbered = new ArrayList<>(rows);
  }

  /**
   * The same rows, with a number in the key of each that is known by its identity.
   *
   * @param rows in file and line order
   */
  public static List<KeyedRow> number(List<KeyedRow> rows) {
    var occurrences = new EqualRowCounter(rows);
    // Voids come last: they look for a weighing of any file, and never make one.
    occurrences.eachGroup(false);
    occurrences.eachGroup(true);
    return occurrences.numbered;
  }

  private void eachGroup(boolean voids) {
    var groups = new LinkedHashMap<String, List<Integer>>();
    for (int i = 0; i < numbered.size(); i++) {
      var row = numbered.get(i);
      if (row.key().startsWith(KEY) && !row.read().removed() && row.status().isVoid() == voids) {
        String group = row.place().file() + '\n' + row.key();
        groups.computeIfAbsent(group, k -> new ArrayList<>()).add(i);
      }
    }
    groups.values().forEach(this::numberGroup);
  }

  /**
   * CorrectedRows of one file and identity: first each to its like, then the rest in their order.
   */
  private void numberGroup(List<Integer> group) {
    var first = numbered.get(group.get(0));
    var known = contents.computeIfAbsent(first.key(), k -> new ArrayList<>());
    var free = byContent(known);
    Set<Integer> taken = new HashSet<>();
    var rest = new ArrayList<Integer>();
    for (int at : group) {
      var likes = free.get(numbered.get(at).content());
      if (likes == null || likes.isEmpty()) {
        rest.add(at);
      } else {
        taken.add(likes.peek());
        give(at, likes.remove());
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

  private static Map<String, Queue<Integer>> byContent(List<String> known) {
    var numbers = new HashMap<String, Queue<Integer>>();
    for (int number = 0; number < known.size(); number++) {
      numbers.computeIfAbsent(known.get(number), k -> new ArrayDeque<>()).add(number);
    }
    return numbers;
  }

  private void give(int at, int number) {
    var row = numbered.get(at);
    numbered.set(at, row.under(row.key() + '\n' + number));
  }
}
