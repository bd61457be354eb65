package gambrel.trade.weighing;

import gambrel.trade.shop.Step;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All weighings that have taken effect, grouped by body and by batch. */
public final class Weighings {
  private final List<Weighing> all;
  private final Map<String, List<Weighing>> byBody;
  private final Map<String, List<Weighing>> byBatch;

  /** Groups weighings that come in the order of the exports. */
  Weighings(List<Weighing> all) {
    this.all = List.copyOf(all);
    this.byBody = grouped(weighing -> !weighing.body().isEmpty(), Weighing::body);
    this.byBatch = grouped(Weighing::takesPartInBatch, Weighing::batch);
  }

  private Map<String, List<Weighing>> grouped(
      Predicate<Weighing> which, Function<Weighing, String> id) {
    var groups =
        all.stream()
            .filter(which)
            .collect(Collectors.groupingBy(id, LinkedHashMap::new, Collectors.toList()));
    groups.replaceAll((same, list) -> list.stream().sorted(Weighing.BY_TIME).toList());
    return groups;
  }

  /** The weighings that name a body, earliest first, with packs of a batch; empty if none. */
  public List<Weighing> of(String body) {
    return byBody.getOrDefault(body, List.of());
  }

  /** The batches that weighings name, in the order in which the exports first name them. */
  public Set<String> batches() {
    return Collections.unmodifiableSet(byBatch.keySet());
  }

  /** The weighings that take part in a batch, earliest first; empty if none. */
  public List<Weighing> ofBatch(String batch) {
    return byBatch.getOrDefault(batch, List.of());
  }

  /** Every weighing once, in the order of the exports. */
  public Stream<Weighing> stream() {
    return all.stream();
  }

  /** The weighings of test weights, earliest first. */
  public List<Weighing> tests() {
    return all.stream()
        .filter(weighing -> weighing.step() == Step.TEST)
        .sorted(Weighing.BY_TIME)
        .toList();
  }
}
