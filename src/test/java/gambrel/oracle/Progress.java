package gambrel.oracle;

import java.time.Instant;
import java.util.List;

/** Whether a body is still being worked on at a moment, by its weighings and releases alone. */
final class Progress {
  private final BodyFigures body;
  private final Setup setup;
  private final Instant asOf;

  Progress(BodyFigures body, Instant asOf) {
    this.body = body;
    this.asOf = asOf;
    setup = body.setup;
  }

  /** Whether nothing came of it yet, or its quiet hours are not past. */
  boolean tooEarly() {
    Instant last = body.beast.uncut() ? lastOfUncut() : body.latest();
    return last == null
        || !body.beast.uncut() && body.cuts().stream().allMatch(r -> r.is("block"))
        || last.plus(setup.quiet()).isAfter(asOf);
  }

  /** From when the quiet hours of a body run that leaves as it hung, or is lost; or null. */
  private Instant lastOfUncut() {
    var last = body.lastRail();
    var steps = setup.rail(body.beast.species());
    if (!body.beast.condemned()) {
      return body.standing.rows(steps.get(steps.size() - 1)).isEmpty() ? null : last;
    }
    if (last != null) {
      return last;
    }
    var killed = body.beast.killed();
    return killed == null ? null : killed.plusDays(1).atStartOfDay(setup.zone).toInstant();
  }

  /** Whether somebody closed it after its last weighing, and something was cut from it. */
  boolean closed() {
    return !closes().isEmpty();
  }

  /** When somebody did. */
  List<Instant> closes() {
    return releases("close").stream()
        .map(l -> setup.moment(l.get("on")))
        .filter(on -> body.cuts().stream().anyMatch(r -> !r.is("block")))
        .filter(on -> !body.latest().isAfter(on))
        .toList();
  }

  /** The body's releases of an action that have effect. */
  List<Csv.Line> releases(String action) {
    return setup.table("releases").stream()
        .filter(l -> l.get("body").equals(body.beast.id()))
        .filter(l -> (l.get("action").isEmpty() ? "release" : l.get("action")).equals(action))
        .filter(l -> !setup.moment(l.get("on")).isAfter(asOf))
        .toList();
  }
}
