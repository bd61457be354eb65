package gambrel.notice;

import java.util.Locale;

/** Every kind of notice, with its usual consequence and what to do about it. */
public enum NoticeCode {
  // The shop folder.
  /** A file of the shop folder lacks a required column. */
  COLUMN_MISSING(Severity.STOP, "Add the column to the file's first line."),
  /** A row of the shop folder cannot be used. */
  SHOP_ROW_BAD(Severity.MARK, "Correct the cell that is named; the row was left out."),
  /** A setting in shop.properties is not understood. */
  SETTING_BAD(Severity.MARK, "Correct the setting; its default was used."),
  /** The same id stands twice in a file of the shop folder. */
  ID_TWICE(Severity.MARK, "Keep one of the two rows; the first was used."),
  /** An id fits only without its leading zeros. */
  ID_ZEROS(
      Severity.NOTE,
      "A spreadsheet probably dropped the zeros: format the column as text and restore them."),
  /** An id or share was turned into something else by a spreadsheet. */
  SPREADSHEET_DAMAGE(
      Severity.MARK, "Format the column as text in the spreadsheet, type the value again, save."),
  /** A file of the shop folder names an id that no file defines. */
  REFERENCE_UNKNOWN(Severity.MARK, "Add the id to its file or correct the spelling."),
  /** A body's shares do not add up to one. */
  SHARES_SUM(Severity.HOLD, "Correct shares.csv so that the body's shares add up to exactly 1."),
  /** A batch is weighed that batches.csv does not list. */
  BATCH_UNLISTED(Severity.NOTE, "Add it to batches.csv to name its product and what went in."),
  /** A correction fits no row. */
  CORRECTION_UNUSED(
      Severity.MARK, "Check scale, ticket and date against the export; it changed nothing."),
  /** A release names nothing that it could release. */
  RELEASE_UNUSED(Severity.MARK, "Check body and on; what holds it now needs a later release."),

  // The exports.
  /** An export file cannot be read at all. */
  EXPORT_UNREADABLE(Severity.STOP, "Export the file again, or write a layout for it."),
  /** An export could not be read to its end. */
  EXPORT_UNFINISHED(
      Severity.STOP,
      "If it was being copied there is nothing to do: the next night reads it. Else look at the"
          + " network drive and at who may read the file."),
  /** An export row is broken as text. */
  ROW_BROKEN(
      Severity.HOLD,
      "Put a fresh export in the file's place; or void the row in corrections.csv by its file"
          + " and line."),
  /** A time cannot be read. */
  TIME_BAD(
      Severity.HOLD,
      "Correct the time with a row in corrections.csv; if the scale always writes it so, give"
          + " its pattern in a layout."),
  /** A number cannot be read. */
  NUMBER_BAD(
      Severity.HOLD,
      "Correct the number with a row in corrections.csv; if the scale always writes it so, give"
          + " decimal and thousands in a layout."),
  /** No net weight, and no gross to compute it from. */
  NET_MISSING(Severity.HOLD, "Give the net weight with a row in corrections.csv, or void the row."),
  /** A net weight below zero. */
  NET_NEGATIVE(
      Severity.HOLD,
      "Was the tray lifted off after taring? Correct net, or void the row, in corrections.csv."),
  /** Gross, tare and net disagree by more than a division. */
  NET_DISAGREES(
      Severity.HOLD, "Correct the one of gross, tare and net that is wrong in corrections.csv."),
  /** More than the scale can weigh. */
  OVER_CAPACITY(
      Severity.HOLD,
      "Correct the weight in corrections.csv, or the scale's capacity in scales.csv."),
  /** A unit of weight is not understood. */
  UNIT_BAD(
      Severity.HOLD,
      "Correct unit in corrections.csv to kg, g, lb or oz; if the scale always writes it so,"
          + " give its unit in a layout."),
  /** A status word is not understood. */
  STATUS_BAD(
      Severity.HOLD,
      "Correct status in corrections.csv to ok or void; if the scale always writes it so,"
          + " translate the word in a layout."),
  /** A scale that scales.csv lacks. */
  SCALE_UNKNOWN(Severity.HOLD, "Add the scale to scales.csv, with its division."),
  /** A code that codes.csv lacks. */
  CODE_UNKNOWN(Severity.HOLD, "Add the code to codes.csv, or correct code in corrections.csv."),
  /** A body that bodies.csv lacks. */
  BODY_UNKNOWN(Severity.HOLD, "Add the body to bodies.csv, or give its id as a tag of a body."),
  /** A number that two bodies carry as a tag. */
  BODY_AMBIGUOUS(
      Severity.HOLD, "Correct the body with a row in corrections.csv, or the tags in bodies.csv."),
  /** A customer that customers.csv lacks. */
  CUSTOMER_UNKNOWN(
      Severity.HOLD, "Add the customer to customers.csv, or correct customer in corrections.csv."),
  /** A row without the body or batch that its step needs. */
  OWNER_MISSING(Severity.HOLD, "Give the body or batch in corrections.csv or bench.csv."),
  /** An item that the body's species does not have. */
  ITEM_NOT_IN_SPECIES(
      Severity.HOLD,
      "Correct body or code in corrections.csv, or add the item to cuts.csv for the species."),
  /** Two rows with one ticket and different content. */
  TICKET_CONFLICT(
      Severity.HOLD,
      "Say in corrections.csv which is right: correct the ticket, or void the wrong row by its"
          + " file and line."),
  /** A part weighed more often on the rail than the body has it. */
  RAIL_TWICE(
      Severity.HOLD,
      "If it was weighed again, void the first weighing in corrections.csv; if it is another"
          + " body's, correct body."),
  /** A void that cancels nothing. */
  VOID_UNUSED(Severity.MARK, "Check the ticket number of the void against the scale's print."),
  /** A weight that the scale cannot show: no multiple of its division. */
  OFF_DIVISION(
      Severity.NOTE,
      "Was it typed by hand? Compare it with the scale's print; correct it in corrections.csv"
          + " if it is wrong."),
  /** Weighings dated hours or more after the run. */
  DATED_AHEAD(
      Severity.NOTE,
      "Is the scale's clock right, and does its layout read day and month in the scale's order?"
          + " Correct the times with rows in corrections.csv."),
  /** A scale's clock went back while its tickets counted on. */
  CLOCK_RESET(
      Severity.NOTE,
      "Set the scale's clock. If times from this ticket on are wrong, give each ticket its time"
          + " with a row in corrections.csv."),
  /** A time in the hour that comes twice when summer time ends, and nothing tells which. */
  HOUR_REPEATED(
      Severity.NOTE, "If the second is meant, give time in corrections.csv with its offset."),
  /** A time in the hour that is skipped when summer time begins. */
  HOUR_SKIPPED(
      Severity.NOTE,
      "Put the scale's clock forward; what it wrote after that hour may be an hour early."),

