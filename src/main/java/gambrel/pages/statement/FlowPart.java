package gambrel.pages.statement;

import gambrel.pages.views.FlowView;
import gambrel.pages.views.FlowView.Kind;
import gambrel.pages.words.Shares100;
import gambrel.trade.measure.Share;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Outcome;
import java.util.List;
import java.util.Optional;

/** The flow chart: the weights of the whole body from alive to the boxes. */
final class FlowPart extends StatementPart {
  private final FlowBars bars;

  private FlowPart(StatementContext subject, Weight longest) {
    super(subject);
    this.bars = new FlowBars(longest);
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
      bars.start().part(Kind.HOME, say("flow.home"), home, subject.hung(home), "");
    } else {
      boning();
    }
    return new FlowView(bars.rows(), FlowNotes.of(subject));
  }

  private void dressing() {
    var live = live(subject);
    if (live.isEmpty()) {
      return;
    }
    boolean guessed = subject.body().liveGuessed();
    var hot = subject.balance().hot().orElseThrow();
    var lost = subject.balance().shares().dressing().orElseThrow().rest();
    bars.stage(
        say(guessed ? "flow.live.guessed" : "flow.live"), live.get(), subject.live(live.get()), "");
    String label = subject.isSkinned() ? "flow.dressing" : "flow.dressing.pork";
    bars.off(
        Kind.LOST,
        say(label),
        lost.part(),
        subject.hung(lost.part()),
        share(guessed ? "flow.of.live.guessed" : "flow.of.live", lost),
        hot);
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
    bars.stage(say("flow.hot"), hot, subject.hung(hot), of);
    balance
        .shares()
        .chillShrink()
        .ifPresent(
            shrink ->
                shrunk(
                    "flow.chill",
                    "flow.of.hot",
                    shrink,
                    balance.figures().weights().trimmedBeforeCold(),
                    balance.cold().orElseThrow()));
  }

  private void hanging() {
    var balance = subject.balance();
    var shrink = balance.shares().ageingShrink();
    if (balance.cold().isEmpty() || shrink.isEmpty()) {
      return;
    }
    var cold = balance.cold().get();
    var boning = balance.boning().orElseThrow();
    bars.stage(
        say("flow.cold"),
        cold,
        subject.hung(cold),
        balance.shares().coldOfHot().map(share -> share("flow.of.hot", share)).orElse(""));
    shrunk(
        "flow.ageing",
        "flow.of.cold",
        shrink.get(),
        balance.figures().weights().trimmedAfterCold(),
        boning);
  }

  /** Adds the rail trim and the shrink of a step, down to the weight {@code left}. */
  private void shrunk(String label, String of, Share shrink, Weight trimmed, Weight left) {
    var lost = shrink.part();
    if (!trimmed.isZero()) {
      bars.off(Kind.LEFT, say("flow.trimmed"), trimmed, subject.hung(trimmed), "", left.plus(lost));
    }
    bars.off(Kind.LOST, say(label), lost, subject.hung(lost), share(of, shrink), left);
  }

  private void boning() {
    var boning = subject.balance().boning().orElseThrow();
    bars.stage(say("flow.boning"), boning, subject.hung(boning), formats.percentTenths(1000));
    bars.start();
    var parts = BoningParts.of(subject);
    var shares = Shares100.tenths(parts.stream().map(part -> printed(part.weight())).toList());
    int decimals = BoningParts.decimals(subject, parts);
    for (int i = 0; i < parts.size(); i++) {
      var part = parts.get(i);
      bars.part(
          part.kind(),
          say(part.label()),
          part.weight(),
          formats.weight(part.weight(), decimals),
          formats.percentTenths(shares.get(i)));
    }
  }

  private static Weight printed(Weight weight) {
    return Weight.ofThousandths(weight.thousandths());
  }

  private String share(String key, Share share) {
    return say(key, formats.percent(share.percent()));
  }
}
