package gambrel.insight.cause;

import gambrel.trade.measure.Weight;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lightest and heaviest weighings of each code in this shop. */
final class CodeRanges {
  /** With fewer others there is no range. */
  private static final int LEAST_OTHERS = 4;

  private final Usual usual;
  private final Map<List<Object>, List<Long>> nets = new HashMap<>();

  CodeRanges(Usual usual) {
    this.usual = usual;
    usual.night.ledger().weighings().stream()
        .filter(weighing -> weighing.step().movesMass())
        .forEach(w -> keys(w).forEach(key -> add(key, w.net().hundredThousandths())));
    nets.values().forEach(Collections::sort);
  }

  private void add(List<Object> key, long net) {
    nets.computeIfAbsent(key, k -> new ArrayList<>()).add(net);
  }

  /** What a weighing is compared with: its code and species, else its step and species. */
  private List<List<Object>> keys(Weighing weighing) {
    var body = usual.night.shop().bodies().get(weighing.body());
    Object species = body == null ? "" : body.species();
    List<Object> code = List.of(weighing.code().pattern(), species);
    return weighing.step() == Step.PACK || weighing.step() == Step.BIN
        ? List.of(code, List.of(weighing.step(), species))
        : List.of(code);
  }

  /** Weights of one code differ by a tenth at least. */
  private static final int SPREAD_OF_WEIGHT = 10;

  /** Up to so many spreads the oddness of a weight counts in full. */
  private static final int KNEE = 4;

  /**
   * How much odder a weighing's weight is than {@code net} would be: among the weighings of its
   * product by bodies that are cut alike, else among those of its code. There a weight that others
   * have is no odder.
   */
  long odder(Weighing weighing, long net) {
    long own = weighing.net().hundredThousandths();
    var ofProduct = usual.each(weighing);
    var range =
        ofProduct.or(
            () ->
                like(weighing).map(w -> Usual.Range.of(w, w.get(w.size() / 2) / SPREAD_OF_WEIGHT)));
    long odder = range.map(r -> r.strain(own, KNEE) - r.strain(net, KNEE)).orElse(0L);
    boolean others = ofOthers(weighing).filter(some -> some.holds(own)).isPresent();
    return ofProduct.isEmpty() && others ? Math.min(0, odder) : odder;
  }

  /**
   * The least and the most of some weighings.
   *
   * @param least in hundred-thousandths of the shop's unit
   * @param most in hundred-thousandths of the shop's unit
   */
  record Range(long least, long most) {
    /** The range as evidence. */
    Phrase phrase() {
      return Phrase.of("CAUSE.RANGE")
          .with("least", new Value.Shown(new Weight(least).output()))
          .with("most", new Value.Shown(new Weight(most).output()));
    }

    boolean holds(long net) {
      return net >= least && net <= most;
    }
  }

  /** The range of the weighings that are like this one, itself left out; empty if too few are. */
  Optional<Range> ofOthers(Weighing weighing) {
    long own = weighing.net().hundredThousandths();
    return like(weighing)
        .map(
            all -> {
              int last = all.size() - 1;
              return new Range(
                  all.get(all.get(0) == own ? 1 : 0),
                  all.get(all.get(last) == own ? last - 1 : last));
            });
  }

  /** The weights of the weighings like this one, lightest first; empty if they are too few. */
  private Optional<List<Long>> like(Weighing weighing) {
    return keys(weighing).stream()
        .map(key -> nets.getOrDefault(key, List.of()))
        .filter(all -> all.size() > LEAST_OTHERS)
        .findFirst();
  }
}
