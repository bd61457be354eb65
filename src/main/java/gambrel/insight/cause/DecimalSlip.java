package gambrel.insight.cause;

import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.Weighing;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds weights ten or a hundred times too large or too small for what they weigh. */
final class DecimalSlip implements Finder {
  private static final long PENALTY = 100;
  private static final List<Integer> PLACES = List.of(1, -1, 2, -2);

  private final RowIndex traces;
  private final CodeRanges ranges;

  DecimalSlip(RowIndex traces, CodeRanges ranges) {
    this.traces = traces;
    this.ranges = ranges;
  }

  @Override
  public List<Candidate> candidates(BodyFacts suspect) {
    var candidates = new ArrayList<Candidate>();
    for (var row : suspect.weighings()) {
      var range = ranges.ofOthers(row).filter(r -> r.isFar(row.net().hundredThousandths()));
      if (range.isPresent() && traces.isUntouched(row) && hasNet(row)) {
        PLACES.forEach(p -> slip(row, p, range.get()).ifPresent(candidates::add));
      }
    }
    candidates.addAll(overCapacity(suspect.id()));
    return candidates;
  }

  private boolean hasNet(Weighing row) {
    return !traces.cell(row, Field.NET).isEmpty() && traces.cell(row, Field.GROSS).isEmpty();
  }

  private static Optional<Candidate> slip(Weighing row, int places, CodeRanges.Range range) {
    var net = row.shown().scaleByPowerOfTen(places);
    var touch = touch(row, net);
    long then = Weight.of(row.net().decimal().scaleByPowerOfTen(places)).hundredThousandths();
    return range.isNear(then)
        ? Optional.of(Candidate.of(Cause.DECIMAL, touch, PENALTY).with("witness", range.words()))
        : Optional.empty();
  }

  private static RowChange touch(Weighing row, BigDecimal net) {
    return new RowChange(row, new ProposedFix.Net(Tares.plain(net), Optional.empty()));
  }

  /** Weights beyond what the scale can weigh are set aside and so in no sum. */
  private List<Candidate> overCapacity(String body) {
    var candidates = new ArrayList<Candidate>();
    for (var aside : traces.night().ledger().setAside()) {
      boolean concerns = aside.bodies().equals(List.of(body)) && aside.effective();
      if (concerns && aside.notice().code() == NoticeCode.OVER_CAPACITY) {
        var row = traces.row(aside.notice().place());
        for (int places : List.of(-1, -2)) {
          readAs(row, places).ifPresent(candidates::add);
        }
      }
    }
    return candidates;
  }

  private Optional<Candidate> readAs(ExportRow row, int places) {
    try {
      var net = new BigDecimal(row.get(Field.NET)).scaleByPowerOfTen(places);
      return traces
          .alone(row.with(Field.NET, net.toPlainString()))
          .filter(traces::isUntouched)
          .filter(
              w ->
                  row.get(Field.GROSS).isEmpty()
                      && ranges
                          .ofOthers(w)
                          .filter(r -> r.isNear(w.net().hundredThousandths()))
                          .isPresent())
          .map(
              w ->
                  Candidate.of(Cause.DECIMAL, touch(w, net), PENALTY)
                      .with("witness", Phrase.of("CAUSE.CAPACITY"))
                      .untold());
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
