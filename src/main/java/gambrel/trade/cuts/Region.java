package gambrel.trade.cuts;

import gambrel.trade.measure.FileWord;

/** The regions whose trade names and primal breaks the built-in trees follow. */
public enum Region implements FileWord {
  AU,
  UK,
  US
}
