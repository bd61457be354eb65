package gambrel.weighing;

import gambrel.notice.Place;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * All weighings that have taken effect, by body and by batch. Where there are so many that they do
 * not fit in memory as objects, lists are packed and unpack themselves while they are used.
 */
public final class Weighings {
  private final Map<String, List<Weighing>> byBody;
  private final Map<String, List<Weighing>> byBatch;
  private final List<Weighing> loose;
  private final List<Weighing> tests;

  /**
   * Weighings in lists earliest first.
   *
   * @param byBody those that name a body, by its id
   * @param byBatch those that take part in a batch, by its id
   * @param loose those that do neither
   * @param tests those of test weights, which are among the others too
   */
  Weighings(
      Map<String, List<Weighing>> byBody,
      Map<String, List<Weighing>> byBatch,
      List<Weighing> loose,
      List<Weighing> tests) {
    this.byBody = byBody;
    this.byBatch = byBatch;
    this.loose = loose;
    this.tests = tests;
  }

  /** The bodies that are named, those first that stand first in the exports. */
  public Set<String> bodies() {
    return Collections.unmodifiableSet(byBody.keySet());
  }

  /** The weighings that name a body, earliest first; packs of a batch too. */
  public List<Weighing> of(String body) {
    return byBody.getOrDefault(body, List.of());
  }

  /** The batches that are named, those first that stand first in the exports. */
  public Set<String> batches() {
    return Collections.unmodifiableSet(byBatch.keySet());
  }

  /** The weighings that take part in a batch, earliest first. */
  public List<Weighing> ofBatch(String batch) {
    return byBatch.getOrDefault(batch, List.of());
  }

  /** Every weighing once, in no particular order: those of a body together. */
  public Stream<Weighing> stream() {
    var ofBatches =
        byBatch.values().stream()
            .flatMap(List::stream)
            .filter(weighing -> weighing.body().isEmpty());
    return Stream.concat(
        byBody.values().stream().flatMap(List::stream), Stream.concat(ofBatches, loose.stream()));
  }

  /** Those of test weights, earliest first. */
  public List<Weighing> tests() {
    return tests;
  }

  /** The same without the weighings of some rows. */
  Weighings without(Set<Place> rows) {
    return new Weighings(
        without(byBody, rows),
        without(byBatch, rows),
        without(loose, rows),
        without(tests, rows));
  }

  private static Map<String, List<Weighing>> without(
      Map<String, List<Weighing>> lists, Set<Place> rows) {
    var left = new LinkedHashMap<String, List<Weighing>>();
    lists.forEach(
        (id, list) -> {
          var rest = without(list, rows);
          if (!rest.isEmpty()) {
            left.put(id, rest);
          }
        });
    return left;
  }

  private static List<Weighing> without(List<Weighing> list, Set<Place> rows) {
    return list.stream().noneMatch(w -> rows.contains(w.place()))
        ? list
        : choose(list, w -> !rows.contains(w.place()));
  }

  /** A list that does not change: a packed one stays packed. */
  public static List<Weighing> copyOf(List<Weighing> weighings) {
    return weighings instanceof PackedList ? weighings : List.copyOf(weighings);
  }

  /** The weighings of a list that pass, packed where it is. */
  public static List<Weighing> choose(List<Weighing> from, Predicate<Weighing> which) {
    return from instanceof PackedList packed
        ? packed.choose(which)
        : from.stream().filter(which).toList();
  }

  /** Some weighings of a list in an order of their own, packed where it is. */
  public static List<Weighing> some(List<Weighing> from, List<Weighing> some) {
    return from instanceof PackedList packed ? packed.some(some) : List.copyOf(some);
  }

  /**
   * What is drawn from the weighings of one body, kept with them only as long as they are unpacked;
   * empty where they are not packed, or are a choice of some.
   *
   * @param how draws it, always the same from the same list
   */
  public static <T> Optional<T> drawn(List<Weighing> list, Supplier<T> how) {
    return list instanceof PackedWeighings packed
        ? Optional.of(packed.drawn(how))
        : Optional.empty();
  }

  /** Whether a list keeps its weighings packed, so that what is drawn from it need not be kept. */
  public static boolean isPacked(List<Weighing> list) {
    return list instanceof PackedList;
  }
}
