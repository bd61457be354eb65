package gambrel.pages.owner;

import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.BodyAccount;
import java.util.List;
import java.util.function.Function;

/** Says why a body is held, with the figures that decided it. Export files are never named. */
record ReasonWords(WeightUnit unit, Wording wording) {
  private static final int MOST_NAMES = 4;

  /** One sentence for all reasons of a code. */
  String sentence(BodyAccount account, ReasonCode code, List<Reason> reasons) {
    int decimals = WeightDecimals.of(account.balance().weighings().all(), unit);
    var first = reasons.get(0);
    String key = "summary.reason." + code.id();
    return switch (code) {
      case LOSS_NEGATIVE ->
          wording.say(
              key, weight(first, "surplus", decimals), weight(first, "uncertainty", decimals));
      case LOSS_HIGH ->
          wording.say(
              key,
              weight(first, "loss", decimals),
              percentLost(first),
              weight(first, "limit", decimals),
              weight(first, "uncertainty", decimals));
      case RAIL_MISSING ->
          wording.say(key, names(reasons, r -> wording.say("summary.step." + r.name())));
      case ROW_SET_ASIDE -> wording.counted(key, reasons.size(), names(reasons, this::row));
      case BATCH_OUT -> wording.say(key, names(reasons, reason -> batch(reason, decimals)));
      case CHARGE_UNKNOWN -> wording.say(key, names(reasons, ReasonWords::charge));
      case SCALE_FAILED -> wording.say(key, names(reasons, reason -> reason.text("scale")));
      default -> wording.say(key, names(reasons, Reason::name));
    };
  }

  private String names(List<Reason> reasons, Function<Reason, String> name) {
    return wording.names(reasons.stream().map(name).distinct().toList(), MOST_NAMES);
  }

  private String weight(Reason reason, String name, int decimals) {
    return wording.formats().fitting(reason.weight(name), decimals);
  }

  /** The loss of the weight into the boning room; empty if that is zero. */
  private String percentLost(Reason reason) {
    var boning = reason.weight("boning");
    return boning.isZero()
        ? ""
        : wording.formats().percent(reason.weight("loss").percentOf(boning));
  }

  /** Scale and ticket; a row without a ticket would be named by its place in a file. */
  private String row(Reason reason) {
    return reason.text("ticket").isEmpty() ? wording.say("summary.row.unnumbered") : reason.name();
  }

  private String batch(Reason reason, int decimals) {
    return wording.say(
        "summary.batch.inout",
        reason.name(),
        weight(reason, "in", decimals),
        weight(reason, "out", decimals),
        reason.value("share") instanceof Value.Percent share
            ? wording.formats().percent(share.percent())
            : "");
  }

  private static String charge(Reason reason) {
    String description = reason.text("description");
    return description.isEmpty() ? reason.name() : description;
  }
}
