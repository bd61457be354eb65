package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.pages.views.Fact;
import gambrel.trade.cuts.Facts.Offal;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.shop.Body.Outcome;
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

  /** Whether the shop weighed the body alive or hot, so that offal can be expected. */
  private final boolean slaughtered = body.liveWeight().isPresent() || balance.hot().isPresent();

  RestFacts(StatementPart statement) {
    super(statement);
  }

  /** The answer; empty if it would have no fact. */
  Optional<Answer> answer() {
    if (is(Outcome.CONDEMNED)) {
      balance.boning().ifPresent(w -> add("rest.carcase", say("rest.condemned", hung(w))));
    } else {
      addFacts();
    }
    String lead = say(is(Outcome.CONDEMNED) ? "rest.lead.condemned" : "rest.lead");
    return facts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Answer("rest", say("rest.question"), lead, List.of(), facts));
  }

  private void addFacts() {
    if (slaughtered || weights(weighings::isOffal).isPresent()) {
      add("rest.liver", offal(Offal.LIVER, "rest.none"));
      add("rest.offal", offal(Offal.OTHER, "rest.none"));
    }
    if (is(Outcome.CUT)) {
      addKind("rest.bone", Kind.BONE);
      addKind("rest.fat", Kind.FAT);
      weights(Step.BIN, w -> weighings.binKind(w) == Kind.WASTE && !weighings.isOffal(w))
          .filter(left -> settings.bins() != Bins.NO)
          .ifPresent(left -> add("rest.waste", say("rest.left", left)));
    }
    if (slaughtered) {
      addDressed("rest.hide", Offal.HIDE, isBought(Offal.HIDE));
      addDressed("rest.skin", Offal.SKIN, isBought(Offal.SKIN));
      addDressed("rest.head", Offal.HEAD, false);
    }
  }

  /** Adds a line for a part that dressing takes off, if the cut table of the species has it. */
  private void addDressed(String label, Offal line, boolean bought) {
    if (!offal(line).isEmpty()) {
      add(label, bought ? say("rest.kept") : offal(line, "rest.slaughter"));
    }
  }

  private void add(String label, String text) {
    facts.add(fact(label, text));
  }

  private String offal(Offal line, String otherwise) {
    var items = offal(line).stream().map(Item::id).toList();
    return weights(w -> items.contains(w.item())).orElseGet(() -> say(otherwise));
  }

  private void addKind(String label, Kind kind) {
    Predicate<Weighing> which = w -> weighings.kind(w) == kind;
    switch (settings.bins()) {
      case WEIGHED -> weights(which).ifPresent(text -> add(label, text));
      case PARTLY -> add(label, say(weights(which), "rest.partly"));
      case NO -> add(label, say(weights(Step.PACK, which), "rest.packed.unweighed"));
    }
  }

  /** A sentence about a weight, or that none is known. */
  private String say(Optional<String> weight, String key) {
    return weight.map(text -> say(key, text)).orElseGet(() -> say("rest.none"));
  }

  /** The weights that were packed and left in bins; empty if there is neither. */
  private Optional<String> weights(Predicate<Weighing> which) {
    var packed = weights(Step.PACK, which);
    var left = weights(Step.BIN, which);
    return packed.isPresent() && left.isPresent()
        ? Optional.of(say("rest.packed.left", packed.get(), left.get()))
        : packed
            .map(weight -> say("rest.packed", weight))
            .or(() -> left.map(weight -> say("rest.left", weight)));
  }

  /** The printed weight of the weighings of one step; empty if there are none. */
  private Optional<String> weights(Step step, Predicate<Weighing> which) {
    return Optional.of(weighings.of(step, which)).filter(some -> !some.isEmpty()).map(this::total);
  }

  /** Whether the customer has a credit for an item of that line, or one named after the item. */
  private boolean isBought(Offal line) {
    return account.bill().linesOf(own.customer()).stream()
        .map(charged -> charged.charge())
        .filter(charge -> charge.price().signum() < 0)
        .anyMatch(
            charge ->
                offal(line).stream()
                    .anyMatch(i -> charge.id().startsWith(i.id()) || charge.item().equals(i.id())));
  }
}
