package gambrel.ownerpages;

import gambrel.cause.LikelyCauses;
import gambrel.cause.Suggestion;
import gambrel.decision.Reason;
import gambrel.decision.ReasonCode;
import gambrel.decision.State;
import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.statement.Held;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** The bodies that wait for a person, with why and what to do. */
final class HeldPart {
  private final ReasonWords reasons;
  private final Named named;
  private final LikelyCauses causes;
  private final Wording wording;

  HeldPart(Night night, Wording wording) {
    this(night, LikelyCauses.NONE, wording);
  }

  /** With what probably went wrong. */
  HeldPart(Night night, LikelyCauses causes, Wording wording) {
    this.causes = causes;
    this.wording = wording;
    this.reasons = new ReasonWords(night.shop().settings().unit(), wording);
    this.named = new Named(night, wording);
  }

  /** Those of {@code accounts} that are held. */
  static List<BodyAccount> among(Collection<BodyAccount> accounts) {
    return accounts.stream()
        .filter(account -> account.decision().state() == State.HELD)
        .toList();
  }

  /** A row for each of some that are held. */
  List<Held> of(List<BodyAccount> held) {
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
