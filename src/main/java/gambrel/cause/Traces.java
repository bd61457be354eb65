package gambrel.cause;

import gambrel.decision.Reason;
import gambrel.decision.ReasonCode;
import gambrel.notice.Place;
import gambrel.reckoning.BodyAccount;
import gambrel.reckoning.Night;
import gambrel.weighing.ExportFile;
import gambrel.weighing.ExportRow;
import gambrel.weighing.Field;
import gambrel.weighing.Ledgers;
import gambrel.weighing.RowFinder;
import gambrel.weighing.Weighing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a night left behind at the scales: rows as they stand, in the order of each scale. */
final class Traces {
  private final Night night;
  private final Usual usual;
  private final RowFinder rows;
  private final Shifts shifts;
  private final Map<String, BodyFacts> facts = new HashMap<>();
  private final Set<Place> settled = new HashSet<>();
  private List<Absence> absences;

  Traces(Night night, List<ExportFile> exports) {
    this.night = night;
    this.usual = new Usual(night);
    this.rows = new RowFinder(exports);
    this.shifts = new Shifts(night.ledger().weighings());
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

  /** The scales' days on which something of a body was weighed. */
  List<List<Weighing>> shiftsOf(String body) {
    return shifts.ofBody(body);
  }

  /**
   * A body that lacks weight and has nothing at a scale on a day on which others were cut there.
   *
   * @param body the body
   * @param shift the scale's day
   */
  record Absence(String body, Shift shift) {}

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
        var days =
            account.balance().cuts().stream()
                .map(Weighing::date)
                .collect(Collectors.toCollection(TreeSet::new));
        String id = account.body().id();
        var own =
            night.ledger().weighings().of(id).stream()
                .filter(weighing -> weighing.step().movesMass())
                .map(Shift::of)
                .collect(Collectors.toSet());
        for (var day : days) {
          shifts.on(day).forEach(
              (shift, rows) -> {
                if (!own.contains(shift) && rows.stream().anyMatch(w -> w.step().isCutting())) {
                  found.add(new Absence(id, shift));
                }
              });
        }
      }
    }
    return found;
  }

  /** What one scale weighed on the day of a weighing, in order. */
  List<Weighing> shift(Weighing weighing) {
    return shift(Shift.of(weighing));
  }

  /** What one scale weighed on a day, in order. */
  List<Weighing> shift(Shift shift) {
    return shifts.of(shift);
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

  /** Whether nobody has yet decided anything about a row. */
  boolean isUntouched(Weighing weighing) {
    return !settled.contains(weighing.place());
  }

  /** A row as a weighing of its own, whatever stands beside it. */
  Optional<Weighing> alone(ExportRow row) {
    var file = new ExportFile(row.place().file(), List.of(row));
    return Ledgers.of(List.of(file), night.shop(), night.asOf()).weighings().stream().findFirst();
  }
}
