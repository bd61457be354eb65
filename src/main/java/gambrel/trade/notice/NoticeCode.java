package gambrel.trade.notice;

import gambrel.trade.measure.FileWord;

/** The codes of notices, each with its usual severity. */
public enum NoticeCode implements FileWord {
  // The shop folder.
  /** A file of the shop folder lacks a required column. */
  COLUMN_MISSING(Severity.STOP),
  /** A column or setting is not known and looks like one that is missing, or stands there twice. */
  COLUMN_UNKNOWN(Severity.STOP),
  /** A column or setting is not known. */
  COLUMN_OTHER(Severity.NOTE),
  /** The name of a column or setting is written in another way. */
  COLUMN_NAME(Severity.NOTE),
  /** A row of the shop folder cannot be used. */
  SHOP_ROW_BAD(Severity.MARK),
  /** A setting in shop.properties or a layout is not understood. */
  SETTING_BAD(Severity.STOP),
  /** A file of the shop folder has the same id twice. */
  ID_TWICE(Severity.MARK),
  /** An id fits only without its leading zeros. */
  ID_ZEROS(Severity.NOTE),
  /** An id or share was turned into something else by a spreadsheet. */
  SPREADSHEET_DAMAGE(Severity.MARK),
  /** A file of the shop folder names an id that no file defines. */
  REFERENCE_UNKNOWN(Severity.MARK),
  /** A body's shares do not add up to one. */
  SHARES_SUM(Severity.HOLD),
  /** A weighing names a batch that batches.csv does not list. */
  BATCH_UNLISTED(Severity.NOTE),
  /** A correction fits no row. */
  CORRECTION_UNUSED(Severity.MARK),
  /** A release has no effect. */
  RELEASE_UNUSED(Severity.MARK),

  // The exports.
  /** An export file cannot be read at all. */
  EXPORT_UNREADABLE(Severity.STOP),
  /** An export could not be read to its end. */
  EXPORT_UNFINISHED(Severity.STOP),
  /** A file among the exports that is none. */
  EXPORT_OTHER(Severity.MARK),
  /** Rows of one export are equal; each counts. */
  ROWS_EQUAL(Severity.MARK),
  /** An export row is broken as text. */
  ROW_BROKEN(Severity.HOLD),
  /** A time cannot be read. */
  TIME_BAD(Severity.HOLD),
  /** A number cannot be read. */
  NUMBER_BAD(Severity.HOLD),
  /** No net weight, and no gross to compute it from. */
  NET_MISSING(Severity.HOLD),
  /** A net weight of zero. */
  NET_ZERO(Severity.HOLD),
  /** A net weight below zero. */
  NET_NEGATIVE(Severity.HOLD),
  /** Gross, tare and net disagree by more than a division. */
  NET_DISAGREES(Severity.HOLD),
  /** A load above the scale's capacity. */
  OVER_CAPACITY(Severity.HOLD),
  /** A unit of weight is not understood. */
  UNIT_BAD(Severity.HOLD),
  /** A status word is not understood. */
  STATUS_BAD(Severity.HOLD),
  /** A scale that scales.csv does not list. */
  SCALE_UNKNOWN(Severity.HOLD),
  /** A code that codes.csv does not list. */
  CODE_UNKNOWN(Severity.HOLD),
  /** A body that bodies.csv does not list. */
  BODY_UNKNOWN(Severity.HOLD),
  /** A number that is a tag of two bodies. */
  BODY_AMBIGUOUS(Severity.HOLD),
  /** A customer that customers.csv does not list. */
  CUSTOMER_UNKNOWN(Severity.HOLD),
  /** A row without the body or batch that its step needs. */
  OWNER_MISSING(Severity.HOLD),
  /** An item that the body's species does not have. */
  ITEM_NOT_IN_SPECIES(Severity.HOLD),
  /** Two rows with one ticket and different content. */
  TICKET_CONFLICT(Severity.HOLD),
  /** More rail weighings of a part than the body has such parts. */
  PART_TWICE(Severity.HOLD),
  /** A void that cancels nothing. */
  VOID_UNUSED(Severity.MARK),
  /** A void that cancels only its own row, though an equal weighing stands just before it. */
  VOID_ALONE(Severity.MARK),
  /** A weight that is no multiple of the scale's division. */
  OFF_DIVISION(Severity.NOTE),
  /** Weighings dated more than six hours after the run. */
  DATED_AHEAD(Severity.NOTE),
  /** A scale's clock went back while its ticket numbers rose. */
  CLOCK_RESET(Severity.NOTE),
  /** A time in the hour that comes twice when summer time ends; the pass is unclear. */
  HOUR_REPEATED(Severity.NOTE),
  /** A time in the hour that is skipped when summer time begins. */
  HOUR_SKIPPED(Severity.NOTE),

  // The figures.
  /** A statement waits for a person. */
  HELD(Severity.HOLD),
  /** A rail weighing of a part that lies under one which stands and does not replace it whole. */
  RAIL_TWICE(Severity.HOLD),
  /** The weight into the boning room is computed from block weights. */
  WEIGHED_ON_BLOCK(Severity.NOTE),
  /** Meat of different owners went into one batch. */
  BATCH_MIXED(Severity.MARK),
  /** A batch does not balance. */
  BATCH_OUT(Severity.HOLD),
  /** A batch is open after the day on which it is due. */
  BATCH_LATE(Severity.HOLD),
  /** A body hung longer than the shop's limit of days. */
  HUNG_LONG(Severity.MARK),
  /** Meat of a body in tubs without a batch, which a charge by green weight would count in one. */
  TUB_WITHOUT_BATCH(Severity.MARK),
  /** A scale failed its test weight. */
  SCALE_FAILED(Severity.HOLD),
  /** A cold weight above the hot one. */
  COLD_ABOVE_HOT(Severity.MARK),
  /** A chill shrink beyond the limits of its species in the twelve months before. */
  CHILL_UNUSUAL(Severity.MARK),
  /** A body was weighed before the day of its kill. */
  WEIGHED_BEFORE_KILL(Severity.MARK),
  /** Cuts with backbone in them were packed of cattle whose backbone may not go home. */
  VERTEBRA_PACKED(Severity.MARK),
  /** One change would make a body balance. */
  LIKELY_CAUSE(Severity.NOTE),

  // Publishing.
  /** More revised statements than the shop's limit for a night. */
  REVISIONS_STOPPED(Severity.STOP),
  /** The register has statements that were issued after the run's moment. */
  CLOCK_BACK(Severity.STOP),
  /** A body with an issued statement is open again and has fewer weighings than it had. */
  WEIGHINGS_GONE(Severity.STOP),
  /** The customer of an issued statement has no share of the body. */
  STATEMENT_ORPHANED(Severity.MARK),
  /** A body was weighed again after its statement went out. */
  WEIGHED_AFTER_ISSUE(Severity.NOTE),
  /** A page could not be made. */
  TEMPLATE_BAD(Severity.STOP),
  /** The output folder has no statement from before this night. */
  REGISTER_NEW(Severity.NOTE),
  /** A document that the register names is missing or changed. */
  DOCUMENT_LOST(Severity.MARK),
  /** Last night's statements for paper are too many for one file to print. */
  PRINT_MANY(Severity.MARK),
  /** A statement that should go by mail waits for a person. */
  UNSENT(Severity.MARK);

  private final Severity severity;

  NoticeCode(Severity severity) {
    this.severity = severity;
  }

  /** The usual severity. */
  public Severity severity() {
    return severity;
  }
}
