package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.account.Entitlement;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Answers about the boxes: how much is in them, and whose meat it is. */
final class BoxAnswers extends StatementPart {
  private final List<Entitlement.Line> offalLines =
      own.lines().stream().filter(Entitlement.Line::isOffal).toList();

  BoxAnswers(StatementPart statement) {
    super(statement);
  }

  /** Answers "How many packs, and what weight?". */
  Answer packs() {
    var lines = new ArrayList<String>();
    if (is(Outcome.CUT)) {
      meat().ifPresent(lines::add);
      outrightPacks().ifPresent(lines::add);
    } else {
      lines.add(say(is(Outcome.WHOLE) ? "packs.whole" : "packs.condemned"));
    }
    offalPacks().ifPresent(lines::add);
    if (is(Outcome.CUT) && !openBatches().isEmpty()) {
      lines.add(say("packs.pending"));
    }
    return answer("packs.question", packed(), lines);
  }

  private String packed() {
    if (is(Outcome.CONDEMNED)) {
      return say("packs.condemned.lead");
    }
    if (is(Outcome.WHOLE)) {
      String weight = hung(own.takeHome());
      return isSharer()
          ? say("packs.share.lead", weight, share())
          : say("packs.whole.lead", weight);
    }
    if (own.takeHome().isZero()) {
      return say("packs.none.lead");
    }
    String weight = home(own.takeHome());
    if (isSharer()) {
      return say("packs.share.lead", weight, share());
    }
    String uncounted =
        batchMeat().stream()
            .filter(batch -> batch.packs().isEmpty())
            .map(BatchMeat::name)
            .collect(Collectors.joining(", "));
    return uncounted.isEmpty()
        ? wording.counted("packs.lead", counted(), weight)
        : wording.counted("packs.some", counted(), weight, uncounted);
  }

  /** The number of packs that are wholly the customer's, without offal. */
  private int counted() {
    var batches = batchMeat().stream().mapToInt(batch -> batch.packs().orElse(0));
    return packs(own.lines()) - packs(offalLines) + batches.sum();
  }

  private static int packs(List<Entitlement.Line> lines) {
    return lines.stream().mapToInt(line -> line.packs().orElse(0)).sum();
  }

  private Optional<String> meat() {
    return Optional.of(own.otherHome())
        .filter(other -> !other.isZero())
        .map(other -> say("packs.meat", home(own.meatHome()), home(other)));
  }

  /** The packs that name a customer who also has a share. */
  private Optional<String> outrightPacks() {
    int packs = outright().size();
    return isSharer() && packs > 0
        ? Optional.of(wording.counted("packs.outright", packs, home(own.outright())))
        : Optional.empty();
  }

  private Optional<String> offalPacks() {
    if (offalLines.isEmpty() || is(Outcome.CONDEMNED)) {
      return Optional.empty();
    }
    String weight = home(own.offal());
    return Optional.of(
        offalLines.stream().allMatch(line -> line.packs().isPresent())
            ? wording.counted("packs.offal", packs(offalLines), weight)
            : say("packs.offal.share", weight));
  }

  /** Answers "Is this all mine, and only mine?"; empty before the first pack. */
  Optional<Answer> mine() {
    if (own.lines().isEmpty() && own.batchParts().isEmpty()) {
      return Optional.empty();
    }
    var batches = batchMeat();
    var lines = new ArrayList<String>();
    boolean alone = batches.stream().allMatch(BatchMeat::isAlone);
    if (alone && !held) {
      lines.add(sayForHead("mine.alone"));
    }
    batches.forEach(batch -> mixed(batch, lines));
    batches.forEach(batch -> added(batch).ifPresent(lines::add));
    others().ifPresent(lines::add);
    String lead = held ? say("mine.lead.held") : owned(alone);
    return Optional.of(answer("mine.question", lead, lines));
  }

  private String owned(boolean alone) {
    if (own.isOutrightOnly()) {
      return say("mine.lead.outright");
    }
    if (!alone) {
      return say("mine.lead.mixed");
    }
    if (isSharer()) {
      return say("mine.lead.share", share());
    }
    return isMob() ? say("mine.lead.mob", formats.count(body.head())) : say("mine.lead");
  }

  /** Adds what else is in a batch. */
  private void mixed(BatchMeat batch, List<String> lines) {
    String part = home(batch.part());
    if (batch.others() > 0) {
      String others = formats.count(batch.others());
      lines.add(wording.count("mine.batch.mixed", batch.others(), batch.name(), others, part));
    }
    if (batch.hasShopMeat()) {
      lines.add(say("mine.batch.shop", batch.name(), part));
    }
  }

  /** What was added to the meat of a batch, as far as the shop lists it. */
  private Optional<String> added(BatchMeat meat) {
    String listed = meat.batch().batch().added().replace(";", ",");
    if (!listed.isEmpty()) {
      return Optional.of(say("mine.added", meat.name(), listed));
    }
    return meat.batch().added().isZero()
        ? Optional.empty()
        : Optional.of(say("mine.added.unknown", meat.name()));
  }

  /** What others have of the body. */
  private Optional<String> others() {
    if (isSharer()) {
      return Optional.of(say("mine.divided"));
    }
    var elsewhere =
        account.entitlements().values().stream()
            .filter(other -> !other.customer().equals(own.customer()))
            .map(Entitlement::takeHome)
            .reduce(Weight.ZERO, Weight::plus);
    return elsewhere.isZero() || own.isOutrightOnly()
        ? Optional.empty()
        : Optional.of(say("mine.elsewhere", home(elsewhere)));
  }
}
