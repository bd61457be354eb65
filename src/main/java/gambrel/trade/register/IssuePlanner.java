package gambrel.trade.register;

import gambrel.trade.decision.Reason;
import gambrel.trade.decision.State;
import gambrel.trade.decision.UnreadRows;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Release;
import gambrel.trade.shop.UnreadRow;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Decides which statements a night issues and which drafts it holds. */
public final class IssuePlanner {
  private static final int MOST_NAMES = 10;

  private final Night night;
  private final Register register;
  private final Function<Figures, String> digest;
  private final LocalDateTime now;
  private final List<Notice> notices = new ArrayList<>();

  /**
   * For a night and the statements issued before.
   *
   * @param digest the SHA-256 of figures, as the register holds it
   */
  public IssuePlanner(Night night, Register register, Function<Figures, String> digest) {
    this.night = night;
    this.register = register;
    this.digest = digest;
    this.now = night.asOf().toLocalDateTime();
  }

  /**
   * The statements to issue tonight, and the drafts to hold.
   *
   * @param issue the statements to issue, in the order of their numbers
   * @param held the drafts of held statements
   * @param notices the notices about issuing and about earlier statements
   */
  public record Plan(List<Planned> issue, List<Planned> held, List<Notice> notices) {
    /** Copies the lists. */
    public Plan {
      issue = List.copyOf(issue);
      held = List.copyOf(held);
      notices = List.copyOf(notices);
    }

    /** The plan of a night that may issue nothing: the drafts alone. */
    public Plan withoutIssues() {
      return new Plan(List.of(), held, List.of());
    }
  }

  /** The plan of the night. */
  public Plan plan() {
    var held = planned(State.HELD, this::draft);
    var issue = withinLimit(planned(State.ISSUED, this::statement));
    notices.addAll(new RegisterReview(night, register).notices());
    return new Plan(issue.stream().sorted(Planned.ORDER).toList(), held, notices);
  }

  /**
   * The night with every body held of which a statement would go out and that a row could concern
   * which cannot be read and {@linkplain UnreadRow#holdsWhatGoesOut holds only that}.
   */
  public Night holdingWhatGoesOut() {
    var unread = new UnreadRows(night.shop(), night.ledger(), night.asOf());
    var reasons = new HashMap<String, List<Reason>>();
    for (var account : night.bodies().values()) {
      var concerned = unread.reasons(account.balance(), true);
      boolean goesOut =
          account.decision().state() == State.ISSUED
              && !concerned.isEmpty()
              && account.customers().stream().anyMatch(c -> statement(account, c).isPresent());
      if (goesOut) {
        reasons.put(account.body().id(), concerned);
      }
    }
    return night.holding(reasons);
  }

  /** What {@code plan} gives for each customer of the bodies in {@code state}, in order of body. */
  private List<Planned> planned(
      State state, BiFunction<BodyAccount, String, Optional<Planned>> plan) {
    return night.bodies().values().parallelStream()
        .filter(account -> account.decision().state() == state)
        .flatMap(a -> a.customers().stream().flatMap(c -> plan.apply(a, c).stream()))
        .toList();
  }

  private Optional<Planned> draft(BodyAccount account, String customer) {
    var last = register.last(customer, account.body().id());
    return Optional.of(new Planned(customer, account, last, false));
  }

  /** The statement to issue; empty if the last one stands or is dated later than this night. */
  private Optional<Planned> statement(BodyAccount account, String customer) {
    var last = register.last(customer, account.body().id());
    boolean same = last.filter(row -> hasFigures(row, account, customer)).isPresent();
    boolean later = last.filter(row -> row.issued().isAfter(now)).isPresent();
    return later || same && !isReissued(account, last)
        ? Optional.empty()
        : Optional.of(new Planned(customer, account, last, same));
  }

  private boolean hasFigures(RegisterRow row, BodyAccount account, String customer) {
    var figures = Figures.of(account, customer, night.shop().settings());
    return row.figures().equals(digest.apply(figures));
  }

  private boolean isReissued(BodyAccount account, Optional<RegisterRow> last) {
    var zone = night.shop().settings().zone();
    return night.shop().releases().stream()
        .filter(r -> r.action() == Release.Action.REISSUE && r.body().equals(account.body().id()))
        .filter(r -> !r.on().isAfter(night.asOf()))
        .map(r -> r.on().atZoneSameInstant(zone).toLocalDateTime().withNano(0))
        .anyMatch(on -> last.filter(row -> row.issued().isBefore(on)).isPresent());
  }

  /** {@code issue}; without the revisions, and with a notice, if these are more than allowed. */
  private List<Planned> withinLimit(List<Planned> issue) {
    var revisions = issue.stream().filter(Planned::isRevision).toList();
    int limit = night.shop().settings().limits().revisions();
    if (revisions.size() <= limit) {
      return issue;
    }
    notices.add(
        Notice.of(NoticeCode.REVISIONS_STOPPED)
            .with("count", revisions.size())
            .with("limit", limit)
            .with("bodies", bodies(revisions)));
    return issue.stream().filter(planned -> !planned.isRevision()).toList();
  }

  private static Value bodies(List<Planned> revisions) {
    var bodies = revisions.stream().map(Planned::body).distinct().toList();
    var named = new Value.Names(bodies.stream().limit(MOST_NAMES).toList());
    return bodies.size() > MOST_NAMES ? Phrase.of("LIST.OTHERS").with("named", named) : named;
  }
}
