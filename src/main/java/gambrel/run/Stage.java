package gambrel.run;

/** What a night's work consists of, in the order in which it is done. */
public enum Stage {
  /** Exports are read; counted in bytes. */
  READING,

  /** The rows of the exports are compared and judged; counted in rows. */
  ROWS,

  /** Bodies are balanced; counted in bodies. */
  BODIES,

  /** The moments at which somebody released a body are reckoned; counted in moments. */
  RELEASES,

  /** It is looked for what went wrong with bodies that do not balance; not counted. */
  CAUSES,

  /** Statements and drafts are made; counted in documents. */
  STATEMENTS,

  /** Months are drawn and summarised; counted in months. */
  MONTHS,

  /** Data files are made and held against those that stand there; counted in files. */
  TABLES,

  /** What has changed is written to the output folder; counted in files. */
  PUBLISHING
}
