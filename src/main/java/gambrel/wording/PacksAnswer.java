package gambrel.wording;

import gambrel.cuts.Kind;
import gambrel.measure.Weight;
import gambrel.owner.Entitlement;
import gambrel.shop.Outcome;
import gambrel.shop.Step;
import gambrel.statement.Answer;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How many packs, and what weight? */
final class PacksAnswer {
  private final Subject subject;
  private final Wording wording;
  private final List<String> lines = new ArrayList<>();

  private PacksAnswer(Subject subject) {
    this.subject = subject;
    this.wording = subject.wording();
  }

  static Answer of(Subject subject) {
    return new PacksAnswer(subject).answer();
  }

  private Answer answer() {
    String lead = lead();
    return new Answer("packs", wording.say("packs.question"), lead, lines, List.of());
  }

  private String lead() {
    if (subject.is(Outcome.CONDEMNED)) {
      lines.add(wording.say("packs.condemned"));
      offal();
      return wording.say("packs.condemned.lead");
    }
    if (subject.is(Outcome.WHOLE)) {
      lines.add(wording.say("packs.whole"));
      offal();
      return wording.say("packs.whole.lead", whole());
    }
    meat();
    outright();
    offal();
    if (!subject.openBatches().isEmpty()) {
      lines.add(wording.say("packs.pending"));
    }
    return cut();
  }

  private String whole() {
    var total = Weight.sum(subject.own().lines().stream().filter(l -> !l.offal()).map(Entitlement.Line::weight).toList());
    return subject.hung(total);
  }

  private String cut() {
    var own = subject.own();
    String weight = subject.home(own.takeHome());
    if (own.takeHome().isZero()) {
      return wording.say("packs.none.lead");
    }
    if (subject.isSharer()) {
      return wording.say("packs.share.lead", weight, subject.share());
    }
    var uncounted =
        subject.batchMeat().stream().filter(b -> b.packs().isEmpty()).map(BatchMeat::name).toList();
    int packs = counted();
    String count = subject.formats().count(packs);
    return uncounted.isEmpty()
        ? wording.count("packs.lead", packs, count, weight)
        : wording.count(
            "packs.some", packs, count, weight, uncounted.stream().collect(Collectors.joining(", ")));
  }

  /** The packs that are known to be the customer's, without offal. */
  private int counted() {
    int packs = 0;
    for (var line : subject.own().lines()) {
      packs += line.offal() ? 0 : line.packs().orElse(0);
    }
    for (var batch : subject.batchMeat()) {
      packs += batch.packs().orElse(0);
    }
    return packs;
  }

  private void meat() {
    var total = subject.own().takeHome();
    var other =
        Weight.sum(
            subject.own().lines().stream()
                .filter(line -> !line.offal() && !isMeat(line))
                .map(Entitlement.Line::weight)
                .toList());
    if (!other.isZero()) {
      lines.add(wording.say("packs.meat", subject.home(total.minus(other)), subject.home(other)));
    }
  }

  private boolean isMeat(Entitlement.Line line) {
    var kind = subject.kind(line.item());
    return kind == Kind.MEAT || kind == Kind.TRIM;
  }

  /** What was put up by name for somebody who has a share besides. */
  private void outright() {
    var own = Outright.of(subject);
    if (subject.isSharer() && !own.isEmpty()) {
      lines.add(
          wording.count(
              "packs.outright", own.size(), subject.formats().count(own.size()), subject.home(Subject.sum(own))));
    }
  }

  private void offal() {
    var offal = subject.own().lines().stream().filter(Entitlement.Line::offal).toList();
    if (offal.isEmpty()) {
      return;
    }
    String weight =
        subject.home(Weight.sum(offal.stream().map(Entitlement.Line::weight).toList()));
    boolean known = offal.stream().map(Entitlement.Line::packs).allMatch(Optional::isPresent);
    int packs = offal.stream().mapToInt(line -> line.packs().orElse(0)).sum();
    lines.add(
        known
            ? wording.count("packs.offal", packs, subject.formats().count(packs), weight)
            : wording.say("packs.offal.share", weight));
  }

  /** Packs put up for a customer by name. */
  static final class Outright {

    private Outright() {}

    static List<Weighing> of(Subject subject) {
      var weighings = subject.balance().weighings();
      return weighings.of(Step.PACK).stream()
          .filter(pack -> pack.customer().equals(subject.customer()))
          .filter(pack -> !weighings.isOffal(pack))
          .toList();
    }
  }
}
