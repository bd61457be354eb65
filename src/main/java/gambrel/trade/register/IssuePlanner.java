package gambrel.trade.register;

import gambrel.trade.decision.State;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Release;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Plans one night. */
final class IssuePlanner {
  private static final int MOST_NAMES = 10;

  private final Night night;
  private final Register register;
  private final Function<Figures, String> digest;
  private final LocalDateTime now;
  private final List<Planned> issue = new ArrayList<>();
  private final List<Planned> held = new ArrayList<>();
  private final List<Notice> notices = new ArrayList<>();

  IssuePlanner(Night night, Register register, Function<Figures, String> digest) {
    this.night = night;
    this.register = register;
    this.digest = digest;
    this.now = night.asOf().toLocalDateTime();
  }

  IssuePlan plan() {
    var standing = standing();
    for (var account : night.bodies().values()) {
      if (account.decision().state() == State.HELD) {
        account.customers().forEach(customer -> held.add(draft(account, customer)));
      } else if (account.decision().state() == State.ISSUED) {
        account.customers().forEach(customer -> consider(account, customer, standing));
      }
    }
    keepWithinLimit();
    notices.addAll(new RegisterReview(night, register).notices());
    return new IssuePlan(issue, held, notices);
  }

  private Planned draft(BodyAccount account, String customer) {
    return new Planned(customer, account, register.last(customer, account.body().id()), false);
  }

  /**
   * The statements whose figures are still the same; to read them takes long where they are many.
   */
  private Set<RegisterRow> standing() {
    return night.bodies().values().parallelStream()
        .filter(account -> account.decision().state() == State.ISSUED)
        .flatMap(account -> account.customers().stream().flatMap(c -> standing(account, c)))
        .collect(Collectors.toSet());
  }

  private Stream<RegisterRow> standing(BodyAccount account, String customer) {
    return register.last(customer, account.body().id()).stream()
        .filter(row -> hasFigures(row, account, customer));
  }

  private void consider(BodyAccount account, String customer, Set<RegisterRow> standing) {
    var last = register.last(customer, account.body().id());
    boolean same = last.filter(standing::contains).isPresent();
    if (same && !isReissued(account, last)) {
      return;
    }
    if (last.filter(row -> row.issued().isAfter(now)).isPresent()) {
      return;
    }
    issue.add(new Planned(customer, account, last, same));
  }

  private boolean hasFigures(RegisterRow row, BodyAccount account, String customer) {
    var figures = FigureReader.read(account, customer, night.shop().settings());
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

  private void keepWithinLimit() {
    var revisions = issue.stream().filter(p -> p.replaces().isPresent() && !p.reissue()).toList();
    int limit = night.shop().settings().limits().revisions();
    if (revisions.size() > limit) {
      issue.removeAll(revisions);
      notices.add(
          Notice.of(NoticeCode.REVISIONS_STOPPED, Place.NONE)
              .with("count", revisions.size())
              .with("limit", limit)
              .with("bodies", bodies(revisions)));
    }
  }

  private static Value bodies(List<Planned> revisions) {
    var bodies = revisions.stream().map(Planned::body).distinct().toList();
    var named = new Value.Names(bodies.stream().limit(MOST_NAMES).toList());
    return bodies.size() > MOST_NAMES ? Phrase.of("LIST.OTHERS").with("named", named) : named;
  }
}
