package gambrel.wording;

import gambrel.balance.Drawn;
import gambrel.cuts.Species;
import gambrel.measure.Exact;
import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.shop.Outcome;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What earlier bodies of the same kind gave at this shop.
 *
 * @param count how many
 * @param least take-home of cold weight, in per cent
 * @param most the same
 */
record OwnBodies(int count, BigFraction least, BigFraction most) {
  /** With fewer, a range would tell one neighbour's figures. */
  private static final int FEWEST = 5;

  private static final int MOST = 20;

  private static final Drawn<Night, Map<Kind, NavigableMap<Instant, List<BigFraction>>>> GIVEN =
      new Drawn<>(OwnBodies::given);

  /** Bodies that are held against each other. */
  private record Kind(Species species, String category) {
    static Kind of(BodyAccount account) {
      return new Kind(account.body().species(), account.body().category());
    }
  }

  /** The last ones cut before the subject's body, so that a later body changes no page. */
  static Optional<OwnBodies> of(Subject subject) {
    var cut = subject.balance().lastCut();
    if (cut.isEmpty() || subject.body().category().isEmpty()) {
      return Optional.empty();
    }
    var percents =
        GIVEN
            .of(subject.night())
            .getOrDefault(Kind.of(subject.account()), Collections.emptyNavigableMap())
            .headMap(cut.get().toInstant(), false)
            .descendingMap()
            .values()
            .stream()
            .flatMap(List::stream)
            .limit(MOST)
            .sorted()
            .toList();
    return percents.size() < FEWEST
        ? Optional.empty()
        : Optional.of(
            new OwnBodies(percents.size(), percents.get(0), percents.get(percents.size() - 1)));
  }

  /** What every body gave, by when it was cut last; those cut at one moment by id. */
  private static Map<Kind, NavigableMap<Instant, List<BigFraction>>> given(Night night) {
    var given = new HashMap<Kind, NavigableMap<Instant, List<BigFraction>>>();
    night.bodies().values().stream()
        .filter(OwnBodies::isDone)
        .forEach(
            account ->
                given
                    .computeIfAbsent(Kind.of(account), kind -> new TreeMap<>())
                    .computeIfAbsent(lastCut(account), moment -> new ArrayList<>())
                    .add(account.balance().shares().takeHomeOfCold().orElseThrow().percent()));
    return given;
  }

  /** Whether a percentage, as printed, lies below (−1), in (0) or above (1) what they gave. */
  int compare(BigFraction percent) {
    var printed = Exact.round(percent, 1);
    if (printed.compareTo(Exact.round(least, 1)) < 0) {
      return -1;
    }
    return printed.compareTo(Exact.round(most, 1)) > 0 ? 1 : 0;
  }

  private static boolean isDone(BodyAccount account) {
    return account.isSettled()
        && account.body().outcome() == Outcome.CUT
        && account.balance().shares().takeHomeOfCold().isPresent()
        && account.balance().lastCut().isPresent();
  }

  private static Instant lastCut(BodyAccount account) {
    return account.balance().lastCut().orElseThrow().toInstant();
  }
}
