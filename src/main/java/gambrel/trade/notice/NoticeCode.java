package gambrel.trade.notice;

import java.util.Locale;

/** Every kind of notice, with its usual consequence. */
public enum NoticeCode {
  // The shop folder.
  /** A file of the shop folder lacks a required column. */
  COLUMN_MISSING(Severity.STOP),
  /** A row of the shop folder cannot be used. */
  SHOP_ROW_BAD(Severity.MARK),
  /** A setting in shop.properties is not understood. */
  SETTING_BAD(Severity.MARK),
  /** The same id stands twice in a file of the shop folder. */
  ID_TWICE(Severity.MARK),
  /** An id fits only without its leading zeros. */
  ID_ZEROS(Severity.NOTE),
  /** An id or share was turned into something else by a spreadsheet. */
  SPREADSHEET_DAMAGE(Severity.MARK),
  /** A file of the shop folder names an id that no file defines. */
  REFERENCE_UNKNOWN(Severity.MARK),
  /** A body's shares do not add up to one. */
  SHARES_SUM(Severity.HOLD),
  /** A batch is weighed that batches.csv does not list. */
  BATCH_UNLISTED(Severity.NOTE),
  /** A correction fits no row. */
  CORRECTION_UNUSED(Severity.MARK),
  /** A release names nothing that it could release. */
  RELEASE_UNUSED(Severity.MARK),

  // The exports.
  /** An export file cannot be read at all. */
  EXPORT_UNREADABLE(Severity.STOP),
  /** An export could not be read to its end. */
  EXPORT_UNFINISHED(Severity.STOP),
  /** An export row is broken as text. */
  ROW_BROKEN(Severity.HOLD),
  /** A time cannot be read. */
  TIME_BAD(Severity.HOLD),
  /** A number cannot be read. */
  NUMBER_BAD(Severity.HOLD),
  /** No net weight, and no gross to compute it from. */
  NET_MISSING(Severity.HOLD),
  /** A net weight below zero. */
  NET_NEGATIVE(Severity.HOLD),
  /** Gross, tare and net disagree by more than a division. */
  NET_DISAGREES(Severity.HOLD),
  /** More than the scale can weigh. */
  OVER_CAPACITY(Severity.HOLD),
  /** A unit of weight is not understood. */
  UNIT_BAD(Severity.HOLD),
  /** A status word is not understood. */
  STATUS_BAD(Severity.HOLD),
  /** A scale that scales.csv lacks. */
  SCALE_UNKNOWN(Severity.HOLD),
  /** A code that codes.csv lacks. */
  CODE_UNKNOWN(Severity.HOLD),
  /** A body that bodies.csv lacks. */
  BODY_UNKNOWN(Severity.HOLD),
  /** A number that two bodies carry as a tag. */
  BODY_AMBIGUOUS(Severity.HOLD),
  /** A customer that customers.csv lacks. */
  CUSTOMER_UNKNOWN(Severity.HOLD),
  /** A row without the body or batch that its step needs. */
  OWNER_MISSING(Severity.HOLD),
  /** An item that the body's species does not have. */
  ITEM_NOT_IN_SPECIES(Severity.HOLD),
  /** Two rows with one ticket and different content. */
  TICKET_CONFLICT(Severity.HOLD),
  /** A part weighed more often on the rail than the body has it. */
  RAIL_TWICE(Severity.HOLD),
  /** A void that cancels nothing. */
  VOID_UNUSED(Severity.MARK),
  /** A weight that the scale cannot show: no multiple of its division. */
  OFF_DIVISION(Severity.NOTE),
  /** Weighings dated hours or more after the run. */
  DATED_AHEAD(Severity.NOTE),
  /** A scale's clock went back while its tickets counted on. */
  CLOCK_RESET(Severity.NOTE),
  /** A time in the hour that comes twice when summer time ends, and nothing tells which. */
  HOUR_REPEATED(Severity.NOTE),
  /** A time in the hour that is skipped when summer time begins. */
  HOUR_SKIPPED(Severity.NOTE),

  // The figures.
  /** A statement waits for a person. */
  HELD(Severity.HOLD),
  /** The weight into the boning room is taken from the block. */
  WEIGHED_ON_BLOCK(Severity.NOTE),
  /** Meat of different owners went into one batch. */
  BATCH_MIXED(Severity.MARK),
  /** A batch does not balance. */
  BATCH_OUT(Severity.HOLD),
  /** A batch is open past its time. */
  BATCH_LATE(Severity.HOLD),
  /** A body hung longer than the shop's limit. */
  HUNG_LONG(Severity.MARK),
  /** A scale failed its test weight. */
  SCALE_FAILED(Severity.HOLD),
  /** A cold weight above the hot one. */
  COLD_ABOVE_HOT(Severity.MARK),
  /** A body was weighed before the day of its kill. */
  WEIGHED_BEFORE_KILL(Severity.MARK),
  /** One change would make a body balance that does not. */
  LIKELY_CAUSE(Severity.NOTE),

  // Publishing.
  /** More revisions than a night may bring. */
  REVISIONS_STOPPED(Severity.STOP),
  /** Statements are registered as issued after the run's moment. */
  CLOCK_BACK(Severity.STOP),
  /** A body with a statement is open again, with less than was sent. */
  WEIGHINGS_GONE(Severity.STOP),
  /** An issued statement whose customer has no part in the body any more. */
  STATEMENT_ORPHANED(Severity.MARK),
  /** A body was weighed again after its statement went out. */
  WEIGHED_AFTER_ISSUE(Severity.NOTE),
  /** A page could not be made. */
  TEMPLATE_BAD(Severity.STOP),
  /** There was no register; revisions start again. */
  REGISTER_NEW(Severity.NOTE),
  /** A document that the register names is missing or changed. */
  DOCUMENT_LOST(Severity.MARK);

  private final Severity severity;

  NoticeCode(Severity severity) {
    this.severity = severity;
  }

  /** The stable word that data files and documentation use. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The usual consequence. */
  public Severity severity() {
    return severity;
  }
}
