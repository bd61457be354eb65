package gambrel.pages.statement;

import gambrel.pages.views.DraftView;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.decision.Reason;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.Planned;
import java.util.ArrayList;

/** Why a statement is not final, in plain words. */
final class DraftPart {
  private final StatementContext subject;
  private final Wording wording;

  private DraftPart(StatementContext subject) {
    this.subject = subject;
    this.wording = subject.wording();
  }

  static DraftView of(StatementContext subject, Planned planned) {
    var part = new DraftPart(subject);
    var reasons = new ArrayList<String>();
    for (var reason : subject.account().decision().reasons()) {
      String words = part.words(reason);
      if (!reasons.contains(words)) {
        reasons.add(words);
      }
    }
    planned
        .replaces()
        .ifPresent(
            row ->
                reasons.add(
                    subject
                        .wording()
                        .say(
                            "draft.stands",
                            subject.formats().count(row.revision()),
                            subject.formats().date(row.issued().toLocalDate()))));
    return new DraftView(subject.wording().say("draft.sentence"), reasons);
  }

  private String words(Reason reason) {
    String key = "draft.reason." + reason.code().id();
    return switch (reason.code()) {
      case RAIL_MISSING -> wording.say(key, wording.say("draft.rail." + reason.name()));
      case LOSS_NEGATIVE ->
          wording.say(key, weight(reason, "surplus"), weight(reason, "uncertainty"));
      case LOSS_HIGH ->
          wording.say(
              key, weight(reason, "loss"), weight(reason, "limit"), weight(reason, "uncertainty"));
      case BATCH_OUT, BATCH_LATE, BATCH_OPEN -> wording.say(key, batch(reason.name()));
      case CHARGE_UNKNOWN -> wording.say(key, charge(reason));
      case PARTS_MISSING, ROW_SET_ASIDE, SHARES, SCALE_FAILED, PART_CUT -> wording.say(key);
    };
  }

  private String weight(Reason reason, String name) {
    var weighings = new ArrayList<>(subject.balance().weighings().out());
    weighings.addAll(subject.balance().boningWeighings());
    int decimals = WeightDecimals.of(weighings, subject.settings().unit());
    return subject.formats().fitting(reason.weight(name), decimals);
  }

  private String batch(String id) {
    return new BatchMeat(subject, subject.night().batches().get(id), Weight.ZERO).name();
  }

  private static String charge(Reason reason) {
    String description = reason.text("description");
    return description.isEmpty() ? reason.name() : description;
  }
}
