package gambrel.insight.month.change;

import gambrel.insight.month.figures.MonthBody;
import java.util.Set;

/**
 * What may explain a change, the most general first. Where two explain it about as well, the
 * finding names the more general one, since the figures cannot separate them.
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

  /** The chillers, classes or the like that a body names; none if it names none. */
  Set<String> levels(MonthBody body) {
    var name =
        switch (this) {
          case EVERYTHING -> name();
          case SPECIES -> body.species().id();
          case CHILLER -> body.body().chiller();
          case CLASS -> body.body().category();
          case SUPPLIER -> body.body().supplier();
          case BONER -> body.boner().orElse("");
          case LATE, SCALE -> "";
        };
    return name.isEmpty() ? Set.of() : Set.of(name);
  }
}
