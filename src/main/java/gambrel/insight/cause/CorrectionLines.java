package gambrel.insight.cause;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.PastedRow;
import gambrel.trade.shop.Correction;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes a change as corrections, and as the rows that a person pastes into their file. */
public final class CorrectionLines {
  private final RowIndex rows;

  /** For changes of these rows. */
  CorrectionLines(RowIndex rows) {
    this.rows = rows;
  }

  /** The corrections that make a change, {@code by} left blank and dated by the night. */
  List<Correction> of(Candidate candidate) {
    var corrections = new ArrayList<Correction>();
    var changes = candidate.changes();
    for (int from = 0, to; from < changes.size(); from = to) {
      to = from + 1;
      while (to < changes.size() && isOneRun(changes.subList(from, to + 1))) {
        to++;
      }
      var first = changes.get(from);
      String end = changes.get(to - 1).weighing().ticket();
      var names =
          to - from > 1
              ? Stream.of(first.weighing().ticket() + "-" + end)
              : names(first.weighing());
      names.forEach(name -> add(first, name, candidate.cause(), corrections));
    }
    return corrections;
  }

  /** Whether a run from the first ticket to the last names these rows and no other. */
  private boolean isOneRun(List<RowChange> changes) {
    var change = changes.get(0);
    var end = changes.get(changes.size() - 1);
    var first = change.weighing();
    var from = RowIndex.number(first);
    var to = RowIndex.number(end.weighing());
    boolean alike =
        change.cells().equals(end.cells())
            && change.value(Field.NET).isEmpty()
            && RowIndex.ScaleDay.of(first).equals(RowIndex.ScaleDay.of(end.weighing()));
    if (!alike || from.isEmpty() || to.isEmpty() || from.get().compareTo(to.get()) >= 0) {
      return false;
    }
    var named = changes.stream().map(c -> c.weighing().place()).collect(Collectors.toSet());
    boolean moves = change.value(Field.BODY).isPresent();
    return rows.day(first).stream()
        .filter(
            w ->
                RowIndex.number(w)
                    .filter(n -> n.compareTo(from.get()) >= 0 && n.compareTo(to.get()) <= 0)
                    .isPresent())
        .allMatch(w -> named.contains(w.place()) || moves && !w.ofBody() && w.inBatch());
  }

  /** The ticket of a row; if it has none each place where the exports repeat the row. */
  private Stream<String> names(Weighing weighing) {
    var row = rows.row(weighing.place());
    return !weighing.ticket().isEmpty()
        ? Stream.of(weighing.ticket())
        : rows.all()
            .filter(other -> other.values().equals(row.values()))
            .filter(other -> other.equals(row) || row.identity().isEmpty())
            .map(ExportRow::place)
            .sorted()
            .map(Place::toString);
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
              rows.night.asOf(),
              cause.id(),
              Place.NONE));
    }
  }

  /** A row for {@code corrections.csv}; its reason is in the words of the reader. */
  static Phrase line(Cause cause, Correction correction) {
    return line(
        "CORRECTION." + cause,
        correction.scale(),
        correction.ticket(),
        correction.date().map(LocalDate::toString).orElse(""),
        correction.field(),
        correction.value());
  }

  /**
   * A row for {@code corrections.csv} that voids the row of the exports which a notice is about.
   */
  public static Phrase voiding(Notice notice) {
    boolean conflict = notice.code() == NoticeCode.TICKET_CONFLICT;
    String key = conflict ? "CORRECTION.CONFLICT" : "CORRECTION.NO_WEIGHING";
    return ofRow(key, notice, Field.STATUS.id(), "void");
  }

  /** A row that corrects a field of that row, with a question mark in place of the value. */
  public static Phrase correcting(Notice notice, String field) {
    return ofRow("CORRECTION.TYPED", notice, field, "?");
  }

  private static Phrase ofRow(String key, Notice notice, String field, String value) {
    return line(key, notice.scale(), notice.place().toString(), "", field, value);
  }

  /** The cells, those of {@code by} and {@code on} blank, and the reason. */
  private static Phrase line(String key, String... cells) {
    return Phrase.of(key).with("cells", PastedRow.of(cells) + ",,");
  }
}
