package gambrel.insight.cause;

import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.RowFinder;
import gambrel.trade.weighing.Ledger;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The night as it was weighed: bodies, rows as they are in the exports, each scale's days. */
final class RowIndex {
  private final Night night;
  private final Usual usual;
  private final RowFinder rows;
  private final Map<String, BodyFacts> facts = new HashMap<>();
  private final Set<Place> settled = new HashSet<>();
  private Map<ScaleDay, List<Weighing>> shifts;
  private List<Absence> absences;

  RowIndex(Night night, List<ExportFile> exports) {
    this.night = night;
    this.usual = new Usual(night);
    this.rows = new RowFinder(exports);
    night.ledger().corrections().forEach(c -> settled.add(c.row().place()));
  }

  Night night() {
    return night;
  }

  Usual usual() {
    return usual;
  }

  /** A body that the shop has. */
  BodyFacts facts(String body) {
    return facts.computeIfAbsent(body, b -> facts(night.bodies().get(b), usual));
  }

  private BodyFacts facts(BodyAccount account, Usual usual) {
    return new BodyFacts(night.shop().settings(), usual, account);
  }

  /** The same body on another night, held against what is usual on this one. */
  BodyFacts facts(Night other, String body) {
    return facts(other.bodies().get(body), usual);
  }

  /** What each scale weighed on each day, earliest first; the day that began first comes first. */
  private Map<ScaleDay, List<Weighing>> shifts() {
    if (shifts == null) {
      shifts =
          night.ledger().weighings().stream()
              .filter(weighing -> weighing.step().movesMass())
              .sorted(Weighing.BY_TIME)
              .collect(
                  Collectors.groupingBy(ScaleDay::of, LinkedHashMap::new, Collectors.toList()));
    }
    return shifts;
  }

  /** The scales' days on which a part of a body was weighed. */
  private Set<ScaleDay> own(String body) {
    return night.ledger().weighings().of(body).stream()
        .filter(weighing -> weighing.step().movesMass())
        .map(ScaleDay::of)
        .collect(Collectors.toSet());
  }

  /** What was weighed on the scales' days on which a part of a body was weighed. */
  List<List<Weighing>> shiftsOf(String body) {
    return own(body).stream()
        .map(this::shift)
        .sorted(Comparator.comparing(rows -> rows.get(0), Weighing.BY_TIME))
        .toList();
  }

  /**
   * A body that lacks weight and has nothing at a scale on a day on which others were cut there.
   *
   * @param body the body
   * @param shift the scale's day
   */
  record Absence(String body, ScaleDay shift) {}

  /** Every such absence; looked for once, since every suspect is held against all. */
  List<Absence> absences() {
    if (absences == null) {
      absences = findAbsences();
    }
    return absences;
  }

  private List<Absence> findAbsences() {
    var found = new ArrayList<Absence>();
    var lossHigh = new Reason(ReasonCode.LOSS_HIGH, "");
    for (var account : night.bodies().values()) {
      if (Faults.of(account).contains(lossHigh) && Faults.isUnbalanced(account, night)) {
        String body = account.body().id();
        var days =
            account.balance().cuts().stream().map(Weighing::date).collect(Collectors.toSet());
        var own = own(body);
        shifts()
            .forEach(
                (shift, rows) -> {
                  if (days.contains(shift.date())
                      && !own.contains(shift)
                      && rows.stream().anyMatch(w -> w.step().isCutting())) {
                    found.add(new Absence(body, shift));
                  }
                });
      }
    }
    return found;
  }

  /** What one scale weighed on the day of a weighing, in order. */
  List<Weighing> shift(Weighing weighing) {
    return shift(ScaleDay.of(weighing));
  }

  /** What one scale weighed on a day, in order. */
  List<Weighing> shift(ScaleDay shift) {
    return shifts().getOrDefault(shift, List.of());
  }

  /** The text of a cell of a row as it stands in the export. */
  String cell(Weighing weighing, Field field) {
    return row(weighing.place()).get(field);
  }

  ExportRow row(Place place) {
    return rows.find(place).orElseThrow();
  }

  /** Every row as it stands, in no particular order. */
  Stream<ExportRow> rows() {
    return rows.all();
  }

  /** Whether no correction concerns a row. */
  boolean isUntouched(Weighing weighing) {
    return !settled.contains(weighing.place());
  }

  /** A row as a weighing of its own, whatever stands beside it. */
  Optional<Weighing> alone(ExportRow row) {
    var file = new ExportFile(row.place().file(), List.of(row));
    return Ledger.of(List.of(file), night.shop(), night.asOf()).weighings().stream().findFirst();
  }
}
