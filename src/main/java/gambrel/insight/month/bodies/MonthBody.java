package gambrel.insight.month.bodies;

import gambrel.insight.month.pace.BlockStart;
import gambrel.insight.month.value.Products;
import gambrel.insight.month.yields.CutStyle;
import gambrel.insight.month.yields.Primals;
import gambrel.trade.account.Bill;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A body with all that the months ask of it. Thirteen months look at each body, so it is read once.
 *
 * @param account its figures, bill and decision
 * @param whose who bears what it loses
 * @param shares its figures as shares; those that are unknown are missing
 * @param percents the same in per cent
 * @param boner the one boner whom its weighings in the boning room name; empty if none or several
 * @param style the items packed on the bone, see {@link CutStyle}
 * @param railScale the scale that most of the weight into the boning room was weighed on
 * @param benchScale the scale that most of its end products were weighed on
 * @param packs its packs outside batches by item, without offal
 * @param primals what came of each primal, of the weight into the boning room, by id
 * @param products its end products by item
 * @param choices what each of its pieces that can be cut in several ways was made into, by id
 * @param starts its weighings on the block from which times of work are read
 */
public record MonthBody(
    BodyAccount account,
    Ownership whose,
    Map<BodyFigure, Share> shares,
    Map<BodyFigure, BigFraction> percents,
    Optional<String> boner,
    String style,
    Optional<String> railScale,
    Optional<String> benchScale,
    Map<String, Weight> packs,
    Map<String, Share> primals,
    List<Products.Product> products,
    Map<String, Products.Made> choices,
    List<BlockStart> starts) {

  /** Reads a body. */
  public static MonthBody of(BodyAccount account) {
    var balance = account.balance();
    var shares = new EnumMap<BodyFigure, Share>(BodyFigure.class);
    for (var figure : BodyFigure.values()) {
      figure.read(balance).ifPresent(share -> shares.put(figure, share));
    }
    var percents = new EnumMap<BodyFigure, BigFraction>(BodyFigure.class);
    shares.forEach((figure, share) -> percents.put(figure, share.percent()));
    var products = Products.of(balance);
    return new MonthBody(
        account,
        Ownership.of(account),
        Collections.unmodifiableMap(shares),
        Collections.unmodifiableMap(percents),
        boner(balance),
        CutStyle.of(balance),
        mainScale(balance.boningWeighings()),
        mainScale(balance.weighings().out()),
        packs(balance),
        Primals.sharesOf(balance),
        products,
        Products.made(balance, products),
        BlockStart.of(balance));
  }

  private static Optional<String> boner(BodyBalance balance) {
    var names =
        balance.cuts().stream().map(Weighing::boner).filter(n -> !n.isEmpty()).distinct().toList();
    return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
  }

  private static Optional<String> mainScale(List<Weighing> weighings) {
    var byScale = new HashMap<String, Long>();
    for (var weighing : weighings) {
      byScale.merge(weighing.scale().id(), weighing.net().hundredThousandths(), Long::sum);
    }
    return byScale.entrySet().stream()
        .max(Map.Entry.<String, Long>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey);
  }

  private static Map<String, Weight> packs(BodyBalance balance) {
    return byItem(
        balance.weighings().of(Step.PACK).stream()
            .filter(w -> !w.inBatch() && !balance.weighings().isOffal(w)));
  }

  /** The net weights of some weighings by item. */
  static Map<String, Weight> byItem(Stream<Weighing> weighings) {
    var byItem = new HashMap<String, Weight>();
    weighings.forEach(w -> byItem.merge(w.item(), w.net(), Weight::plus));
    return byItem;
  }

  /** Those of {@code bodies} whose weights hold and are all there. */
  public static List<MonthBody> settled(Collection<MonthBody> bodies) {
    return bodies.stream().filter(b -> b.account().isSettled()).toList();
  }

  /** A figure of the body; empty if unknown. */
  public Optional<Share> share(BodyFigure figure) {
    return Optional.ofNullable(shares.get(figure));
  }

  /** A figure of the body in per cent; empty if unknown. */
  public Optional<BigFraction> percent(BodyFigure figure) {
    return Optional.ofNullable(percents.get(figure));
  }

  /** The body as the shop wrote it down. */
  public Body body() {
    return account.body();
  }

  /** Its id. */
  public String id() {
    return account.body().id();
  }

  /** Its figures. */
  public BodyBalance balance() {
    return account.balance();
  }

  /** What it costs its customers. */
  public Bill bill() {
    return account.bill();
  }

  /** Whether its statement goes out. */
  public State state() {
    return account.decision().state();
  }
}
