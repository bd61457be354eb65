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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** The bodies that wait for a person, with why and what to do. */
public final class HeldPart {
  private final ReasonWords reasons;
  private final Names named;
  private final LikelyCauses causes;
  private final Wording wording;

  public HeldPart(Night night, Wording wording) {
    this(night, LikelyCauses.NONE, wording);
  }

  /** With what probably went wrong. */
  public HeldPart(Night night, LikelyCauses causes, Wording wording) {
    this.causes = causes;
    this.wording = wording;
    this.reasons = new ReasonWords(night.shop().settings().unit(), wording);
    this.named = new Names(night, wording);
  }

  /** Those of {@code accounts} that are held. */
  public static List<BodyAccount> among(Collection<BodyAccount> accounts) {
    return accounts.stream().filter(account -> account.decision().state() == State.HELD).toList();
  }

  /** A row for each of some that are held. */
  public List<Held> of(List<BodyAccount> held) {
    return held.stream().map(this::held).toList();
  }

  private Held held(BodyAccount account) {
    Map<ReasonCode, List<Reason>> byCode = new EnumMap<>(ReasonCode.class);
    for (var reason : account.decision().reasons()) {
      byCode.computeIfAbsent(reason.code(), code -> new ArrayList<>()).add(reason);
    }
    var why = new ArrayList<String>();
    var cures = new LinkedHashSet<String>();
    byCode.forEach(
        (code, of) -> {
          why.add(reasons.sentence(account, code, of));
          cures.add(reasons.cure(code));
        });
    return new Held(
        named.body(account),
        named.customers(account),
        String.join(" ", why),
        String.join(" ", cures),
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
