package gambrel.trade.cuts;

import gambrel.trade.measure.FileWord;

/** The species of bodies. Lamb covers hogget and mutton, game covers deer and similar animals. */
public enum Species implements FileWord {
  BEEF,
  VEAL,
  LAMB,
  PORK,
  GOAT,
  GAME
}
