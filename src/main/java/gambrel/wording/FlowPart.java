package gambrel.wording;

import gambrel.cuts.Species;
import gambrel.measure.Weight;
import gambrel.shop.Outcome;
import gambrel.statement.FlowView;
import gambrel.statement.FlowView.Kind;
import java.util.List;
import java.util.Optional;

/** Where each kilo of the whole body went, from alive to the boxes. */
final class FlowPart {
  private final Subject subject;
  private final Wording wording;
  private final FlowBars bars;

  private FlowPart(Subject subject, Weight longest) {
    this.subject = subject;
    this.wording = subject.wording();
    this.bars = new FlowBars(longest);
  }

  /** Empty where nothing came of the body yet, or it is not the customer's. */
  static Optional<FlowView> of(Subject subject) {
    boolean shown =
        !subject.isOutrightOnly()
            && !subject.is(Outcome.CONDEMNED)
            && subject.outputs().isPresent()
            && subject.balance().boning().filter(w -> !w.isZero()).isPresent();
    return shown ? Optional.of(new FlowPart(subject, longest(subject)).view()) : Optional.empty();
  }

  private static Weight longest(Subject subject) {
    var longest = subject.balance().boning().orElseThrow();
    for (var other : List.of(live(subject), subject.balance().hot(), subject.balance().cold())) {
      longest = other.isPresent() && other.get().compareTo(longest) > 0 ? other.get() : longest;
    }
    return longest;
  }

  /** The live weight, where it can be followed to the rail. */
  private static Optional<Weight> live(Subject subject) {
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
      bars.start().part(Kind.HOME, wording.say("flow.home"), home, subject.hung(home), "");
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
    var lost = live.get().minus(hot);
    bars.stage(
        wording.say(guessed ? "flow.live.guessed" : "flow.live"),
        live.get(),
        subject.live(live.get()),
        "");
    String label =
        subject.body().species() == Species.PORK ? "flow.dressing.pork" : "flow.dressing";
    bars.off(
        Kind.LOST,
        wording.say(label),
        lost,
        subject.hung(lost),
        share(guessed ? "flow.of.live.guessed" : "flow.of.live", lost, live.get()),
        hot);
  }

  private void chilling() {
    var balance = subject.balance();
    if (balance.hot().isEmpty()) {
      return;
    }
    var hot = balance.hot().get();
    String of =
        live(subject)
            .map(
                live ->
                    share(
                        subject.body().liveGuessed() ? "flow.of.live.guessed" : "flow.of.live",
                        hot,
                        live))
            .orElse("");
    bars.stage(wording.say("flow.hot"), hot, subject.hung(hot), of);
    if (balance.chillShrinkPercent().isPresent()) {
      var cold = balance.cold().orElseThrow();
      var trimmed = Subject.sum(balance.trim().beforeCold());
      trimmed(trimmed, cold.plus(hot.minus(cold).minus(trimmed)));
      var lost = hot.minus(cold).minus(trimmed);
      bars.off(
          Kind.LOST,
          wording.say("flow.chill"),
          lost,
          subject.hung(lost),
          share("flow.of.hot", lost, hot),
          cold);
    }
  }

  private void hanging() {
    var balance = subject.balance();
    if (balance.cold().isEmpty() || balance.ageingShrinkPercent().isEmpty()) {
      return;
    }
    var cold = balance.cold().get();
    var boning = balance.boning().orElseThrow();
    bars.stage(
        wording.say("flow.cold"),
        cold,
        subject.hung(cold),
        balance
            .hot()
            .filter(hot -> balance.chillShrinkPercent().isPresent())
            .map(hot -> share("flow.of.hot", cold, hot))
            .orElse(""));
    var trimmed = Subject.sum(balance.trim().afterCold());
    var lost = cold.minus(boning).minus(trimmed);
    trimmed(trimmed, boning.plus(lost));
    bars.off(
        Kind.LOST,
        wording.say("flow.ageing"),
        lost,
        subject.hung(lost),
        share("flow.of.cold", lost, cold),
        boning);
  }

  private void trimmed(Weight trimmed, Weight behind) {
    if (!trimmed.isZero()) {
      bars.off(Kind.LEFT, wording.say("flow.trimmed"), trimmed, subject.hung(trimmed), "", behind);
    }
  }

  private void boning() {
    var boning = subject.balance().boning().orElseThrow();
    bars.stage(
        wording.say("flow.boning"),
        boning,
        subject.hung(boning),
        subject.formats().percentTenths(1000));
    bars.start();
    var parts = BoningParts.of(subject);
    var shares = Shares100.tenths(parts.stream().map(part -> printed(part.weight())).toList());
    int decimals = BoningParts.decimals(subject, parts);
    for (int i = 0; i < parts.size(); i++) {
      var part = parts.get(i);
      bars.part(
          part.kind(),
          wording.say(part.label()),
          part.weight(),
          subject.formats().weight(part.weight(), decimals),
          subject.formats().percentTenths(shares.get(i)));
    }
  }

  private static Weight printed(Weight weight) {
    return Weight.ofThousandths(weight.thousandths());
  }

  private String share(String key, Weight part, Weight whole) {
    return wording.say(
        key, subject.formats().percent(part.percentOf(whole)));
  }
}
