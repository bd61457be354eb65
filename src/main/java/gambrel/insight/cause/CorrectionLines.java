package gambrel.insight.cause;

import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Correction;
import gambrel.trade.weighing.Weighing;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes a change as corrections, and as the lines that a person pastes into their file. */
final class CorrectionLines {
  private final RowIndex traces;

  CorrectionLines(RowIndex traces) {
    this.traces = traces;
  }

  /** The corrections that make a change, {@code by} left blank and dated by the night. */
  List<Correction> of(Candidate candidate) {
    var corrections = new ArrayList<Correction>();
    var touches = candidate.touches();
    int from = 0;
    while (from < touches.size()) {
      int to = from + 1;
      while (to < touches.size() && isOne(touches, from, to)) {
        to++;
      }
      var first = touches.get(from);
      if (to - from > 1) {
        String run = first.weighing().ticket() + "-" + touches.get(to - 1).weighing().ticket();
        add(first, run, Optional.of(first.weighing().date()), candidate.cause(), corrections);
      } else {
        addRow(first, candidate.cause(), corrections);
      }
      from = to;
    }
    return corrections;
  }

  /** Whether the touches from one to another can be one run of tickets that names no other row. */
  private boolean isOne(List<RowChange> touches, int from, int to) {
    var first = touches.get(from);
    var last = touches.get(to);
    boolean alike =
        first.remedy().equals(last.remedy())
            && !(first.remedy() instanceof ProposedFix.Net)
            && ScaleDay.of(first.weighing()).equals(ScaleDay.of(last.weighing()))
            && isNumber(first.weighing())
            && isNumber(last.weighing())
            && number(first.weighing()).compareTo(number(last.weighing())) < 0;
    if (!alike) {
      return false;
    }
    Set<Place> named =
        touches.subList(from, to + 1).stream()
            .map(touch -> touch.weighing().place())
            .collect(Collectors.toSet());
    boolean moves = first.remedy() instanceof ProposedFix.Move;
    return traces.shift(first.weighing()).stream()
        .filter(CorrectionLines::isNumber)
        .filter(w -> number(w).compareTo(number(first.weighing())) >= 0)
        .filter(w -> number(w).compareTo(number(last.weighing())) <= 0)
        .allMatch(w -> named.contains(w.place()) || moves && !w.ofBody() && w.inBatch());
  }

  private static boolean isNumber(Weighing weighing) {
    return weighing.ticket().matches("\\d+");
  }

  private static BigInteger number(Weighing weighing) {
    return new BigInteger(weighing.ticket());
  }

  /** One row by its ticket; without one, wherever it stands in the exports. */
  private void addRow(RowChange touch, Cause cause, List<Correction> to) {
    var weighing = touch.weighing();
    if (!weighing.ticket().isEmpty()) {
      add(touch, weighing.ticket(), Optional.of(weighing.date()), cause, to);
      return;
    }
    var row = traces.row(weighing.place());
    traces
        .rows()
        .filter(other -> other.cells().equals(row.cells()))
        .filter(other -> other.equals(row) || row.identity().isEmpty())
        .map(ExportRow::place)
        .sorted()
        .forEach(place -> add(touch, place.toString(), Optional.empty(), cause, to));
  }

  private void add(
      RowChange touch, String ticket, Optional<LocalDate> date, Cause cause, List<Correction> to) {
    String scale = traces.row(touch.weighing().place()).get(Field.SCALE);
    for (var cell : touch.remedy().cells()) {
      to.add(
          new Correction(
              scale,
              ticket,
              date,
              cell.field().id(),
              cell.value(),
              "",
              traces.night().asOf(),
              cause.id(),
              Place.NONE));
    }
  }

  /** A row for {@code corrections.csv}; its reason is in the words of the reader. */
  static Phrase line(Cause cause, Correction correction) {
    String cells =
        List.of(
                correction.scale(),
                correction.ticket(),
                correction.date().map(LocalDate::toString).orElse(""),
                correction.field(),
                correction.value(),
                "",
                "")
            .stream()
            .map(CorrectionLines::quoted)
            .collect(Collectors.joining(","));
    return Phrase.of("CORRECTION." + cause).with("cells", cells);
  }

  private static String quoted(String cell) {
    return cell.matches("[^\",;\r\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
