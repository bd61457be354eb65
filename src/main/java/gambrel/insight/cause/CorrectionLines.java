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
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes a change as corrections, and as the rows that a person pastes into their file. */
final class CorrectionLines {
  private final RowIndex rows;

  CorrectionLines(RowIndex rows) {
    this.rows = rows;
  }

  /** The corrections that make a change, {@code by} left blank and dated by the night. */
  List<Correction> of(Candidate candidate) {
    var corrections = new ArrayList<Correction>();
    var changes = candidate.changes();
    int from = 0;
    while (from < changes.size()) {
      int to = from + 1;
      while (to < changes.size() && isOneRun(changes.subList(from, to + 1))) {
        to++;
      }
      var first = changes.get(from);
      if (to - from > 1) {
        String run = first.weighing().ticket() + "-" + changes.get(to - 1).weighing().ticket();
        add(first, run, candidate.cause(), corrections);
      } else {
        addRow(first, candidate.cause(), corrections);
      }
      from = to;
    }
    return corrections;
  }

  /** Whether a run from the first ticket to the last names these rows and no other. */
  private boolean isOneRun(List<RowChange> changes) {
    var change = changes.get(0);
    var first = change.weighing();
    var last = changes.get(changes.size() - 1).weighing();
    boolean alike =
        change.cells().equals(changes.get(changes.size() - 1).cells())
            && change.value(Field.NET).isEmpty()
            && RowIndex.ScaleDay.of(first).equals(RowIndex.ScaleDay.of(last))
            && isNumber(first)
            && isNumber(last)
            && number(first).compareTo(number(last)) < 0;
    if (!alike) {
      return false;
    }
    var named = changes.stream().map(c -> c.weighing().place()).collect(Collectors.toSet());
    boolean moves = change.value(Field.BODY).isPresent();
    return rows.day(first).stream()
        .filter(CorrectionLines::isNumber)
        .filter(w -> number(w).compareTo(number(first)) >= 0)
        .filter(w -> number(w).compareTo(number(last)) <= 0)
        .allMatch(w -> named.contains(w.place()) || moves && !w.ofBody() && w.inBatch());
  }

  private static boolean isNumber(Weighing weighing) {
    return weighing.ticket().matches("\\d+");
  }

  private static BigInteger number(Weighing weighing) {
    return new BigInteger(weighing.ticket());
  }

  /** Names a row by its ticket; one without a ticket by each place where the exports repeat it. */
  private void addRow(RowChange change, Cause cause, List<Correction> to) {
    var weighing = change.weighing();
    if (!weighing.ticket().isEmpty()) {
      add(change, weighing.ticket(), cause, to);
      return;
    }
    var row = rows.row(weighing.place());
    rows.all()
        .filter(other -> other.values().equals(row.values()))
        .filter(other -> other.equals(row) || row.identity().isEmpty())
        .map(ExportRow::place)
        .sorted()
        .forEach(place -> add(change, place.toString(), cause, to));
  }

  private void add(RowChange change, String ticket, Cause cause, List<Correction> to) {
    var weighing = change.weighing();
    var date = Optional.of(weighing.date()).filter(d -> !weighing.ticket().isEmpty());
    for (var cell : change.cells()) {
      to.add(
          new Correction(
              rows.cell(weighing, Field.SCALE),
              ticket,
              date,
              cell.field().id(),
              cell.value(),
              "",
              rows.night().asOf(),
              cause.id(),
              Place.NONE));
    }
  }

  /** A row for {@code corrections.csv}; its reason is in the words of the reader. */
  static Phrase line(Cause cause, Correction correction) {
    String cells =
        Stream.of(
                correction.scale(),
                correction.ticket(),
                correction.date().map(LocalDate::toString).orElse(""),
                correction.field(),
                correction.value(),
                "",
                "")
            .map(CorrectionLines::quoted)
            .collect(Collectors.joining(","));
    return Phrase.of("CORRECTION." + cause).with("cells", cells);
  }

  private static String quoted(String cell) {
    return cell.matches("[^\",;\r\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
