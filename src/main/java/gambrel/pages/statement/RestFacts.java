package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.pages.views.Fact;
import gambrel.trade.cuts.Facts.Offal;
import gambrel.trade.cuts.Kind;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings.Bins;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Answers "Where is the rest?" for the whole body: bone, fat, waste, offal, hide and head. */
final class RestFacts extends StatementPart {
  private final List<Fact> facts = new ArrayList<>();

  private RestFacts(StatementContext subject) {
    super(subject);
  }

  /** The answer; empty if it would have no fact. */
  static Optional<Answer> of(StatementContext subject) {
    var facts = new RestFacts(subject).facts();
    var wording = subject.wording();
    String lead = wording.say(subject.is(Outcome.CONDEMNED) ? "rest.lead.condemned" : "rest.lead");
    return facts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Answer("rest", wording.say("rest.question"), lead, List.of(), facts));
  }

  private List<Fact> facts() {
    if (subject.is(Outcome.CONDEMNED)) {
      subject
          .balance()
          .boning()
          .ifPresent(w -> add("rest.carcase", say("rest.condemned", subject.hung(w))));
      return facts;
    }
    if (wasSlaughtered() || weights(w -> subject.kind(w.item()) == Kind.OFFAL).isPresent()) {
      add("rest.liver", offal(Offal.LIVER, "rest.none"));
      add("rest.offal", offal(Offal.OTHER, "rest.none"));
    }
    if (subject.is(Outcome.CUT)) {
      addKind("rest.bone", Kind.BONE);
      addKind("rest.fat", Kind.FAT);
      addWaste();
    }
    if (wasSlaughtered()) {
      addDressed("rest.hide", Offal.HIDE, isBought(Offal.HIDE));
      addDressed("rest.skin", Offal.SKIN, isBought(Offal.SKIN));
      addDressed("rest.head", Offal.HEAD, false);
    }
    return facts;
  }

  /** Adds a line for a part that dressing takes off, if the cut table of the species has it. */
  private void addDressed(String label, Offal line, boolean bought) {
    if (subject.has(line)) {
      add(label, bought ? say("rest.kept") : offal(line, "rest.slaughter"));
    }
  }

  /** Whether the shop weighed the body alive or hot, so that offal can be expected. */
  private boolean wasSlaughtered() {
    return subject.body().liveWeight().isPresent() || subject.balance().hot().isPresent();
  }

  private void add(String label, String text) {
    facts.add(new Fact(say(label), text));
  }

  private String offal(Offal line, String otherwise) {
    return weights(w -> subject.is(line, w.item())).orElseGet(() -> say(otherwise));
  }

  private void addKind(String label, Kind kind) {
    Predicate<Weighing> which = w -> subject.kind(w.item()) == kind;
    switch (subject.settings().bins()) {
      case WEIGHED -> weights(which).ifPresent(text -> add(label, text));
      case PARTLY ->
          add(
              label,
              weights(which)
                  .map(text -> say("rest.partly", text))
                  .orElseGet(() -> say("rest.partly.none")));
      case NO ->
          add(
              label,
              of(Step.PACK, which)
                  .map(packed -> say("rest.packed.unweighed", packed))
                  .orElseGet(() -> say("rest.unweighed")));
    }
  }

  private void addWaste() {
    var weighings = subject.balance().weighings();
    of(Step.BIN, w -> weighings.binKind(w) == Kind.WASTE && !weighings.isOffal(w))
        .filter(left -> subject.settings().bins() != Bins.NO)
        .ifPresent(left -> add("rest.waste", say("rest.left", left)));
  }

  /** The weights that were packed and left in bins; empty if there is neither. */
  private Optional<String> weights(Predicate<Weighing> which) {
    var packed = of(Step.PACK, which);
    var left = of(Step.BIN, which);
    return packed.isPresent() && left.isPresent()
        ? Optional.of(say("rest.packed.left", packed.get(), left.get()))
        : packed
            .map(weight -> say("rest.packed", weight))
            .or(() -> left.map(weight -> say("rest.left", weight)));
  }

  /** Whether the customer has a credit for an item of that line, or one named after the item. */
  private boolean isBought(Offal line) {
    return subject.account().bill().linesOf(subject.customer()).stream()
        .map(charged -> charged.charge())
        .filter(charge -> charge.price().signum() < 0)
        .anyMatch(
            charge ->
                subject.tree().items().stream()
                    .filter(item -> subject.is(line, item.id()))
                    .anyMatch(
                        item ->
                            charge.id().startsWith(item.id()) || charge.item().equals(item.id())));
  }

  /** The printed weight of the weighings of one step; empty if there are none. */
  private Optional<String> of(Step step, Predicate<Weighing> which) {
    var weighings = subject.balance().weighings().of(step).stream().filter(which).toList();
    return weighings.isEmpty() ? Optional.empty() : Optional.of(subject.total(weighings));
  }
}
