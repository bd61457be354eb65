package gambrel.register;

import gambrel.decision.State;
import gambrel.notice.Notice;
import gambrel.notice.NoticeCode;
import gambrel.notice.Place;
import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.shop.Release;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Which statements go out tonight, and which are held.
 *
 * @param issue those that go out
 * @param held drafts of those that wait
 * @param notices what the plan has to say
 */
public record IssuePlan(List<Planned> issue, List<Planned> held, List<Notice> notices) {
  /** Copies the lists. */
  public IssuePlan {
    issue = List.copyOf(issue);
    held = List.copyOf(held);
    notices = List.copyOf(notices);
  }

  /**
   * Plans a night over what was issued before.
   *
   * @param digest the SHA-256 of figures, as the register holds it
   */
  public static IssuePlan of(Night night, Register register, Function<Figures, String> digest) {
    var issue = new ArrayList<Planned>();
    var held = new ArrayList<Planned>();
    for (var account : night.bodies().values()) {
      for (String customer : account.customers()) {
        var figures = FigureReader.read(account, customer, night.shop().settings());
        var last = register.last(customer, account.body().id());
        if (account.decision().state() == State.HELD) {
          held.add(new Planned(customer, account, figures, last, false));
        } else if (account.decision().state() == State.ISSUED) {
          boolean same = last.filter(r -> r.figures().equals(digest.apply(figures))).isPresent();
          if (!same || isReissued(night, account, last)) {
            issue.add(new Planned(customer, account, figures, last, same));
          }
        }
      }
    }
    return withinLimit(night, issue, held);
  }

  private static boolean isReissued(
      Night night, BodyAccount account, Optional<RegisterRow> last) {
    return night.shop().releases().stream()
        .filter(r -> r.action() == Release.Action.REISSUE && r.body().equals(account.body().id()))
        .filter(r -> !r.on().isAfter(night.asOf()))
        .anyMatch(r -> last.filter(l -> l.issued().isBefore(r.on().toLocalDateTime())).isPresent());
  }

  private static IssuePlan withinLimit(Night night, List<Planned> issue, List<Planned> held) {
    var revisions = issue.stream().filter(p -> p.replaces().isPresent() && !p.reissue()).toList();
    int limit = night.shop().settings().limits().revisions();
    if (revisions.size() <= limit) {
      return new IssuePlan(issue, held, List.of());
    }
    issue.removeAll(revisions);
    return new IssuePlan(
        issue,
        held,
        List.of(
            Notice.of(
                NoticeCode.REVISIONS_STOPPED,
                Place.NONE,
                revisions.size()
                    + " issued statements would change tonight; the shop's limit is "
                    + limit
                    + ". None of them was sent.")));
  }
}
