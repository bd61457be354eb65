package gambrel.balance;

import gambrel.measure.Weight;
import gambrel.shop.Body;
import gambrel.shop.Step;
import gambrel.weighing.Weighing;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** All figures of a body. Immutable; what is drawn from it by a {@link Drawn} is kept with it. */
public final class BodyBalance implements Drawn.Subject {
  private static final long MILLIS_AN_HOUR = 3_600_000;
  private static final Drawn<BodyBalance, List<Weighing>> TOPMOST =
      new Drawn<>(body -> new Blocks(body.weighings).topmost());
  private static final Drawn<BodyBalance, Optional<BigFraction>> HOURS_CHILLED =
      new Drawn<>(BodyBalance::chilled);

  private final BodyWeighings weighings;
  private final Rail rail;
  private final RailTrim trim;
  private final Optional<Weight> boning;
  private final List<Weighing> boningWeighings;
  private final boolean fromBlock;
  private final Optional<Outputs> outputs;
  private final List<PieceBalance> pieces;
  private final List<BatchBalance> batches;

  /** Asked of every body by every month, so that they must not need its weighings again. */
  private final Optional<LocalDate> firstCut;

  private final Optional<OffsetDateTime> lastCut;
  private final Drawings drawings = new Drawings();

  BodyBalance(
      BodyWeighings weighings,
      Rail rail,
      RailTrim trim,
      Optional<Weight> boning,
      List<Weighing> boningWeighings,
      boolean fromBlock,
      Optional<Outputs> outputs,
      List<PieceBalance> pieces,
      List<BatchBalance> batches) {
    this.weighings = weighings;
    this.rail = rail;
    this.trim = trim;
    this.boning = boning;
    this.boningWeighings = List.copyOf(boningWeighings);
    this.fromBlock = fromBlock;
    this.outputs = outputs;
    this.pieces = List.copyOf(pieces);
    this.batches = List.copyOf(batches);
    var cuts = cuts();
    this.firstCut = cuts.stream().findFirst().map(Weighing::date);
    this.lastCut = last(cuts);
  }

  /** Its own weighings. */
  public BodyWeighings weighings() {
    return weighings;
  }

  /** Its rail weights. */
  public Rail rail() {
    return rail;
  }

  /** What was trimmed while it hung. */
  public RailTrim trim() {
    return trim;
  }

  /** The weight into the boning room (W). */
  public Optional<Weight> boning() {
    return boning;
  }

  /** The weighings that make W. */
  public List<Weighing> boningWeighings() {
    return boningWeighings;
  }

  /** Whether W comes from the block, for want of rail weights. */
  public boolean fromBlock() {
    return fromBlock;
  }

  /** What came of it; empty before the first end product. */
  public Optional<Outputs> outputs() {
    return outputs;
  }

  /** The pieces weighed on the block. */
  public List<PieceBalance> pieces() {
    return pieces;
  }

  /** Its batches. */
  public List<BatchBalance> batches() {
    return batches;
  }

  @Override
  public Drawings drawings() {
    return drawings;
  }

  /** The body. */
  public Body body() {
    return weighings.body();
  }

  /** Hot weight of its live weight, in per cent. */
  public Optional<BigFraction> dressingPercent() {
    return percent(hot(), body().liveWeight());
  }

  /** Weight lost from hot to cold, rail trim left out, of the hot weight. */
  public Optional<BigFraction> chillShrinkPercent() {
    if (!rail.sameParts() || hot().isEmpty() || cold().isEmpty()) {
      return Optional.empty();
    }
    var trimmed = RailTrim.total(trim.beforeCold());
    return percent(Optional.of(hot().get().minus(cold().get()).minus(trimmed)), hot());
  }

  /** Weight lost from cold to aged over the parts that were aged, of their cold weight. */
  public Optional<BigFraction> ageingShrinkPercent() {
    var trimmed = RailTrim.total(trim.afterCold());
    return rail.ageing()
        .flatMap(
            ageing ->
                percent(
                    Optional.of(ageing.cold().minus(ageing.aged()).minus(trimmed)),
                    Optional.of(ageing.cold())));
  }

  /** Take-home of the hot weight. */
  public Optional<BigFraction> takeHomeOfHotPercent() {
    return percent(outputs.map(Outputs::takeHome), hot());
  }

  /** Take-home of the cold weight. */
  public Optional<BigFraction> takeHomeOfColdPercent() {
    return percent(outputs.map(Outputs::takeHome), cold());
  }

  /** Meat taken home of the cold weight. */
  public Optional<BigFraction> meatOfColdPercent() {
    return percent(outputs.flatMap(Outputs::meatHome), cold());
  }

  /** Standing hot weight (H). */
  public Optional<Weight> hot() {
    return rail.hot().weight();
  }

  /** Standing cold weight (C). */
  public Optional<Weight> cold() {
    return rail.cold().weight();
  }

  /** Cut weighings proper: on the block, or off it into pack, tub or bin; no offal, no rail trim. */
  public List<Weighing> cuts() {
    return trim.without(weighings.cuts());
  }

  /** Block weighings of pieces with no block-weighed piece above them, earliest first. */
  public List<Weighing> topmostBlocks() {
    return TOPMOST.of(this);
  }

  /** The local date of the first cut. */
  public Optional<LocalDate> firstCut() {
    return firstCut;
  }

  /** When the last cut was weighed. */
  public Optional<OffsetDateTime> lastCut() {
    return lastCut;
  }

  /** Days from slaughter to the first cut. */
  public Optional<Integer> daysHung() {
    return body()
        .killed()
        .flatMap(
            killed ->
                firstCut().map(cut -> Math.toIntExact(ChronoUnit.DAYS.between(killed, cut))));
  }

  /**
   * The same body, weighed the same, had it hung a day longer: killed the day before, so that nothing
   * of what was done in the boning room moves. Empty where its days are not known.
   */
  public Optional<BodyBalance> hungADayLonger() {
    return daysHung()
        .map(days -> body().withKilled(body().killed().orElseThrow().minusDays(1)))
        .map(earlier -> new BodyWeighings(earlier, weighings.tree(), weighings.all()))
        .map(
            own ->
                new BodyBalance(
                    own,
                    rail,
                    trim,
                    boning,
                    boningWeighings,
                    fromBlock,
                    outputs,
                    pieces,
                    batches));
  }

  /** Hours from the last hot to the last cold weighing. */
  public Optional<BigFraction> hoursChilled() {
    return HOURS_CHILLED.of(this);
  }

  private Optional<BigFraction> chilled() {
    var hot = last(weighings.of(Step.HOT));
    var cold = last(weighings.of(Step.COLD));
    return hot.isEmpty() || cold.isEmpty()
        ? Optional.empty()
        : Optional.of(
            BigFraction.of(Duration.between(hot.get(), cold.get()).toMillis(), MILLIS_AN_HOUR));
  }

  private static Optional<OffsetDateTime> last(List<Weighing> weighings) {
    return weighings.isEmpty()
        ? Optional.empty()
        : Optional.of(weighings.get(weighings.size() - 1).time());
  }

  private static Optional<BigFraction> percent(Optional<Weight> part, Optional<Weight> whole) {
    return part.isEmpty() || whole.isEmpty() || whole.get().isZero()
        ? Optional.empty()
        : Optional.of(part.get().percentOf(whole.get()));
  }
}
