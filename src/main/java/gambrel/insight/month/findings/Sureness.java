package gambrel.insight.month.findings;

import java.util.Locale;

/** How far a finding can be trusted. */
public enum Sureness {
  /** Added up from records: nothing was inferred. */
  CERTAIN,
  /** A test with a stated rate of false alarms fired. */
  LIKELY,
  /** Few bodies, or a comparison without a test: worth a look, no more. */
  POSSIBLE;

  /** Its name in data files, and the last part of its words' key. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }
}
