package gambrel.pages.statement;

import gambrel.pages.views.FlowView;
import gambrel.pages.views.FlowView.Kind;
import gambrel.pages.words.PrintedShares;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BodyBalance.Shares;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Settings.Bins;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The flow chart: the weights of the whole body from alive to the boxes. */
final class FlowPart extends StatementPart {
  private final Optional<Weight> hot = balance.hot();
  private final Optional<Weight> cold = balance.cold();
  private final Weight boning = balance.boning().orElse(Weight.ZERO);
  private final Shares shares = balance.shares();

  /** The live weight; empty if the hot weight is unknown or not below it. */
  private final Optional<Weight> live =
      body.liveWeight().filter(w -> hot.filter(h -> h.compareTo(w) < 0).isPresent());

  /** The first weight of the picture, of which all percentages are. */
  private final Weight whole = live.or(() -> hot).or(() -> cold).orElse(boning);

  private final List<FlowView.Row> bars = new ArrayList<>();

  FlowPart(StatementPart statement) {
    super(statement);
  }

  /** The chart; empty without an end product, for a customer without a share, and if held. */
  Optional<FlowView> chart() {
    if (held
        || own.isOutrightOnly()
        || is(Outcome.CONDEMNED)
        || balance.outputs().isEmpty()
        || boning.isZero()) {
      return Optional.empty();
    }
    dressing();
    chilling();
    hanging();
    if (is(Outcome.WHOLE)) {
      bar(Kind.HOME, "flow.home", Weight.ZERO, boning, hung(boning), share(boning));
    } else {
      boning();
    }
    return Optional.of(new FlowView(bars, notes()));
  }

  private void dressing() {
    if (live.isPresent()) {
      var weight = live.get();
      var lost = shares.dressing().orElseThrow().rest();
      String stage = body.liveGuessed() ? "flow.live.guessed" : "flow.live";
      bar(Kind.STAGE, stage, Weight.ZERO, weight, live(weight), share(weight));
      lost(weight, hot.orElseThrow(), "flow.dressing", Weight.ZERO, lost.part());
    }
  }

  private void chilling() {
    if (hot.isPresent()) {
      stage("flow.hot", hot.get());
      var trimmed = balance.trim().weightBeforeCold();
      shares
          .chillShrink()
          .ifPresent(s -> lost(hot.get(), cold.orElseThrow(), "flow.chill", trimmed, s.part()));
    }
  }

  private void hanging() {
    var shrink = shares.ageingShrink();
    boolean left = shares.chillShrink().isPresent() && !cold.equals(Optional.of(boning));
    if (cold.isPresent() && (shrink.isPresent() || left)) {
      stage("flow.cold", cold.get());
      var trimmed = balance.trim().weightAfterCold();
      shrink.ifPresent(s -> lost(cold.get(), boning, "flow.ageing", trimmed, s.part()));
    }
  }

  /** Adds the rail trim and the loss of a step from one weight of the body to the next. */
  private void lost(Weight before, Weight after, String label, Weight trimmed, Weight lost) {
    long total = PrintedShares.tenths(before, whole) - PrintedShares.tenths(after, whole);
    var shares = PrintedShares.tenths(total, List.of(trimmed, lost), whole);
    if (!trimmed.isZero()) {
      var from = after.plus(lost);
      bar(Kind.LEFT, "flow.trimmed", from, trimmed, hung(trimmed), percent(shares.get(0)));
    }
    // As the weights are printed: converted ones are rounded to thousandths.
    long left = before.thousandths() - after.thousandths() - trimmed.thousandths();
    String text = hung(Weight.ofThousandths(left));
    bar(Kind.LOST, label, after, lost, text, percent(shares.get(1)));
  }

