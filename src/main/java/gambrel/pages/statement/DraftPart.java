package gambrel.pages.statement;

import gambrel.pages.views.DraftView;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.decision.Reason;
import gambrel.trade.register.Planned;
import java.util.ArrayList;

/** The reasons why a statement is held, each as a sentence. */
final class DraftPart extends StatementPart {
  private DraftPart(StatementContext subject) {
    super(subject);
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
      case RAIL_MISSING -> say(key, say("draft.rail." + reason.name()));
      case LOSS_NEGATIVE -> say(key, weight(reason, "surplus"), weight(reason, "uncertainty"));
      case LOSS_HIGH ->
          say(key, weight(reason, "loss"), weight(reason, "limit"), weight(reason, "uncertainty"));
      case HOME_LOW -> say(key, weight(reason, "home"), weight(reason, "boning"));
      case BATCH_OUT, BATCH_LATE, BATCH_OPEN -> say(key, subject.batchName(reason.name()));
      case CHARGE_UNKNOWN -> say(key, charge(reason));
      case PARTS_MISSING, RAIL_TWICE, ROW_SET_ASIDE, SHARES, SCALE_FAILED, PART_CUT -> say(key);
    };
  }

  private String weight(Reason reason, String name) {
    var weighings = new ArrayList<>(subject.balance().weighings().out());
    weighings.addAll(subject.balance().boningWeighings());
    int decimals = WeightDecimals.of(weighings, subject.settings().unit());
    return formats.fitting(reason.weight(name), decimals);
  }

  private static String charge(Reason reason) {
    String description = reason.text("description");
    return description.isEmpty() ? reason.name() : description;
  }
}
