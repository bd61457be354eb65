package gambrel.trade.weighing;

import java.util.function.LongConsumer;

/** Receives how far a night's work is. */
@FunctionalInterface
public interface Progress {
  /** Ignores it. */
  Progress NONE = (stage, total) -> part -> {};

  /** What a night's work consists of, in the order in which it is done. */
  enum Stage {
    /** Exports are read; counted in bytes. */
    READING,

    /** The rows of the exports are compared and judged; counted in rows. */
    ROWS,

    /** Bodies are balanced; counted in bodies. */
    BODIES,

    /** The moments of releases are reckoned; counted in moments. */
    RELEASES,

    /** Causes of bodies that do not balance are looked for; not counted. */
    CAUSES,

    /** Statements and drafts are made; counted in documents. */
    STATEMENTS,

    /** Months are drawn and summarised; counted in months. */
    MONTHS,

    /** Data files are made and compared with the published ones; counted in files. */
    TABLES,

    /** What has changed becomes visible in the output folder; counted in files. */
    PUBLISHING
  }

  /**
   * A stage begins, and the one before is over.
   *
   * @param total how much there is to do, in the unit of the stage; 0 where there is nothing or it
   *     is not counted
   * @return takes what is done as it is done, from several threads at once; all parts add up to the
   *     total
   */
  LongConsumer begin(Stage stage, long total);
}
