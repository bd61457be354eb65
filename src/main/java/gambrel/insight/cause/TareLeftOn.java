package gambrel.insight.cause;

import gambrel.trade.notice.Value;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds weighings from which the tare of a tray or bin was not taken off. */
final class TareLeftOn extends Finder {
  private static final long OTHERS_SHOW_IT = 100;
  private static final long ONLY_OF_CODE = 400;
  private static final long LIKE_OTHERS = 200;
  private static final int MOST_ROWS = 12;

  TareLeftOn(RowIndex rows, BodyFacts suspect) {
    super(rows, suspect);
  }

  @Override
  Stream<Candidate> candidates() {
    var weighings =
        suspect.weighings().stream()
            .filter(w -> !w.step().isRail() && rows.isUncorrected(w))
            .toList();
    var each = weighings.stream().flatMap(w -> one(w, weighings).stream());
    var all = rows.tares().takeShown(weighings);
    return all.size() > 1 && all.size() <= MOST_ROWS
        ? Stream.concat(each, Stream.of(Candidate.of(Cause.TARE_LEFT_ON, all, OTHERS_SHOW_IT)))
        : each;
  }

  /** One row less its tare, if others show the tare or no other row of the body has its code. */
  private Optional<Candidate> one(Weighing weighing, List<Weighing> all) {
    return rows.tares()
        .lacking(weighing)
        .filter(lacking -> lacking.shown() || isOnly(weighing, all))
        .flatMap(
            lacking ->
                rows.tares()
                    .take(weighing, lacking.tare())
                    .map(change -> candidate(change, lacking)));
  }

  private static boolean isOnly(Weighing weighing, List<Weighing> all) {
    return all.stream().filter(other -> other.code().equals(weighing.code())).count() == 1;
  }

  private Candidate candidate(RowChange change, Tares.Lacking lacking) {
    long penalty = lacking.shown() ? OTHERS_SHOW_IT : ONLY_OF_CODE - likeness(change) * LIKE_OTHERS;
    return Candidate.of(Cause.TARE_LEFT_ON, change, penalty)
        .comparedWith(new Value.Shown(Tares.plain(lacking.tare()), change.weighing().unit()));
  }

  /** 1 if the change brings the weight into the range of others, -1 if out of it, else 0. */
  private int likeness(RowChange change) {
    return rows.ranges()
        .ofOthers(change.weighing())
        .map(
            range ->
                Boolean.compare(
                    range.holds(change.net()),
                    range.holds(change.weighing().net().hundredThousandths())))
        .orElse(0);
  }
}
