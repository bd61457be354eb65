package gambrel.insight.month.findings;

import java.util.Locale;

/**
 * What a month may ask its owner to look at. The next step is the kind's own: its words stand under
 * {@code finding.ID} (what was seen, the evidence in order) and {@code step.ID} (what to do).
 */
public enum FindingKind {
  /** Bodies lost more in the chiller than like bodies did before. */
  CHILLER,
  /** Single bodies lost far more or far less in the chiller than the species does. */
  CHILLED_BODIES,
  /** The bench lost more than before. */
  BENCH,
  /** Single bodies lost far more or far less on the bench. */
  BENCH_BODIES,
  /** Balances drift with one scale. */
  SCALE,
  /** What a day on the rail costs, and what is charged for it. */
  HANGING,
  /** Batches lost more than the shop's limit. */
  BATCH,
  /** Bodies without a weight that figures need. */
  PAPERWORK,
  /** Statements not paid. */
  UNPAID,
  /** What cutting is charged at against what it takes. */
  CHARGES,
  /** More stayed on the bone with one boner than with the others. */
  BONER,
  /** One way to cut a piece gave more a kilo than another. */
  CUT_CHOICE,
  /** Own bodies gave less than they cost, or one supplier's less than another's. */
  STOCK,
  /** A yield left the range of the shop's last twelve months. */
  YIELD,
  /** Work on the block took longer than before. */
  PACE;

  /** Its name in data files and words. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