  private void boning() {
    stage("flow.boning", boning);
    var parts = parts();
    var exact = parts.stream().map(Part::weight).toList();
    var tenths = PrintedShares.tenths(PrintedShares.tenths(boning, whole), exact, whole);
    var weights = parts.stream().map(Part::listed).toList();
    // As many decimals as let the parts add up as printed.
    int least = Math.max(decimals(weighings.out()), homeDecimals());
    int decimals = WeightDecimals.fitting(least, weights);
    var printed = PrintedShares.weights(weights, decimals);
    var left = Weight.ZERO;
    for (int i = 0; i < parts.size(); i++) {
      var part = parts.get(i);
      String text = formats.weight(printed.get(i), decimals);
      bar(part.kind(), part.label(), left, part.weight(), text, percent(tenths.get(i)));
      left = left.plus(part.weight());
    }
  }

  /**
   * A part of the weight into the boning room.
   *
   * @param kind the kind of its bar
   * @param label key of its name
   * @param weight its weight for the whole body
   * @param listed the same as the customers' lists add up to it
   */
  private record Part(Kind kind, String label, Weight weight, Weight listed) {
    /** Converting units can leave less than the smallest printed weight. */
    static Stream<Part> ofPrinted(Kind kind, String label, Weight weight) {
      return Stream.of(new Part(kind, label, weight, weight))
          .filter(p -> p.weight.thousandths() != 0);
    }
  }

  /**
   * The parts of the weight into the boning room. They add up to it: what the rounding of items
   * adds to the take-home is taken off the loss, so that list and picture have one take-home.
   */
  private List<Part> parts() {
    var split = balance.boningSplit().orElseThrow();
    var outputs = balance.outputs().orElseThrow();
    var rounded = account.sum(Entitlement::takeHome).minus(outputs.takeHome());
    var home = split.home().plus(rounded);
    String bench = settings.bins() == Bins.PARTLY ? "flow.bench.partly" : "flow.bench";
    return Stream.of(
            Stream.of(new Part(Kind.HOME, "flow.home", split.home(), home)),
            Part.ofPrinted(Kind.HOME, "flow.pending", split.pending()),
            Part.ofPrinted(Kind.LEFT, "flow.bone", split.bone()),
            Part.ofPrinted(Kind.LEFT, "flow.fat", split.fat()),
            Part.ofPrinted(Kind.LEFT, "flow.waste", split.waste()),
            outputs.unweighed().stream()
                .map(w -> new Part(Kind.LOST, "flow.unweighed", w, w.minus(rounded))),
            outputs.cuttingLoss().stream()
                .map(w -> new Part(Kind.LOST, bench, w, w.minus(rounded))),
            Part.ofPrinted(Kind.LOST, "flow.batch", split.batchLoss()))
        .flatMap(part -> part)
        .toList();
  }

  /** Adds the weight of the body at a step. */
  private void stage(String label, Weight weight) {
    bar(Kind.STAGE, label, Weight.ZERO, weight, hung(weight), share(weight));
  }

  private void bar(Kind kind, String label, Weight from, Weight weight, String text, String share) {
    int end = place(from.plus(weight));
    bars.add(FlowView.Row.between(kind, say(label), place(from), end, text, share));
  }

  /** The place of a weight on the chart, which is as long as the first weight. */
  private int place(Weight weight) {
    return Exact.round(weight.percentOf(whole).multiply(FlowView.FULL / 100), 0).intValueExact();
  }

  private String share(Weight weight) {
    return percent(PrintedShares.tenths(weight, whole));
  }

  private String percent(long tenths) {
    return formats.percentTenths(tenths);
  }

  /** All notes below the chart as one paragraph. */
  private List<String> notes() {
    var outputs = balance.outputs().orElseThrow();
    var sentences = new ArrayList<>(new RestAnswer(this).slaughter());
    var packed = account.sum(Entitlement::boneAndFat);
    if (!packed.isZero()) {
      sentences.add(say("flow.other", home(packed)));
    }
    if (balance.fromBlock()) {
      sentences.add(say("flow.block"));
    }
    if (!outputs.railTrim().isZero()) {
      sentences.add(say("flow.trim", total(balance.trim().all())));
    }
    if (shares.ageingShrink().filter(s -> !s.whole().equals(cold.orElseThrow())).isPresent()) {
      sentences.add(say("flow.aged.parts"));
    }
    sentences.add(say("flow.percent"));
    return List.of(String.join(" ", sentences));
  }
}
