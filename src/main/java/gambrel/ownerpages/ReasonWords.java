package gambrel.ownerpages;

import gambrel.balance.BatchBalance;
import gambrel.balance.Outputs;
import gambrel.decision.Reason;
import gambrel.decision.ReasonCode;
import gambrel.measure.Share;
import gambrel.measure.Weight;
import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.shop.Charge;
import gambrel.weighing.SetAside;
import gambrel.wording.Decimals;
import gambrel.wording.Wording;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Why a body waits, in words with the figures behind it. Never names an export file. */
final class ReasonWords {
  private static final int MOST_NAMES = 4;

  private final Night night;
  private final Wording wording;

  /** The names of rows set aside that have a ticket. */
  private final Set<String> ticketed;

  ReasonWords(Night night, Wording wording) {
    this.night = night;
    this.wording = wording;
    this.ticketed =
        night.ledger().setAside().stream()
            .filter(row -> !row.notice().ticket().isEmpty())
            .map(SetAside::name)
            .collect(Collectors.toSet());
  }

  /** All reasons of one code in a sentence. */
  String sentence(BodyAccount account, ReasonCode code, List<Reason> reasons) {
    String key = "summary.reason." + code.id();
    return switch (code) {
      case LOSS_NEGATIVE -> wording.say(key, lossWeight(account, true));
      case LOSS_HIGH -> wording.say(key, lossWeight(account, false), lossPercent(account));
      case RAIL_MISSING -> wording.say(key, names(reasons, this::step));
      case ROW_SET_ASIDE ->
          wording.count(key, reasons.size(), count(reasons.size()), names(reasons, this::row));
      case BATCH_OUT -> wording.say(key, names(reasons, this::batch));
      case CHARGE_UNKNOWN -> wording.say(key, names(reasons, this::charge));
      case SCALE_FAILED -> wording.say(key, names(reasons, this::scale));
      default -> wording.say(key, names(reasons, Reason::name));
    };
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

  private String lossWeight(BodyAccount account, boolean negated) {
    var balance = account.balance();
    var loss = balance.outputs().flatMap(Outputs::cuttingLoss).orElse(Weight.ZERO);
    int decimals =
        Decimals.of(balance.weighings().all(), night.shop().settings().unit());
    return wording.formats().weight(negated ? Weight.ZERO.minus(loss) : loss, decimals);
  }

  private String lossPercent(BodyAccount account) {
    return account
        .balance()
        .shares()
        .cuttingLoss()
        .map(Share::percent)
        .map(wording.formats()::percent)
        .orElse("");
  }

  private String step(Reason reason) {
    return wording.say("summary.step." + reason.name());
  }

  /** Scale and ticket; a row without a ticket would be named by its place in a file. */
  private String row(Reason reason) {
    return ticketed.contains(reason.name())
        ? reason.name()
        : wording.say("summary.row.unnumbered");
  }

  private String batch(Reason reason) {
    BatchBalance batch = night.batches().get(reason.name());
    int decimals = Decimals.of(batch.weighings(), night.shop().settings().unit());
    return wording.say(
        "summary.batch.inout",
        reason.name(),
        wording.formats().weight(batch.meatIn().plus(batch.added()), decimals),
        wording.formats().weight(batch.out(), decimals),
        batch
            .lossShare()
            .map(share -> wording.formats().percent(share.percent()))
            .orElse(""));
  }

  private String charge(Reason reason) {
    return night.shop().charges().stream()
        .filter(charge -> charge.id().equals(reason.name()))
        .map(Charge::description)
        .filter(description -> !description.isEmpty())
        .findFirst()
        .orElse(reason.name());
  }

  /** The scale alone: its failed test stands in the morning sheet. */
  private String scale(Reason reason) {
    Optional<String> scale =
        night.shop().scales().keySet().stream()
            .filter(id -> reason.name().startsWith(id + " "))
            .max(Comparator.comparingInt(String::length));
    return scale.orElse(reason.name());
  }

  private String count(long number) {
    return wording.formats().count(number);
  }
}
