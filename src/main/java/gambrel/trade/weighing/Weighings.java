package gambrel.trade.weighing;

import gambrel.trade.measure.Groups;
import gambrel.trade.shop.Step;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** All weighings that have taken effect, grouped by body and by batch. */
public final class Weighings {
  private final List<Weighing> all;
  private final List<Weighing> byTime;
  private final Map<String, List<Weighing>> byBody;
  private final Map<String, List<Weighing>> byBatch;

  /** Groups weighings that come in the order of the exports. */
  Weighings(List<Weighing> all) {
    this.all = List.copyOf(all);
    byTime = all.stream().sorted(Weighing.BY_TIME).toList();
    byBody = Groups.inOrder(byTime.stream().filter(w -> !w.body().isEmpty()), Weighing::body);
    byBatch = Groups.inOrder(byTime.stream().filter(Weighing::takesPartInBatch), Weighing::batch);
  }

  /** The weighings that name a body, earliest first, with packs of a batch; empty if none. */
  public List<Weighing> of(String body) {
    return byBody.getOrDefault(body, List.of());
  }

  /** The batches that weighings name, in the order of their first weighings. */
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
    return byTime.stream().filter(weighing -> weighing.step() == Step.TEST).toList();
  }
}