  // The figures.
  /** A statement waits for a person. */
  HELD(
      Severity.HOLD,
      "Settle the reason, which the draft under held/ puts in words, or release the body in"
          + " releases.csv."),
  /** The weight into the boning room is taken from the block. */
  WEIGHED_ON_BLOCK(Severity.NOTE, "Nothing to do if the body came in pieces."),
  /** Meat of different owners went into one batch. */
  BATCH_MIXED(
      Severity.MARK,
      "Many places forbid giving an owner another's meat: ask your local authority. If it may"
          + " be, set allow_mixed_batches=yes."),
  /** A batch does not balance. */
  BATCH_OUT(Severity.HOLD, "Look for a tub, an added ingredient or a pack that was not weighed."),
  /** A batch is open past its time. */
  BATCH_LATE(Severity.HOLD, "Pack and weigh what came of it, or give a later due in batches.csv."),
  /** A body hung longer than the shop's limit. */
  HUNG_LONG(Severity.MARK, "Look at the body before it is cut, or correct the kill date."),
  /** A scale failed its test weight. */
  SCALE_FAILED(
      Severity.HOLD, "Have the scale checked by a licensed technician and weigh the test again."),
  /** A cold weight above the hot one. */
  COLD_ABOVE_HOT(Severity.MARK, "Check both rail weights: a hook or a wrong body is likely."),
  /** A body was weighed before the day of its kill. */
  WEIGHED_BEFORE_KILL(
      Severity.MARK,
      "Correct killed in bodies.csv, or body or time of the row in corrections.csv, whichever"
          + " is wrong."),
  /** One change would make a body balance that does not. */
  LIKELY_CAUSE(
      Severity.NOTE,
      "If it was so, paste the line into corrections.csv with your name and the time."),

  // Publishing.
  /** More revisions than a night may bring. */
  REVISIONS_STOPPED(
      Severity.STOP, "Find what changed so much; if it is right, raise limit.revisions once."),
  /** Statements are registered as issued after the run's moment. */
  CLOCK_BACK(Severity.STOP, "Check the computer's clock, or the moment given with --as-of."),
  /** A body with a statement is open again, with less than was sent. */
  WEIGHINGS_GONE(
      Severity.STOP,
      "Were exports moved, emptied or lost? Bring them back. If the rows were voided on purpose"
          + " there is nothing to do: a revision follows when the body is finished."),
  /** An issued statement whose customer has no part in the body any more. */
  STATEMENT_ORPHANED(
      Severity.MARK, "Tell the customer that it no longer holds, or correct owner and shares."),
  /** A body was weighed again after its statement went out. */
  WEIGHED_AFTER_ISSUE(
      Severity.NOTE, "Was the body keyed right? If not, correct it in corrections.csv."),
  /** A page could not be made. */
  TEMPLATE_BAD(Severity.STOP, "Correct the template at the line that is named."),
  /** There was no register; revisions start again. */
  REGISTER_NEW(Severity.NOTE, "If statements went out before, restore the reports folder first."),
  /** A document that the register names is missing or changed. */
  DOCUMENT_LOST(Severity.MARK, "Restore the reports folder from the backup.");

  private final Severity severity;
  private final String advice;

  NoticeCode(Severity severity, String advice) {
    this.severity = severity;
    this.advice = advice;
  }

  /** The stable word that data files and documentation use. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The usual consequence. */
  public Severity severity() {
    return severity;
  }

  /** What to do. */
  public String advice() {
    return advice;
  }
}
