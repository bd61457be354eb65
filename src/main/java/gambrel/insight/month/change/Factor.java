package gambrel.insight.month.change;

import gambrel.insight.month.figures.MonthBody;
import gambrel.trade.weighing.Weighing;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What may explain a change, the most general first. Where two explain it about as well, the more
 * general one is told: the figures do not tell more.
 */
enum Factor {
  /** The bodies were weighed cold late. */
  LATE,
  /** Something that all bodies have in common. */
  EVERYTHING,
  /** Something that all bodies of a species have in common. */
  SPECIES,
  /** A scale that reads light, or heavy. */
  SCALE,
  /** A chiller. */
  CHILLER,
  /** A class of a species. */
  CLASS,
  /** A supplier. */
  SUPPLIER,
  /** A boner. */
  BONER;

  /** Whether it is about all bodies, and not about some that have something in common. */
  boolean isGeneral() {
    return compareTo(SCALE) < 0;
  }

  /** The scales, chillers or the like that a body names; none if it names none. */
  Set<String> levels(MonthBody body) {
    var names =
        switch (this) {
          case LATE, EVERYTHING -> Stream.of(name());
          case SPECIES -> Stream.of(body.species().id());
          case SCALE -> scales(body).stream();
          case CHILLER -> Stream.of(body.body().chiller());
          case CLASS -> Stream.of(body.body().category());
          case SUPPLIER -> Stream.of(body.body().supplier());
          case BONER -> body.boner().stream();
        };
    var known = new TreeSet<>(names.toList());
    known.remove("");
    return known;
  }

  private static Set<String> scales(MonthBody body) {
    var balance = body.balance();
    var scales = new TreeSet<String>();
    for (var weighings :
        List.of(
            balance.rail().hot().weighings(),
            balance.rail().cold().weighings(),
            balance.boningWeighings(),
            balance.outOfBoning())) {
      weighings.stream().map(Weighing::scale).forEach(scale -> scales.add(scale.id()));
    }
    return scales;
  }
}
