package gambrel.cause;

import gambrel.weighing.Weighing;
import gambrel.weighing.Weighings;
import java.lang.ref.SoftReference;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * What each scale weighed on each day. Most nights nobody asks; the night that asks wants a few days
 * of all that there are.
 */
final class Shifts {
  private final Weighings weighings;
  private final Map<LocalDate, SoftReference<Map<Shift, List<Weighing>>>> days = new HashMap<>();
  private Map<LocalDate, Set<String>> bodies;
  private Map<LocalDate, Set<String>> batches;

  Shifts(Weighings weighings) {
    this.weighings = weighings;
  }

  /** What one scale weighed that day, earliest first. */
  List<Weighing> of(Shift shift) {
    return on(shift.date()).getOrDefault(shift, List.of());
  }

  /** The scales' days on which something of a body was weighed, earliest first. */
  List<List<Weighing>> ofBody(String body) {
    var own = new LinkedHashSet<Shift>();
    var dates = new TreeSet<LocalDate>();
    for (var weighing : weighings.of(body)) {
      if (weighing.step().movesMass()) {
        own.add(Shift.of(weighing));
        dates.add(weighing.date());
      }
    }
    var shifts = new ArrayList<List<Weighing>>();
    for (var date : dates) {
      on(date)
          .forEach(
              (shift, rows) -> {
                if (own.contains(shift)) {
                  shifts.add(rows);
                }
              });
    }
    return shifts;
  }

  /** All that was weighed on a day by scale: the scale first that weighed first. */
  Map<Shift, List<Weighing>> on(LocalDate date) {
    var known = days.get(date);
    var day = known == null ? null : known.get();
    if (day == null) {
      day = read(date);
      days.put(date, new SoftReference<>(day));
    }
    return day;
  }

  private Map<Shift, List<Weighing>> read(LocalDate date) {
    index();
    var found = new ArrayList<Weighing>();
    for (String body : bodies.getOrDefault(date, Set.of())) {
      addOn(date, weighings.of(body), found);
    }
    for (String batch : batches.getOrDefault(date, Set.of())) {
      addOn(
          date,
          weighings.ofBatch(batch).stream().filter(w -> w.body().isEmpty()).toList(),
          found);
    }
    found.sort(Weighing.BY_TIME);
    var day = new LinkedHashMap<Shift, List<Weighing>>();
    found.forEach(w -> day.computeIfAbsent(Shift.of(w), s -> new ArrayList<>()).add(w));
    return day;
  }

  private static void addOn(LocalDate date, List<Weighing> weighings, List<Weighing> to) {
    weighings.stream().filter(w -> w.step().movesMass() && w.date().equals(date)).forEach(to::add);
  }

  private void index() {
    if (bodies == null) {
      bodies = byDay(weighings.bodies(), weighings::of);
      batches = byDay(weighings.batches(), weighings::ofBatch);
    }
  }

  private static Map<LocalDate, Set<String>> byDay(
      Collection<String> ids, Function<String, List<Weighing>> weighings) {
    var byDay = new HashMap<LocalDate, Set<String>>();
    for (String id : ids) {
      for (var weighing : weighings.apply(id)) {
        byDay.computeIfAbsent(weighing.date(), d -> new LinkedHashSet<>()).add(id);
      }
    }
    return byDay;
  }
}
