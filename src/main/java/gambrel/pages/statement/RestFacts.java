package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.pages.views.Fact;
import gambrel.trade.account.Entitlement;
import gambrel.trade.cuts.Facts.Offal;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Weight;
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
  /** What dressing takes off, in the order of the page. */
  private static final List<Offal> DRESSED =
      List.of(Offal.LIVER, Offal.OTHER, Offal.HIDE, Offal.SKIN, Offal.HEAD);

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

  /** Sentences below the picture on what it does not draw: what dressing took off, packed bone. */
  List<String> notes() {
    var known = new ArrayList<String>();
    var unknown = new ArrayList<String>();
    weights(Step.PACK, weighings::isOffal)
        .ifPresent(weight -> known.add(say("rest.offal.packed", weight)));
    for (var line : dressed()) {
      String name = formats.inside(say(label(line)));
      boolean offal = line == Offal.LIVER || line == Offal.OTHER;
      dressed(line)
          .filter(text -> !offal || weights(Step.PACK, w -> isOf(line, w)).isEmpty())
          .ifPresent(text -> known.add(say("rest.fact", name, text)));
      if (dressed(line).isEmpty()) {
        unknown.add(name);
      }
    }
    var sentences = new ArrayList<String>();
    if (!known.isEmpty()) {
      sentences.add(say("rest.known", String.join("; ", known)));
    }
    if (!unknown.isEmpty()) {
      sentences.add(say("rest.unknown", String.join(", ", unknown)));
    }
    var other =
        Weight.sum(account.entitlements().values().stream().map(Entitlement::otherHome).toList());
    if (is(Outcome.CUT) && !other.isZero()) {
      sentences.add(say("flow.other", home(other)));
    }
    return sentences;
  }

  private void addFacts() {
    if (is(Outcome.CUT)) {
      addKind("rest.bone", Kind.BONE);
      addKind("rest.fat", Kind.FAT);
      weights(Step.BIN, w -> weighings.binKind(w) == Kind.WASTE && !weighings.isOffal(w))
          .filter(left -> settings.bins() != Bins.NO)
          .ifPresent(left -> add("rest.waste", say("rest.left", left)));
    }
    for (var line : dressed()) {
      boolean offal = line == Offal.LIVER || line == Offal.OTHER;
      String otherwise = offal ? "rest.none" : "rest.slaughter";
      add(label(line), dressed(line).orElseGet(() -> say(otherwise)));
    }
  }

  /** What dressing takes off, as far as the cut table of the species has it. */
  private List<Offal> dressed() {
    boolean weighed = weights(weighings::isOffal).isPresent();
    return DRESSED.stream()
        .filter(
            line ->
                line == Offal.LIVER || line == Offal.OTHER
                    ? slaughtered || weighed
                    : slaughtered && !offal(line).isEmpty())
        .toList();
  }

  private static String label(Offal line) {
    return switch (line) {
      case LIVER -> "rest.liver";
      case HIDE -> "rest.hide";
      case SKIN -> "rest.skin";
      case HEAD -> "rest.head";
      case OTHER -> "rest.offal";
    };
  }

  /** What became of a part that dressing takes off; empty if it is not known. */
  private Optional<String> dressed(Offal line) {
    boolean bought = line == Offal.HIDE || line == Offal.SKIN;
    return bought && isBought(line) ? Optional.of(say("rest.kept")) : weights(w -> isOf(line, w));
  }

  private boolean isOf(Offal line, Weighing weighing) {
    return offal(line).stream().anyMatch(item -> item.id().equals(weighing.item()));
  }

  private void add(String label, String text) {
    facts.add(fact(label, text));
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
