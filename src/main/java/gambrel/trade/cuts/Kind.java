package gambrel.trade.cuts;

import gambrel.trade.measure.FileWord;

/** The groups in which weights of items are summed. */
public enum Kind implements FileWord {
  /** The whole body, its sides and quarters, which hang. */
  CARCASE,
  /** A piece to be broken further; packed whole it goes home as it is, neither meat nor bone. */
  PIECE,
  /** A cut that goes home, on or off the bone. */
  MEAT,
  /** Boneless trimmings; counted as meat when packed. */
  TRIM,
  BONE,
  FAT,
  WASTE,
  /** Taken out at dressing and never hung; counts neither in take-home nor in loss. */
  OFFAL,
  /** Water, seasoning or bought-in fat put into a batch. */
  ADDED;

  /** Whether it counts as meat where it is taken home. */
  public boolean isMeat() {
    return this == MEAT || this == TRIM;
  }

  /** Whether it is bone or fat. */
  public boolean isBoneOrFat() {
    return this == BONE || this == FAT;
  }
}
