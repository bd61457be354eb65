package gambrel.insight.month.findings;

import java.util.Locale;

/** How sure a finding is. */
public enum Sureness {
  /** It is a sum of records; nothing was inferred. */
  CERTAIN,
  /** A statistical test with a stated rate of false alarms found it. */
  LIKELY,
  /** There were few bodies, or there was no test. */
  POSSIBLE;

  /** Its name in data files, and the last part of its words' key. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
