package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.account.Entitlement;
import gambrel.trade.shop.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Answers "How many packs, and what weight?". */
final class PacksAnswer extends StatementPart {
  private final List<String> lines = new ArrayList<>();

  private PacksAnswer(StatementContext subject) {
    super(subject);
  }

  static Answer of(StatementContext subject) {
    return new PacksAnswer(subject).answer();
  }

  private Answer answer() {
    String lead = lead();
    return new Answer("packs", say("packs.question"), lead, lines, List.of());
  }

  private String lead() {
    if (subject.is(Outcome.CONDEMNED)) {
      lines.add(say("packs.condemned"));
      offal();
      return say("packs.condemned.lead");
    }
    if (subject.is(Outcome.WHOLE)) {
      lines.add(say("packs.whole"));
      offal();
      return say("packs.whole.lead", subject.hung(subject.own().takeHome()));
    }
    meat();
    outright();
    offal();
    if (!subject.openBatches().isEmpty()) {
      lines.add(say("packs.pending"));
    }
    return cut();
  }

  private String cut() {
    var own = subject.own();
    String weight = subject.home(own.takeHome());
    if (own.takeHome().isZero()) {
      return say("packs.none.lead");
    }
    if (subject.isSharer()) {
      return say("packs.share.lead", weight, subject.share());
    }
    var uncounted =
        subject.batchMeat().stream().filter(b -> b.packs().isEmpty()).map(BatchMeat::name).toList();
    int packs = counted();
    String count = formats.count(packs);
    return uncounted.isEmpty()
        ? wording.count("packs.lead", packs, count, weight)
        : wording.count(
            "packs.some",
            packs,
            count,
            weight,
            uncounted.stream().collect(Collectors.joining(", ")));
  }

  /** The number of packs that are wholly the customer's, without offal. */
  private int counted() {
    int packs = 0;
    for (var line : subject.own().lines()) {
      packs += line.isOffal() ? 0 : line.packs().orElse(0);
    }
    for (var batch : subject.batchMeat()) {
      packs += batch.packs().orElse(0);
    }
    return packs;
  }

  private void meat() {
    var own = subject.own();
    var other = own.otherHome();
    if (!other.isZero()) {
      lines.add(say("packs.meat", subject.home(own.meatHome()), subject.home(other)));
    }
  }

  /** The packs that name a customer who also has a share. */
  private void outright() {
    var own = subject.outright();
    if (subject.isSharer() && !own.isEmpty()) {
      lines.add(
          wording.count(
              "packs.outright",
              own.size(),
              formats.count(own.size()),
              subject.home(subject.own().outright())));
    }
  }

  private void offal() {
    var offal = subject.own().lines().stream().filter(Entitlement.Line::isOffal).toList();
    if (offal.isEmpty()) {
      return;
    }
    String weight = subject.home(subject.own().offal());
    boolean known = offal.stream().map(Entitlement.Line::packs).allMatch(Optional::isPresent);
    int packs = offal.stream().mapToInt(line -> line.packs().orElse(0)).sum();
    lines.add(
        known
            ? wording.count("packs.offal", packs, formats.count(packs), weight)
            : say("packs.offal.share", weight));
  }
}
