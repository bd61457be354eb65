package gambrel.insight.cause;

import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Between which weights the weighings of a code lie in this shop. */
final class CodeRanges {
  /** With fewer others a range says nothing. */
  private static final int LEAST_OTHERS = 4;

  private final Night night;
  private final Map<List<Object>, List<Long>> byKind = new HashMap<>();

  CodeRanges(Night night) {
    this.night = night;
    night.ledger().weighings().stream()
        .filter(weighing -> weighing.step().movesMass())
        .forEach(w -> keys(w).forEach(key -> add(key, w.net().hundredThousandths())));
    byKind.values().forEach(Collections::sort);
  }

  private void add(List<Object> key, long net) {
    byKind.computeIfAbsent(key, k -> new ArrayList<>()).add(net);
  }

  /** What a weighing is compared with: its code and species, else its step and species. */
  private List<List<Object>> keys(Weighing weighing) {
    var keys = new ArrayList<List<Object>>();
    var body = night.shop().bodies().get(weighing.body());
    Object species = body == null ? "" : body.species();
    keys.add(List.of(weighing.code().pattern(), species));
    if (weighing.step() == Step.PACK || weighing.step() == Step.BIN) {
      keys.add(List.of(weighing.step(), species));
    }
    return keys;
  }

  /**
   * The least and the most of other weighings.
   *
   * @param least in hundred-thousandths
   * @param most in hundred-thousandths
   */
  record Range(long least, long most) {
    /** The same in words. */
    Phrase words() {
      return Phrase.of("CAUSE.RANGE")
          .with("least", new Value.Shown(new Weight(least).output()))
          .with("most", new Value.Shown(new Weight(most).output()));
    }

    boolean holds(long net) {
      return net >= least && net <= most;
    }

    /** Whether a weight is far from all of it: three times the most or a third of the least. */
    boolean isFar(long net) {
      return net > 3 * most || net * 3 < least;
    }

    /** Whether a weight is near it: up to twice the most, down to half of the least. */
    boolean isNear(long net) {
      return net <= 2 * most && net * 2 >= least;
    }
  }

  /** The range of the weighings that are like this one, itself left out. */
  Optional<Range> ofOthers(Weighing weighing) {
    for (var key : keys(weighing)) {
      var nets = byKind.getOrDefault(key, List.of());
      if (nets.size() > LEAST_OTHERS) {
        long own = weighing.net().hundredThousandths();
        int last = nets.size() - 1;
        return Optional.of(
            new Range(
                nets.get(nets.get(0) == own ? 1 : 0),
                nets.get(nets.get(last) == own ? last - 1 : last)));
      }
    }
    return Optional.empty();
  }
}
