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
import gambrel.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a night left behind at the scales: rows as they stand, in the order of each scale. */
final class Traces {
  private final Night night;
  private final Usual usual;
  private final List<ExportFile> exports;
  private final Map<Place, ExportRow> rows = new HashMap<>();
  private final Map<Shift, List<Weighing>> shifts = new LinkedHashMap<>();
  private final Map<String, Set<Shift>> shiftsByBody = new HashMap<>();
  private final Map<String, BodyFacts> facts = new HashMap<>();
  private final Set<Place> settled = new HashSet<>();
  private List<Absence> absences;

  Traces(Night night, List<ExportFile> exports) {
    this.night = night;
    this.usual = new Usual(night);
    this.exports = exports;
    night.ledger().corrections().forEach(c -> settled.add(c.row().place()));
  }

  /** Most nights have no suspect, and nobody asks for the scales' days. */
  private Map<Shift, List<Weighing>> shifts() {
    if (shifts.isEmpty()) {
      for (var weighing : night.ledger().weighings()) {
        if (weighing.step().movesMass()) {
          var shift = Shift.of(weighing);
          shifts.computeIfAbsent(shift, s -> new ArrayList<>()).add(weighing);
          shiftsByBody.computeIfAbsent(weighing.body(), b -> new HashSet<>()).add(shift);
        }
      }
    }
    return shifts;
  }

  /** One scale's day. */
  record Shift(String scale, LocalDate date) {
    static Shift of(Weighing weighing) {
      return new Shift(weighing.scale().id(), weighing.date());
    }
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
    var all = shifts();
    var own = shiftsByBody.getOrDefault(body, Set.of());
    return all.entrySet().stream()
        .filter(shift -> own.contains(shift.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  /**
   * A body that lacks weight and has nothing at a scale on a day on which others were cut there.
   *
   * @param body the body
   * @param shift what the scale weighed that day
   */
  record Absence(String body, List<Weighing> shift) {}

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
            account.balance().cuts().stream().map(Weighing::date).collect(Collectors.toSet());
        String id = account.body().id();
        shifts().forEach(
            (shift, rows) -> {
              boolean isThere = shiftsByBody.getOrDefault(id, Set.of()).contains(shift);
              boolean cuts = rows.stream().anyMatch(w -> w.step().isCutting());
              if (days.contains(shift.date()) && cuts && !isThere) {
                found.add(new Absence(id, rows));
              }
            });
      }
    }
    return found;
  }

  /** What one scale weighed on the day of a weighing, in order. */
  List<Weighing> shift(Weighing weighing) {
    return shifts().getOrDefault(Shift.of(weighing), List.of());
  }

  /** The text of a cell of a row as it stands in the export. */
  String cell(Weighing weighing, Field field) {
    return row(weighing.place()).get(field);
  }

  ExportRow row(Place place) {
    return rows().get(place);
  }

  /** Every row as it stands, by place. */
  Map<Place, ExportRow> rows() {
    if (rows.isEmpty()) {
      exports.forEach(file -> file.rows().forEach(row -> rows.put(row.place(), row)));
    }
    return rows;
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
