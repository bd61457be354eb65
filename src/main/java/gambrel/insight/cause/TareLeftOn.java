package gambrel.insight.cause;

import gambrel.trade.notice.Value;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds weighings from which the tare of a tray or bin was not taken off. */
record TareLeftOn(RowIndex rows, BodyFacts suspect) {
  private static final long OTHERS_SHOW_IT = 400;
  private static final long ONLY_OF_CODE = 800;
  private static final int MOST_ROWS = 12;

  Stream<Candidate> candidates() {
    var weighings =
        suspect.weighings().stream()
            .filter(w -> !w.step().isRail() && rows.isUncorrected(w))
            .toList();
    var each = weighings.stream().flatMap(w -> one(w, weighings).stream());
    var all =
        weighings.stream()
            .flatMap(
                w ->
                    rows.tares.lacking(w).filter(Tares.Lacking::shown).stream()
                        .flatMap(lacking -> rows.tares.take(w, lacking.tare()).stream()))
            .toList();
    return all.size() > 1 && all.size() <= MOST_ROWS
        ? Stream.concat(each, Stream.of(Candidate.of(Cause.TARE_LEFT_ON, all, OTHERS_SHOW_IT)))
        : each;
  }

  /** One row less its tare, if others show the tare or no other row of the body has its code. */
  private Optional<Candidate> one(Weighing weighing, List<Weighing> all) {
    return rows.tares
        .lacking(weighing)
        .filter(lacking -> lacking.shown() || isOnly(weighing, all))
        .flatMap(
            lacking ->
                rows.tares
                    .take(weighing, lacking.tare())
                    .map(change -> candidate(change, lacking)));
  }

  private static boolean isOnly(Weighing weighing, List<Weighing> all) {
    return all.stream().filter(other -> other.code().equals(weighing.code())).count() == 1;
  }

  private Candidate candidate(RowChange change, Tares.Lacking lacking) {
    return Candidate.of(Cause.TARE_LEFT_ON, change, lacking.shown() ? OTHERS_SHOW_IT : ONLY_OF_CODE)
        .witnessed(rows.ranges.odder(change.weighing(), change.net()))
        .with("witness", new Value.Shown(Tares.plain(lacking.tare()), change.weighing().unit()));
  }
}
