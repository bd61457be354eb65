package gambrel.insight.cause;

import gambrel.trade.measure.Groups;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.weighing.Ledger;
import gambrel.trade.weighing.SetAside;
import gambrel.trade.weighing.Weighing;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A night's bodies, rows as they are in the exports, and what each scale weighed on each day. */
final class RowIndex {
  final Night night;
  final Usual usual;
  final CodeRanges ranges;
  final Tares tares;
  private final Map<Place, ExportRow> rows;
  private final Map<String, BodyFacts> facts = new HashMap<>();
  private final Set<Place> corrected;
  private final Map<ScaleDay, List<Weighing>> days;

  RowIndex(Usual usual, List<ExportFile> exports) {
    this.night = usual.night;
    this.usual = usual;
    this.rows =
        exports.stream()
            .flatMap(file -> file.rows().stream())
            .collect(
                Collectors.toMap(
                    ExportRow::place, row -> row, (first, same) -> first, LinkedHashMap::new));
    this.corrected =
        night.ledger().corrections().stream()
            .map(correction -> correction.row().place())
            .collect(Collectors.toSet());
    this.days =
        Groups.inOrder(
            night.ledger().weighings().stream()
                .filter(weighing -> weighing.step().movesMass())
                .sorted(Weighing.BY_TIME),
            ScaleDay::of);
    this.ranges = new CodeRanges(usual);
    this.tares = new Tares(this);
  }

  /** A scale and a local date. */
  record ScaleDay(String scale, LocalDate date) {
    static ScaleDay of(Weighing weighing) {
      return new ScaleDay(weighing.scale().id(), weighing.date());
    }
  }

  /** The shop's unit. */
  WeightUnit unit() {
    return usual.settings.unit();
  }

  /** A body that the shop has. */
  BodyFacts facts(String body) {
    return facts.computeIfAbsent(body, id -> facts(night, id));
  }

  /** A batch by its id. */
  BatchFacts batch(String batch) {
    return batch(night, batch);
  }

  /** A batch on another night, compared with what is usual on this one. */
  BatchFacts batch(Night other, String batch) {
    return new BatchFacts(usual, Optional.ofNullable(other.batches().get(batch)));
  }

  /** A body on another night, compared with what is usual on this one. */
  BodyFacts facts(Night other, String body) {
    return new BodyFacts(usual, other.bodies().get(body));
  }

  /** The scales and days with a weighing of a body. */
  private Set<ScaleDay> scaleDays(String body) {
    return night.ledger().weighings().of(body).stream()
        .filter(weighing -> weighing.step().movesMass())
        .map(ScaleDay::of)
        .collect(Collectors.toSet());
  }

  /** What was weighed at each scale on each day with a weighing of a body, earliest day first. */
  Stream<List<Weighing>> days(String body) {
    return scaleDays(body).stream()
        .map(days::get)
        .sorted(Comparator.comparing(rows -> rows.get(0), Weighing.BY_TIME));
  }

  /** What the scale of a weighing weighed on its day, in order. */
  List<Weighing> day(Weighing weighing) {
    return days.getOrDefault(ScaleDay.of(weighing), List.of());
  }

  /**
   * What was weighed at each scale without a weighing of a body, on each day on which the body was
   * cut at another scale; only if bodies were cut at the scale on that day.
   */
  Stream<List<Weighing>> daysWithout(String body) {
    var own = scaleDays(body);
    var dates = facts(body).balance.cuts().stream().map(Weighing::date).collect(Collectors.toSet());
    return days.entrySet().stream()
        .filter(day -> dates.contains(day.getKey().date()) && !own.contains(day.getKey()))
        .map(Map.Entry::getValue)
        .filter(day -> day.stream().anyMatch(weighing -> weighing.step().isCutting()));
  }

  /** What was cut of bodies on a date, at any scale. */
  List<Weighing> cutOn(LocalDate date) {
    return days.entrySet().stream()
        .filter(day -> day.getKey().date().equals(date))
        .flatMap(day -> day.getValue().stream())
        .filter(weighing -> weighing.ofBody() && weighing.step().isCutting())
        .toList();
  }

  /** The text of a cell of a row as it stands in the export. */
  String cell(Weighing weighing, Field field) {
    return row(weighing.place()).get(field);
  }

  /** The row at a place, which is that of a weighing or of a row set aside. */
  ExportRow row(Place place) {
    return rows.get(place);
  }

  /** Every row as it stands, in the order of the exports. */
  Stream<ExportRow> all() {
    return rows.values().stream();
  }

  /** The rows set aside for {@code code} that have taken effect and name one body. */
  Stream<SetAside> setAside(NoticeCode code) {
    return night.ledger().setAside().stream()
        .filter(aside -> aside.effective() && aside.bodies().size() == 1)
        .filter(aside -> aside.notice().code() == code);
  }

  /** The number that a ticket is; empty if it is no plain number. */
  static Optional<BigInteger> number(Weighing weighing) {
    return Optional.of(weighing.ticket()).filter(t -> t.matches("\\d+")).map(BigInteger::new);
  }

  /** Whether no correction concerns a row. */
  boolean isUncorrected(Weighing weighing) {
    return !corrected.contains(weighing.place());
  }

  /** A row read by itself, without the other rows; empty if it is no weighing then. */
  Optional<Weighing> alone(ExportRow row) {
    var file = new ExportFile(row.place().file(), List.of(row));
    var ledger = Ledger.of(List.of(file), night.shop(), night.asOf(), rows -> {});
    return ledger.weighings().stream().findFirst();
  }
}
