package gambrel.pages.owner.morning;

import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.cause.Suggestion;
import gambrel.pages.owner.Names;
import gambrel.pages.views.MorningView.Item;
import gambrel.pages.views.MorningView.Likely;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Why bodies are held, in words, with what to do and what probably went wrong.
 *
 * @param night the night's figures
 * @param causes likely causes by body; may be none
 * @param wording the language
 */
record ReasonWords(Night night, LikelyCauses causes, Wording wording) {
  private static final int MOST_NAMES = 4;

  /** A body that is held, with some of its reasons. */
  Item of(BodyAccount account, List<Reason> reasons) {
    var byCode = new TreeMap<>(Groups.inOrder(reasons.stream(), Reason::code));
    var why = new ArrayList<String>();
    byCode.forEach((code, of) -> why.add(sentence(account, code, of)));
    var advice = byCode.keySet().stream().map(code -> wording.say("summary.cure." + code.id()));
    return new Item(
        new Names(night, wording).ofWhom(account),
        String.join(" ", why),
        advice.distinct().collect(Collectors.joining(" ")),
        List.of(),
        causes.of(account.body().id()).stream().map(this::likely).toList());
  }

  private Likely likely(Suggestion suggestion) {
    var notices = wording.notices();
    return new Likely(
        notices.of(suggestion.evidence()),
        suggestion.lines().isEmpty()
            ? notices.advice(suggestion.evidence())
            : wording.say("morning.likely.line"),
        suggestion.lines().stream().map(notices::of).toList());
  }

  /** One sentence for all reasons of a code, with their figures. Export files are never named. */
  private String sentence(BodyAccount account, ReasonCode code, List<Reason> reasons) {
    var unit = night.shop().settings().unit();
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
              wording.formats().weight(first.weight("limit"), decimals),
              wording.formats().weight(first.weight("uncertainty"), decimals));
      case RAIL_MISSING ->
          wording.say(key, list(reasons, r -> wording.say("summary.step." + r.name())));
      case HOME_LOW ->
          wording.say(key, weight(first, "home", decimals), weight(first, "boning", decimals));
      case RAIL_TWICE -> wording.say(key, list(reasons, this::row));
      case ROW_SET_ASIDE -> wording.counted(key, reasons.size(), list(reasons, this::row));
      case BATCH_OUT -> wording.say(key, list(reasons, reason -> batch(reason, decimals)));
      case CHARGE_UNKNOWN -> wording.say(key, list(reasons, ReasonWords::charge));
      case SCALE_FAILED -> wording.say(key, list(reasons, reason -> reason.text("scale")));
      default -> wording.say(key, list(reasons, Reason::name));
    };
  }

  private String list(List<Reason> reasons, Function<Reason, String> name) {
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
