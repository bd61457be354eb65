package gambrel.insight.month.change;

import gambrel.insight.month.figures.MonthBody;
import java.time.LocalDate;
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
  /** A day of kill. */
  KILL,
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

  /** What the shop calls the one of this kind that a body has; empty if it has none. */
  String name(MonthBody body) {
    return switch (this) {
      case LATE, EVERYTHING, SCALE -> "";
      case SPECIES -> body.species().id();
      case KILL -> body.body().killed().map(LocalDate::toString).orElse("");
      case CHILLER -> body.body().chiller();
      case CLASS -> body.body().category();
      case SUPPLIER -> body.body().supplier();
      case BONER -> body.boner().orElse("");
    };
  }

  /**
   * What a body has in common with others of its name. A class is one of a species; what a day, a
   * supplier or a boner changes may be of all species, or of one.
   */
  Set<String> levels(MonthBody body) {
    var name = name(body);
    var ofSpecies = body.species().id() + '|' + name;
    return switch (this) {
      case EVERYTHING -> Set.of("");
      case LATE, SCALE -> Set.of();
      case SPECIES, CHILLER -> name.isEmpty() ? Set.of() : Set.of(name);
      case CLASS -> name.isEmpty() ? Set.of() : Set.of(ofSpecies);
      case KILL, SUPPLIER, BONER -> name.isEmpty() ? Set.of() : Set.of(name, ofSpecies);
    };
  }
}
