package gambrel.insight.month.findings;

import java.util.Locale;

/**
 * What a month may ask its owner to look at. Words files have what was seen under {@code
 * finding.ID}, and what to do under {@code step.ID}.
 */
public enum FindingKind {
  /** Bodies lost more in the chiller than before. */
  CHILLER,
  /** Single bodies lost far more or far less in the chiller than others of their species. */
  CHILLED_BODIES,
  /** The bench lost more than before. */
  BENCH,
  /** Single bodies lost far more or far less on the bench. */
  BENCH_BODIES,
  /** A change of losses that a scale explains. */
  SCALE,
  /** The shop's own bodies hung longer than usual. */
  HANGING,
  /** Batches lost more than the shop's limit. */
  BATCH,
  /** Bodies without a weight that figures need. */
  PAPERWORK,
  /** Statements that have not been paid for long. */
  UNPAID,
  /** Customers were charged less for a unit of weight than before. */
  CHARGES,
  /** More meat stayed on the bone with one boner than with the others. */
  BONER,
  /** A way to cut a piece brought less for a unit of weight than another way. */
  CUT_CHOICE,
  /** Own bodies brought less than they cost, or less than those of other suppliers. */
  STOCK,
  /** Less was taken home than before. */
  YIELD,
  /** Work on the block took longer than before. */
  PACE;

  /** Its name in data files and words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
