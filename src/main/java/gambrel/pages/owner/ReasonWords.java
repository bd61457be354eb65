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
import java.util.stream.Collectors;

/** Why a body waits, in words with the figures behind it. Never names an export file. */
final class ReasonWords {
  private static final int MOST_NAMES = 4;

  private final WeightUnit unit;
  private final Wording wording;

  ReasonWords(WeightUnit unit, Wording wording) {
    this.unit = unit;
    this.wording = wording;
  }

  /** All reasons of one code in a sentence. */
  String sentence(BodyAccount account, ReasonCode code, List<Reason> reasons) {
    int decimals = WeightDecimals.of(account.balance().weighings().all(), unit);
    String key = "summary.reason." + code.id();
    return switch (code) {
      case LOSS_NEGATIVE ->
          wording.say(
              key,
              weight(reasons.get(0), "surplus", decimals),
              weight(reasons.get(0), "uncertainty", decimals));
      case LOSS_HIGH -> lossHigh(key, reasons.get(0), decimals);
      case RAIL_MISSING -> wording.say(key, names(reasons, this::step));
      case ROW_SET_ASIDE ->
          wording.count(key, reasons.size(), count(reasons.size()), names(reasons, this::row));
      case BATCH_OUT -> wording.say(key, names(reasons, reason -> batch(reason, decimals)));
      case CHARGE_UNKNOWN -> wording.say(key, names(reasons, ReasonWords::charge));
      case SCALE_FAILED -> wording.say(key, names(reasons, reason -> reason.text("scale")));
      default -> wording.say(key, names(reasons, Reason::name));
    };
  }

  private String lossHigh(String key, Reason reason, int decimals) {
    var boning = reason.weight("boning");
    return wording.say(
        key,
        weight(reason, "loss", decimals),
        boning.isZero() ? "" : wording.formats().percent(reason.weight("loss").percentOf(boning)),
        weight(reason, "limit", decimals),
        weight(reason, "uncertainty", decimals));
  }

  /** What to do about it. */
  String cure(ReasonCode code) {
    return wording.say("summary.cure." + code.id());
  }

  private String names(List<Reason> reasons, Function<Reason, String> name) {
    var names = reasons.stream().map(name).distinct().toList();
    String shown = names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
    int more = names.size() - MOST_NAMES;
    return more > 0 ? wording.say("summary.more", shown, count(more)) : shown;
  }

  private String weight(Reason reason, String name, int decimals) {
    return wording.formats().fitting(reason.weight(name), decimals);
  }

  private String step(Reason reason) {
    return wording.say("summary.step." + reason.name());
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

  private String count(long number) {
    return wording.formats().count(number);
  }
}
