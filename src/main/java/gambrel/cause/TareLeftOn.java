package gambrel.cause;

import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;

/** Finds trays and bins whose own weight was weighed with what lay in them. */
final class TareLeftOn implements Finder {
  private static final long OTHERS_SHOW_IT = 100;
  private static final long KNOWN_OF_THE_CODE = 400;
  private static final int MOST_ROWS = 12;

  private final Traces traces;
  private final Tares tares;

  TareLeftOn(Traces traces, Tares tares) {
    this.traces = traces;
    this.tares = tares;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var rows =
        suspect.balance().weighings().all().stream()
            .filter(w -> !w.step().isRail() && traces.isUntouched(w))
            .toList();
    var candidates = new ArrayList<Candidate>();
    for (var row : rows) {
      tares.lacking(row).filter(l -> l.shown() || isOnly(row, rows))
          .ifPresent(
              lacking ->
                  tares.take(row, lacking.tare())
                      .ifPresent(touch -> candidates.add(one(touch, lacking))));
    }
    var all = tares.takeShown(rows);
    if (all.size() > 1 && all.size() <= MOST_ROWS) {
      candidates.add(
          Candidate.of(Cause.TARE_LEFT_ON, all, OTHERS_SHOW_IT).because(""));
    }
    return candidates;
  }

  private static Candidate one(Touch touch, Tares.Lacking lacking) {
    return Candidate.of(
            Cause.TARE_LEFT_ON, touch, lacking.shown() ? OTHERS_SHOW_IT : KNOWN_OF_THE_CODE)
        .because(lacking.tare().toPlainString() + " " + touch.weighing().unit().id());
  }

  private static boolean isOnly(Weighing row, List<Weighing> rows) {
    return rows.stream().filter(r -> r.code().equals(row.code())).count() == 1;
  }
}
