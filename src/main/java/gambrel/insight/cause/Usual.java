package gambrel.insight.cause;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.Kind;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.LossLimit;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** What is usual in this shop, read off its bodies that balance. */
final class Usual {
  private static final BigFraction MILLION = BigFraction.of(1_000_000);

  /** Losses of fewer bodies are taken to lie anywhere from nothing to what the shop allows. */
  private static final UsualRange ALLOWED = new UsualRange(500_000, 250_000);

  private static final long LEAST_LOSS_SPREAD = 50_000;
  private static final long LEAST_SHRINK_SPREAD = 2_000;
  private static final long LEAST_SHARE_SPREAD = 5_000;

  /** What a body is made of differs less than what is lost of it. */
  private static final int LEAST_BODIES_FOR_A_SHARE = 3;

  private final Settings settings;
  private final List<BodyBalance> balanced;
  private final Map<Object, Optional<UsualRange>> bands = new HashMap<>();

  Usual(Night night) {
    settings = night.shop().settings();
    balanced =
        night.bodies().values().stream()
            .filter(a -> a.decision().state().isSettled() && a.decision().released().isEmpty())
            .map(a -> a.balance())
            .toList();
  }

  /** Cutting loss as a part of what the shop allows that body. */
  UsualRange loss(Species species) {
    return band("loss" + species.id(), species, this::lossOfAllowed, LEAST_LOSS_SPREAD)
        .or(() -> band("loss", null, this::lossOfAllowed, LEAST_LOSS_SPREAD))
        .orElse(ALLOWED);
  }

  /** Chill shrink of the hot weight, if enough bodies tell. */
  Optional<UsualRange> chill(Species species) {
    return band("chill" + species.id(), species, Usual::chillOf, LEAST_SHRINK_SPREAD);
  }

  /** What is in bins of one kind, of the weight into the boning room, if enough bodies tell. */
  Optional<UsualRange> bin(Species species, Kind kind) {
    return bands.computeIfAbsent(
        kind + species.id(),
        key ->
            read(
                species,
                balance -> binned(balance, kind),
                LEAST_SHARE_SPREAD,
                LEAST_BODIES_FOR_A_SHARE));
  }

  private Optional<UsualRange> band(
      String key, Species species, Function<BodyBalance, Optional<Long>> figure, long least) {
    return bands.computeIfAbsent(key, k -> read(species, figure, least, UsualRange.LEAST_VALUES));
  }

  private Optional<UsualRange> read(
      Species species,
      Function<BodyBalance, Optional<Long>> figure,
      long leastSpread,
      int leastBodies) {
    var values =
        balanced.stream()
            .filter(b -> species == null || b.body().species() == species)
            .filter(b -> b.body().outcome() == Outcome.CUT)
            .flatMap(b -> figure.apply(b).stream())
            .toList();
    return values.size() < leastBodies
        ? Optional.empty()
        : Optional.of(UsualRange.of(values, leastSpread));
  }

  private Optional<Long> lossOfAllowed(BodyBalance balance) {
    return balance
        .outputs()
        .flatMap(Outputs::cuttingLoss)
        .flatMap(loss -> millionths(loss.fraction(), LossLimit.of(settings, balance)));
  }

  private static Optional<Long> chillOf(BodyBalance balance) {
    return balance.shares().chillShrink().flatMap(Usual::millionths);
  }

  /** What is in bins of one kind, in millionths of the weight into the boning room. */
  static Optional<Long> binned(BodyBalance balance, Kind kind) {
    var share =
        switch (kind) {
          case BONE -> balance.shares().boneOfBoning();
          case FAT -> balance.shares().fatOfBoning();
          default -> Share.of(balance.outputs().flatMap(Outputs::waste), balance.boning());
        };
    return share.flatMap(Usual::millionths);
  }

  private static Optional<Long> millionths(Share share) {
    return millionths(share.part().fraction(), share.whole().fraction());
  }

  /** {@code part} in millionths of {@code whole}. */
  static Optional<Long> millionths(BigFraction part, BigFraction whole) {
    return whole.signum() <= 0
        ? Optional.empty()
        : Optional.of(Exact.units(part.divide(whole).multiply(MILLION), 0));
  }
}
