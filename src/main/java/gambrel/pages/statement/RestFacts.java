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
    if (wasSlaughtered() || weighed(this::isOffal)) {
      add("rest.liver", offal(w -> isOn(Offal.LIVER, w)));
      add("rest.offal", offal(w -> isOn(Offal.OTHER, w)));
    }
    if (subject.is(Outcome.CUT)) {
      addKind("rest.bone", w -> kind(w) == Kind.BONE);
      addKind("rest.fat", w -> kind(w) == Kind.FAT);
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
      add(label, bought ? say("rest.kept") : offal(w -> isOn(line, w), "rest.slaughter"));
    }
  }

  /** Whether the shop weighed the body alive or hot, so that offal can be expected. */
  private boolean wasSlaughtered() {
    return subject.body().liveWeight().isPresent() || subject.balance().hot().isPresent();
  }

  private boolean isOffal(Weighing weighing) {
    return kind(weighing) == Kind.OFFAL;
  }

  private boolean isOn(Offal line, Weighing weighing) {
    return subject.is(line, weighing.item());
  }

  private Kind kind(Weighing weighing) {
    return subject.kind(weighing.item());
  }

  private void add(String label, String text) {
    facts.add(new Fact(say(label), text));
  }

  private String offal(Predicate<Weighing> which) {
    return offal(which, "rest.none");
  }

  private String offal(Predicate<Weighing> which, String otherwise) {
    var packed = of(Step.PACK, which);
    var left = of(Step.BIN, which);
    return packed.isEmpty() && left.isEmpty() ? say(otherwise) : weights(packed, left);
  }

  private void addKind(String label, Predicate<Weighing> which) {
    var packed = of(Step.PACK, which);
    var left = of(Step.BIN, which);
    var bins = subject.settings().bins();
    if (bins == Bins.WEIGHED) {
      if (!packed.isEmpty() || !left.isEmpty()) {
        add(label, weights(packed, left));
      }
    } else if (bins == Bins.NO) {
      add(
          label,
          packed.isEmpty()
              ? say("rest.unweighed")
              : say("rest.packed.unweighed", subject.total(packed)));
    } else {
      add(
          label,
          packed.isEmpty() && left.isEmpty()
              ? say("rest.partly.none")
              : say("rest.partly", weights(packed, left)));
    }
  }

  private void addWaste() {
    var left =
        of(Step.BIN, w -> kind(w) != Kind.BONE && kind(w) != Kind.FAT && kind(w) != Kind.OFFAL);
    if (!left.isEmpty() && subject.settings().bins() != Bins.NO) {
      add("rest.waste", say("rest.left", subject.total(left)));
    }
  }

  private String weights(List<Weighing> packed, List<Weighing> left) {
    if (left.isEmpty()) {
      return say("rest.packed", subject.total(packed));
    }
    return packed.isEmpty()
        ? say("rest.left", subject.total(left))
        : say("rest.packed.left", subject.total(packed), subject.total(left));
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

  private boolean weighed(Predicate<Weighing> which) {
    return !of(Step.PACK, which).isEmpty() || !of(Step.BIN, which).isEmpty();
  }

  private List<Weighing> of(Step step, Predicate<Weighing> which) {
    return subject.balance().weighings().of(step).stream().filter(which).toList();
  }
}
