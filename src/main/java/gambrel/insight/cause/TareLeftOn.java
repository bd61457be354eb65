package gambrel.insight.cause;

import gambrel.trade.notice.Value;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.List;

/** Finds trays and bins whose own weight was weighed with what lay in them. */
final class TareLeftOn implements Finder {
  private static final long OTHERS_SHOW_IT = 100;
  private static final long KNOWN_OF_THE_CODE = 400;
  private static final long LIKE_OTHERS = 200;
  private static final int MOST_ROWS = 12;

  private final RowIndex traces;
  private final Tares tares;
  private final CodeRanges ranges;

  TareLeftOn(RowIndex traces, Tares tares, CodeRanges ranges) {
    this.ranges = ranges;
    this.traces = traces;
    this.tares = tares;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var rows =
        suspect.weighings().stream()
            .filter(w -> !w.step().isRail() && traces.isUntouched(w))
            .toList();
    var candidates = new ArrayList<Candidate>();
    for (var row : rows) {
      tares
          .lacking(row)
          .filter(l -> l.shown() || isOnly(row, rows))
          .ifPresent(
              lacking ->
                  tares
                      .take(row, lacking.tare())
                      .ifPresent(touch -> candidates.add(one(touch, lacking))));
    }
    var all = tares.takeShown(rows);
    if (all.size() > 1 && all.size() <= MOST_ROWS) {
      candidates.add(Candidate.of(Cause.TARE_LEFT_ON, all, OTHERS_SHOW_IT));
    }
    return candidates;
  }

  private Candidate one(RowChange touch, Tares.Lacking lacking) {
    long penalty =
        lacking.shown() ? OTHERS_SHOW_IT : KNOWN_OF_THE_CODE - likeness(touch) * LIKE_OTHERS;
    return Candidate.of(Cause.TARE_LEFT_ON, touch, penalty)
        .with("witness", new Value.Shown(Tares.plain(lacking.tare()), touch.weighing().unit()));
  }

  /** Whether its weight becomes like that of others by it (1), or unlike (-1). */
  private int likeness(RowChange touch) {
    var range = ranges.ofOthers(touch.weighing());
    if (range.isEmpty()) {
      return 0;
    }
    boolean before = range.get().holds(touch.weighing().net().hundredThousandths());
    boolean then = range.get().holds(touch.netThen(traces.night().shop().settings().unit()));
    return Boolean.compare(then, before);
  }

  private static boolean isOnly(Weighing row, List<Weighing> rows) {
    return rows.stream().filter(r -> r.code().equals(row.code())).count() == 1;
  }
}
