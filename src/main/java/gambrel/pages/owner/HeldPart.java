package gambrel.pages.owner;

import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.cause.Suggestion;
import gambrel.pages.views.Held;
import gambrel.pages.words.Wording;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The bodies that are held, with the reasons, what to do, and what probably went wrong. */
public final class HeldPart {
  private final ReasonWords reasons;
  private final Names names;
  private final LikelyCauses causes;
  private final Wording wording;

  /** For the bodies of a night. */
  public HeldPart(Night night, LikelyCauses causes, Wording wording) {
    this.causes = causes;
    this.wording = wording;
    this.reasons = new ReasonWords(night.shop().settings().unit(), wording);
    this.names = new Names(night, wording);
  }

  /** The held bodies among {@code accounts}. */
  public static List<BodyAccount> among(Collection<BodyAccount> accounts) {
    return accounts.stream().filter(account -> account.decision().state() == State.HELD).toList();
  }

  /** A row for each of the bodies. */
  public List<Held> of(List<BodyAccount> held) {
    return held.stream().map(this::held).toList();
  }

  private Held held(BodyAccount account) {
    Map<ReasonCode, List<Reason>> byCode = new EnumMap<>(ReasonCode.class);
    for (var reason : account.decision().reasons()) {
      byCode.computeIfAbsent(reason.code(), code -> new ArrayList<>()).add(reason);
    }
    var why = new ArrayList<String>();
    byCode.forEach((code, of) -> why.add(reasons.sentence(account, code, of)));
    var advice = byCode.keySet().stream().map(code -> wording.say("summary.cure." + code.id()));
    return new Held(
        names.body(account),
        names.customers(account),
        String.join(" ", why),
        advice.distinct().collect(Collectors.joining(" ")),
        causes.of(account.body().id()).stream().map(this::likely).toList());
  }

  private Held.Likely likely(Suggestion suggestion) {
    var notices = wording.notices();
    return new Held.Likely(
        notices.of(suggestion.evidence()),
        suggestion.lines().isEmpty()
            ? notices.advice(suggestion.evidence())
            : wording.say("morning.likely.line"),
        suggestion.lines().stream().map(notices::of).toList());
  }
}
