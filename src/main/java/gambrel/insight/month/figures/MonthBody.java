package gambrel.insight.month.figures;

import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A body with the figures that months are drawn from. Thirteen months use each body: its own and
 * the twelve after it. So its figures are read once.
 *
 * @param account its figures, bill and decision
 * @param whose who bears its losses
 * @param lastDay the day whose month its statement belongs to, see {@link #lastDay(BodyAccount)}
 * @param shares its figures as shares; unknown ones are missing
 * @param boner the boner whom its weighings in the boning room name; empty if none or several
 * @param hungScale the scale that most of its hot and cold weight was weighed on; empty if none was
 * @param railScale the scale that most of the weight into the boning room was weighed on; empty if
 *     none was weighed
 * @param benchScale the scale that most of its end products were weighed on; empty if it has none
 * @param packs the net weights of its packs by item, without offal and without packs of batches
 * @param style the items packed on the bone, see {@link Products#style}
 * @param primals what went home or into tubs of each primal, as a share of the weight into the
 *     boning room, by the primal's id
 * @param choices what each of its pieces that has parts was made into, by the piece's id
 */
public record MonthBody(
    BodyAccount account,
    Ownership whose,
    Optional<LocalDate> lastDay,
    Map<BodyFigure, Share> shares,
    Optional<String> boner,
    Optional<String> hungScale,
    Optional<String> railScale,
    Optional<String> benchScale,
    Map<String, Weight> packs,
    String style,
    Map<String, Share> primals,
    Map<String, Products.Made> choices) {

  private static final Comparator<MonthBody> ORDER_OF_KILL =
      Comparator.comparing((MonthBody b) -> b.body().killed().orElse(LocalDate.MAX))
          .thenComparing(MonthBody::id);

  /** The bodies of a night that are not cancelled, in order of kill. */
  public static List<MonthBody> all(Night night) {
    return night.bodies().values().parallelStream()
        .filter(account -> account.body().outcome() != Outcome.CANCELLED)
        .map(MonthBody::of)
        .sorted(ORDER_OF_KILL)
        .toList();
  }

  /** Reads the figures of a body. */
  public static MonthBody of(BodyAccount account) {
    var balance = account.balance();
    var shares = new EnumMap<BodyFigure, Share>(BodyFigure.class);
    for (var figure : BodyFigure.values()) {
      figure.of(balance).ifPresent(share -> shares.put(figure, share));
    }
    return new MonthBody(
        account,
        Ownership.of(account),
        lastDay(account),
        shares,
        boner(balance),
        mainScale(
            Stream.of(balance.rail().hot(), balance.rail().cold())
                .flatMap(rail -> rail.weighings().stream())
                .toList()),
        mainScale(balance.boningWeighings()),
        mainScale(balance.weighings().out()),
        packs(balance),
        Products.style(balance),
        Products.primals(balance),
        Products.made(balance));
  }

  private static Optional<String> boner(BodyBalance balance) {
    var names =
        balance.cuts().stream().map(Weighing::boner).filter(n -> !n.isEmpty()).distinct().toList();
    return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
  }

  /** The bodies of a species among some bodies, in their order. */
  public static List<MonthBody> of(Species species, Collection<MonthBody> bodies) {
    return bodies.stream().filter(b -> b.species() == species).toList();
  }

  /** The ids of some bodies, sorted. */
  public static List<String> ids(Collection<MonthBody> bodies) {
    return bodies.stream().map(MonthBody::id).sorted().toList();
  }

  /** A figure of the body; empty if unknown. */
  public Optional<Share> share(BodyFigure figure) {
    return Optional.ofNullable(shares.get(figure));
  }

  /** A figure of the body in per cent; empty if unknown. */
  public Optional<BigFraction> percent(BodyFigure figure) {
    return share(figure).map(Share::percent);
  }

  private static Map<String, Weight> packs(BodyBalance balance) {
    return Products.weights(
        balance.weighings().of(Step.PACK).stream().filter(w -> !balance.weighings().isOffal(w)),
        Weighing::item);
  }

  private static Optional<String> mainScale(List<Weighing> weighings) {
    return Products.weights(weighings.stream(), w -> w.scale().id()).entrySet().stream()
        .max(Map.Entry.<String, Weight>comparingByValue().thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey);
  }

  /**
   * The day whose month a body's statement belongs to: of its last cut, else of its kill; empty if
   * it has neither.
   */
  public static Optional<LocalDate> lastDay(BodyAccount account) {
    return account
        .balance()
        .lastCut()
        .map(OffsetDateTime::toLocalDate)
        .or(() -> account.body().killed());
  }

  /**
   * Whether figures and comparisons count it. The page names a body that is held, in a batch that
   * is still open, or released with a known fault instead.
   */
  public boolean isCounted() {
    return state() != State.HELD && isCharted();
  }

  /**
   * Whether a chart of its month shows it. A body that is held stands there: what holds it may be a
   * scale or a chiller that the chart is to find.
   */
  public boolean isCharted() {
    return account.decision().released().isEmpty()
        && balance().batches().stream().noneMatch(BatchBalance::isOpen);
  }

  /** Its class and its style: bodies that agree in both may be compared in bone and meat. */
  public String classAndStyle() {
    return body().category() + '|' + style;
  }

  /** The body as the shop wrote it down. */
  public Body body() {
    return account.body();
  }

  /** Its id. */
  public String id() {
    return body().id();
  }

  /** Of its id alone: no two bodies of a night share one. */
  @Override
  public int hashCode() {
    return id().hashCode();
  }

  /** Its species. */
  public Species species() {
    return body().species();
  }

  /** Its figures. */
  public BodyBalance balance() {
    return account.balance();
  }

  /** Whether its statement is open, held, issued or closed. */
  public State state() {
    return account.decision().state();
  }
}
