package gambrel.insight.cause;

import gambrel.trade.measure.FileWord;

/** What may have gone wrong at a scale. */
public enum Cause implements FileWord {
  /** A ticket was keyed to the wrong body. */
  WRONG_BODY,
  /** The print key was pressed twice for one weighing. */
  DOUBLE_PRESS,
  /** The tare of a tray or bin was not taken off. */
  TARE_LEFT_ON,
  /** A tub was keyed to the wrong batch. */
  WRONG_BATCH,
  /** The body key was changed too late or too early when the next body came. */
  CHANGEOVER,
  /** A hung part was not weighed hot, or cold, or at either step. */
  PART_NOT_WEIGHED,
  /** A hook or roller was weighed with a body. */
  HOOK,
  /** A tub of bone, fat or waste was not weighed. */
  BIN_NOT_WEIGHED,
  /** A pack was not weighed. */
  PACK_NOT_WEIGHED,
  /** A decimal point was in the wrong place. */
  DECIMAL,
  /** Two digits beside each other were exchanged. */
  DIGITS_TRANSPOSED,
  /** Pounds were taken for kilograms, or the reverse. */
  UNIT
}
