package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.account.Entitlement;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Step;
import java.util.ArrayList;
import java.util.Optional;
import java.util.stream.Collectors;

/** Answers about the boxes: how much is in them, and whose meat it is. */
final class BoxAnswers extends StatementPart {
  BoxAnswers(StatementPart statement) {
    super(statement);
  }

  /** Answers "How much is there?" with the weight that a scale shows, and what it is made of. */
  Answer packs() {
    var lines = new ArrayList<String>();
    if (is(Outcome.CUT)) {
      kinds().ifPresent(lines::add);
      outrightPacks().ifPresent(lines::add);
      whole().ifPresent(lines::add);
      if (!openBatches().isEmpty()) {
        lines.add(say("packs.pending"));
      }
    } else {
      lines.add(say(is(Outcome.WHOLE) ? "packs.whole" : "packs.condemned"));
      offalPacks().ifPresent(lines::add);
    }
    return answer("packs.question", packed(), lines);
  }

  private String packed() {
    if (is(Outcome.CONDEMNED)) {
      return say("packs.condemned.lead");
    }
    if (is(Outcome.CUT) && own.boxes().isZero()) {
      return say("packs.none.lead");
    }
    String weight = is(Outcome.CUT) ? headline(own.boxes()) : hung(own.takeHome());
    if (isSharer()) {
      return say("packs.share.lead", weight, yours());
    }
    return is(Outcome.CUT)
        ? packs("packs.lead.", account.packs(own.customer()), weight)
        : say("packs.whole.lead", weight);
  }

  /** A sentence with packs and a weight, which also names batches with meat of others. */
  private String packs(String key, int packs, String weight) {
    String mixed =
        batchMeat().stream()
            .filter(batch -> !batch.isAlone())
            .map(BatchMeat::name)
            .distinct()
            .collect(Collectors.joining(", "));
    return mixed.isEmpty()
        ? wording.counted(key + "all", packs, weight)
        : wording.counted(key + "some", packs, weight, mixed);
  }

  /** What the boxes hold by kind; empty if it is nothing but cuts or offal. */
  private Optional<String> kinds() {
    var parts = new ArrayList<>(onTop());
    if (!own.takeHome().isZero()) {
      parts.add(0, say(meat(), home(own.takeHome())));
    }
    boolean plain = parts.size() < 2 && own.boneAndFat().isZero();
    return plain ? Optional.empty() : Optional.of(say("packs.parts", String.join(", ", parts)));
  }

  private String meat() {
    var packed = own.lines().stream().filter(line -> !line.weight().isZero()).toList();
    if (packed.stream().anyMatch(line -> line.kind() == Kind.FAT)) {
      return "packs.part.fat";
    }
    return packed.stream().anyMatch(this::hasBone) ? "packs.part.bone" : "packs.part.meat";
  }

  /** Whether a line has bone in it. A piece that was not broken further counts as on the bone. */
  private boolean hasBone(Entitlement.Line line) {
    return !line.isOffal() && (!line.kind().isMeat() || tree.facts(line.item()).isOnBone());
  }

  /** The packs that name a customer who also has a share. */
  private Optional<String> outrightPacks() {
    int packs = outright().size();
    return isSharer() && packs > 0
        ? Optional.of(wording.counted("packs.outright", packs, headline(own.outright())))
        : Optional.empty();
  }

  /** The packs and the weight of the whole body, for a customer who has a part of it. */
  private Optional<String> whole() {
    int packs = weighings.of(Step.PACK).size() + account.packsOfOwnBatches();
    if (!isSharer() || packs == 0) {
      return Optional.empty();
    }
    return Optional.of(packs("packs.of_whole.", packs, headline(account.sum(Entitlement::boxes))));
  }

  private Optional<String> offalPacks() {
    return own.offal().isZero() || is(Outcome.CONDEMNED)
        ? Optional.empty()
        : Optional.of(say("packs.offal", home(own.offal())));
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
      lines.add(sayForHead(batches.isEmpty() ? "mine.alone" : "mine.alone.batches"));
    }
    for (var batch : batches) {
      others(batch).ifPresent(lines::add);
      added(batch).ifPresent(lines::add);
    }
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
      return say("mine.lead.share", yours());
    }
    return isMob() ? say("mine.lead.mob", formats.count(body.head())) : say("mine.lead");
  }

  /** Whose meat a batch has besides this body's; empty if nobody's. */
  private Optional<String> others(BatchMeat batch) {
    var whose = new ArrayList<String>();
    if (batch.others() > 0) {
      whose.add(wording.counted("mine.batch.others", batch.others()));
    }
    if (batch.hasShopMeat()) {
      whose.add(say("mine.batch.shop"));
    }
    return batch.isAlone()
        ? Optional.empty()
        : Optional.of(say("mine.batch", batch.name(), String.join(", ", whose)));
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
    var others =
        account.entitlements().values().stream().filter(other -> !other.equals(own)).toList();
    var elsewhere = Weight.sum(others.stream().map(Entitlement::takeHome).toList());
    return elsewhere.isZero() || own.isOutrightOnly()
        ? Optional.empty()
        : Optional.of(say("mine.elsewhere", home(elsewhere)));
  }
}
