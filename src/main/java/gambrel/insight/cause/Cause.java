package gambrel.insight.cause;

import java.util.Locale;

/** What may have gone wrong at a scale. */
public enum Cause {
  /** A ticket keyed to another body than its neighbours. */
  WRONG_BODY,
  /** The print key pressed twice for one weighing. */
  DOUBLE_PRESS,
  /** A tray or bin weighed without its tare. */
  TARE_LEFT_ON,
  /** The body key not changed, or changed too early, when the next body came. */
  CHANGEOVER,
  /** A hung part that was weighed at one step and not at another, or at neither. */
  PART_NOT_WEIGHED,
  /** A hook or roller weighed with a body. */
  HOOK,
  /** A tub of bone, fat or waste that was never weighed. */
  BIN_NOT_WEIGHED,
  /** A decimal point in the wrong place. */
  DECIMAL,
  /** Pounds taken for kilograms, or the other way round. */
  UNIT;

  /** A stable word for it. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
