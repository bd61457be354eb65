package gambrel.insight.month.figures;

/**
 * How often a month in which nothing is wrong may tell a finding. The rate of the month is shared
 * among its tests, so that it holds for all of them together (Bonferroni).
 */
public final class AlarmRates {
  /** One month in a hundred in which nothing is wrong has a false finding. */
  public static final double MONTH = 0.01;

  /**
   * Each comparison of groups: boners, suppliers twice, ways to cut, charges and pace; three tenths
   * of the month's rate.
   */
  public static final double COMPARISON = MONTH / 20;

  /** The search for what changed the losses in the chiller and on the bench. */
  public static final double LOSSES = MONTH / 3;

  /** Each of the five other searches for a change. */
  public static final double CHANGE = MONTH / 17;

  /** The losses of all single bodies of the month together. */
  public static final double BODIES = MONTH / 100;

  /** The days that all single bodies of the month hung. */
  public static final double DAYS_HUNG = MONTH / 20;

  private AlarmRates() {}
}
