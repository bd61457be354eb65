package gambrel.pages.statement;

import gambrel.pages.views.FlowView;
import gambrel.pages.views.FlowView.Kind;
import gambrel.pages.words.Shares100;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The flow chart: the weights of the whole body from alive to the boxes. */
final class FlowPart extends StatementPart {
  private final Weight longest;
  private final List<FlowView.Row> bars = new ArrayList<>();

  private FlowPart(StatementContext subject, Weight longest) {
    super(subject);
    this.longest = longest;
  }

  /** The chart; empty before the first end product, and for a customer without a share. */
  static Optional<FlowView> of(StatementContext subject) {
    boolean shown =
        !subject.isOutrightOnly()
            && !subject.is(Outcome.CONDEMNED)
            && subject.outputs().isPresent()
            && subject.balance().boning().filter(w -> !w.isZero()).isPresent();
    return shown ? Optional.of(new FlowPart(subject, longest(subject)).view()) : Optional.empty();
  }

  private static Weight longest(StatementContext subject) {
    var longest = subject.balance().boning().orElseThrow();
    for (var other : List.of(live(subject), subject.balance().hot(), subject.balance().cold())) {
      longest = other.isPresent() && other.get().compareTo(longest) > 0 ? other.get() : longest;
    }
    return longest;
  }

  /** The live weight; empty if the hot weight is unknown or not below it. */
  private static Optional<Weight> live(StatementContext subject) {
    var hot = subject.balance().hot();
    return subject
        .body()
        .liveWeight()
        .filter(live -> hot.filter(h -> h.compareTo(live) < 0).isPresent());
  }

  private FlowView view() {
    dressing();
    chilling();
    hanging();
    if (subject.is(Outcome.WHOLE)) {
      var home = subject.balance().boning().orElseThrow();
      bar(Kind.HOME, "flow.home", Weight.ZERO, home, subject.hung(home), "");
    } else {
      boning();
    }
    return new FlowView(bars, FlowNotes.of(subject));
  }

  private void dressing() {
    var live = live(subject);
    if (live.isEmpty()) {
      return;
    }
    boolean guessed = subject.body().liveGuessed();
    var hot = subject.balance().hot().orElseThrow();
    var lost = subject.balance().shares().dressing().orElseThrow().rest();
    String stage = guessed ? "flow.live.guessed" : "flow.live";
    bar(Kind.STAGE, stage, Weight.ZERO, live.get(), subject.live(live.get()), "");
    off(
        Kind.LOST,
        subject.isSkinned() ? "flow.dressing" : "flow.dressing.pork",
        hot,
        lost.part(),
        share(guessed ? "flow.of.live.guessed" : "flow.of.live", lost));
  }

  private void chilling() {
    var balance = subject.balance();
    if (balance.hot().isEmpty()) {
      return;
    }
    var hot = balance.hot().get();
    String ofLive = subject.body().liveGuessed() ? "flow.of.live.guessed" : "flow.of.live";
    String of =
        live(subject)
            .flatMap(live -> balance.shares().dressing())
            .map(dressing -> share(ofLive, dressing))
            .orElse("");
    stage("flow.hot", hot, of);
    var shrink = balance.shares().chillShrink();
    if (shrink.isPresent()) {
      var trimmed = balance.figures().weights().trimmedBeforeCold();
      shrunk("flow.chill", "flow.of.hot", shrink.get(), trimmed, balance.cold().orElseThrow());
    }
  }

  private void hanging() {
    var balance = subject.balance();
    var shrink = balance.shares().ageingShrink();
    if (balance.cold().isEmpty() || shrink.isEmpty()) {
      return;
    }
    var cold = balance.cold().get();
    var boning = balance.boning().orElseThrow();
    stage(
        "flow.cold",
        cold,
        balance.shares().coldOfHot().map(share -> share("flow.of.hot", share)).orElse(""));
    var trimmed = balance.figures().weights().trimmedAfterCold();
    shrunk("flow.ageing", "flow.of.cold", shrink.get(), trimmed, boning);
  }

  /** Adds the rail trim and the shrink of a step, down to the weight {@code left}. */
  private void shrunk(String label, String of, Share shrink, Weight trimmed, Weight left) {
    var lost = shrink.part();
    if (!trimmed.isZero()) {
      off(Kind.LEFT, "flow.trimmed", left.plus(lost), trimmed, "");
    }
    off(Kind.LOST, label, left, lost, share(of, shrink));
  }

  private void boning() {
    var boning = subject.balance().boning().orElseThrow();
    stage("flow.boning", boning, formats.percentTenths(1000));
    var parts = BoningParts.of(subject);
    var shares = Shares100.tenths(parts.stream().map(part -> printed(part.weight())).toList());
    int decimals = BoningParts.decimals(subject, parts);
    var left = Weight.ZERO;
    for (int i = 0; i < parts.size(); i++) {
      var part = parts.get(i);
      String text = formats.weight(part.weight(), decimals);
      bar(
          part.kind(),
          part.label(),
          left,
          part.weight(),
          text,
          formats.percentTenths(shares.get(i)));
      left = left.plus(part.weight());
    }
  }

  /** Adds the weight of the body at a step. */
  private void stage(String label, Weight weight, String share) {
    bar(Kind.STAGE, label, Weight.ZERO, weight, subject.hung(weight), share);
  }

  /** Adds a loss, to the right of the weight {@code left} that remains. */
  private void off(Kind kind, String label, Weight left, Weight lost, String share) {
    bar(kind, label, left, lost, subject.hung(lost), share);
  }

  /** Adds a bar to scale. One that is negative or beyond the chart is a line at its place. */
  private void bar(Kind kind, String label, Weight from, Weight weight, String text, String share) {
    int left = Math.max(0, Math.min(place(from), FlowView.FULL - 1));
    int right = Math.max(left + 1, Math.min(place(from.plus(weight)), FlowView.FULL));
    bars.add(new FlowView.Row(kind, say(label), left, right - left, text, share));
  }

  private int place(Weight weight) {
    var place = weight.fraction().multiply(BigFraction.of(FlowView.FULL));
    return Exact.round(place.divide(longest.fraction()), 0).intValueExact();
  }

  private static Weight printed(Weight weight) {
    return Weight.ofThousandths(weight.thousandths());
  }

  private String share(String key, Share share) {
    return say(key, formats.percent(share.percent()));
  }
}
