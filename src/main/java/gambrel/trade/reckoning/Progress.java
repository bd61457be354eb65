package gambrel.trade.reckoning;

import java.util.function.LongConsumer;

/** Receives reports on the progress of a night. */
@FunctionalInterface
public interface Progress {
  /** Ignores all reports. */
  Progress NONE = (stage, total) -> part -> {};

  /** The stages of a night, in order. */
  enum Stage {
    /** Reads the exports; counted in bytes. */
    READING,

    /** Compares and classifies the rows of the exports; counted in rows. */
    ROWS,

    /** Balances bodies; counted in bodies. */
    BODIES,

    /** Reckons the shop at the moments of releases; counted in moments. */
    RELEASES,

    /** Makes statements and drafts; counted in documents. */
    STATEMENTS,

    /** Draws and summarises months; counted in months. */
    MONTHS,

    /** Makes data files and compares them with the published ones; counted in files. */
    TABLES,

    /** Publishes the changes in the output folder; counted in files. */
    PUBLISHING
  }

  /**
   * Begins a stage and ends the stage before it.
   *
   * @param total the amount of work, in the unit of the stage; 0 if there is none or it is not
   *     counted
   * @return receives each finished part from any thread; the parts add up to the total
   */
  LongConsumer begin(Stage stage, long total);
}
