package gambrel.wording;

import gambrel.cuts.Kind;
import gambrel.cuts.Species;
import gambrel.shop.Outcome;
import gambrel.shop.Settings.Bins;
import gambrel.shop.Step;
import gambrel.statement.Fact;
import gambrel.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Where the rest is: packed, not taken home, not weighed. It is about the whole body. */
final class RestFacts {
  private static final String LIVER = "liver";
  private static final String HIDE = "hide";
  private static final List<String> HEAD_AND_FEET = List.of("head", "feet");

  private final Subject subject;
  private final Wording wording;
  private final List<Fact> facts = new ArrayList<>();

  private RestFacts(Subject subject) {
    this.subject = subject;
    this.wording = subject.wording();
  }

  static List<Fact> of(Subject subject) {
    return new RestFacts(subject).facts();
  }

  private List<Fact> facts() {
    if (subject.is(Outcome.CONDEMNED)) {
      subject
          .balance()
          .boning()
          .ifPresent(w -> add("rest.carcase", wording.say("rest.condemned", subject.hung(w))));
      return facts;
    }
    if (wasSlaughtered() || weighed(this::isOffal)) {
      add("rest.liver", offal(w -> w.item().equals(LIVER)));
      add("rest.offal", offal(w -> isOffal(w) && !isNamed(w)));
    }
    if (subject.is(Outcome.CUT)) {
      addKind("rest.bone", w -> kind(w) == Kind.BONE);
      addKind("rest.fat", w -> kind(w) == Kind.FAT);
      addWaste();
    }
    if (wasSlaughtered() && subject.body().species() != Species.PORK) {
      add(isSheep() ? "rest.skin" : "rest.hide", hide());
      add("rest.head", offal(w -> HEAD_AND_FEET.contains(w.item()), "rest.slaughter"));
    }
    return facts;
  }

  /** Whether its slaughter is part of what this page is about: it came alive, or hot. */
  private boolean wasSlaughtered() {
    return subject.body().liveWeight().isPresent() || subject.balance().hot().isPresent();
  }

  private boolean isSheep() {
    var species = subject.body().species();
    return species == Species.LAMB || species == Species.GOAT || species == Species.GAME;
  }

  private boolean isOffal(Weighing weighing) {
    return kind(weighing) == Kind.OFFAL;
  }

  private boolean isNamed(Weighing weighing) {
    String item = weighing.item();
    return item.equals(LIVER) || item.equals(HIDE) || HEAD_AND_FEET.contains(item);
  }

  private Kind kind(Weighing weighing) {
    return subject.kind(weighing.item());
  }

  private void add(String label, String text) {
    facts.add(new Fact(wording.say(label), text));
  }

  private String offal(Predicate<Weighing> which) {
    return offal(which, "rest.none");
  }

  private String offal(Predicate<Weighing> which, String otherwise) {
    var packed = of(Step.PACK, which);
    var left = of(Step.BIN, which);
    return packed.isEmpty() && left.isEmpty() ? wording.say(otherwise) : weights(packed, left);
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
              ? wording.say("rest.unweighed")
              : wording.say("rest.packed.unweighed", subject.total(packed)));
    } else {
      add(
          label,
          packed.isEmpty() && left.isEmpty()
              ? wording.say("rest.partly.none")
              : wording.say("rest.partly", weights(packed, left)));
    }
  }

  private void addWaste() {
    var left =
        of(
            Step.BIN,
            w -> kind(w) != Kind.BONE && kind(w) != Kind.FAT && kind(w) != Kind.OFFAL);
    if (!left.isEmpty() && subject.settings().bins() != Bins.NO) {
      add("rest.waste", wording.say("rest.left", subject.total(left)));
    }
  }

  private String weights(List<Weighing> packed, List<Weighing> left) {
    if (left.isEmpty()) {
      return wording.say("rest.packed", subject.total(packed));
    }
    return packed.isEmpty()
        ? wording.say("rest.left", subject.total(left))
        : wording.say("rest.packed.left", subject.total(packed), subject.total(left));
  }

  private String hide() {
    boolean bought =
        subject.account().bill().linesOf(subject.customer()).stream()
            .map(line -> line.charge())
            .filter(charge -> charge.price().compareTo(BigDecimal.ZERO) < 0)
            .anyMatch(charge -> charge.id().startsWith(HIDE) || charge.item().equals(HIDE));
    return bought
        ? wording.say("rest.kept")
        : offal(w -> w.item().equals(HIDE), "rest.slaughter");
  }

  private boolean weighed(Predicate<Weighing> which) {
    return !of(Step.PACK, which).isEmpty() || !of(Step.BIN, which).isEmpty();
  }

  private List<Weighing> of(Step step, Predicate<Weighing> which) {
    return subject.balance().weighings().of(step).stream().filter(which).toList();
  }
}
