package gambrel.trade.decision;

import gambrel.trade.balance.BodyBalance;
import gambrel.trade.shop.Release;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The releases in force at one moment, by body. */
public final class Releases {
  private final Map<String, List<Release>> byBody = new HashMap<>();

  /** The releases dated {@code asOf} or earlier. */
  public Releases(List<Release> releases, OffsetDateTime asOf) {
    for (var release : releases) {
      if (!release.on().isAfter(asOf)) {
        byBody.computeIfAbsent(release.body(), b -> new ArrayList<>()).add(release);
      }
    }
  }

  /** The releases of one kind for a body, in file order. */
  public List<Release> of(String body, Release.Action action) {
    return byBody.getOrDefault(body, List.of()).stream()
        .filter(release -> release.action() == action)
        .toList();
  }

  /** The closes of a packed body that no weighing of it is later than; it is closed by any. */
  List<Release> closes(BodyBalance balance) {
    return of(balance.body().id(), Release.Action.CLOSE).stream()
        .filter(close -> balance.isPacked())
        .filter(
            close ->
                balance.weighings().all().stream().noneMatch(w -> w.time().isAfter(close.on())))
        .toList();
  }
}
