package gambrel.reckoning;

import gambrel.weighing.Headway;

/**
 * Who waits for a night, and for which of its parts.
 *
 * @param rows is told of the rows that are gone through
 * @param bodies is told of the bodies that are balanced
 * @param releases is told of the moments of releases that are reckoned
 */
public record Waiting(Headway rows, Headway bodies, Headway releases) {
  /** Nobody. */
  public static final Waiting NOBODY = new Waiting(Headway.NONE, Headway.NONE, Headway.NONE);
}
