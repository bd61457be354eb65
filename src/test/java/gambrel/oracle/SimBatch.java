package gambrel.oracle;

import java.math.BigDecimal;
import java.time.LocalDateTime;

/** A batch of a made-up shop while it fills. */
final class SimBatch {
  private final String id;
  private BigDecimal meat = BigDecimal.ZERO;
  private LocalDateTime last;

  SimBatch(String id) {
    this.id = id;
  }

  String id() {
    return id;
  }

  void took(BigDecimal weight, LocalDateTime time) {
    meat = meat.add(weight);
    last = last == null || time.isAfter(last) ? time : last;
  }

  BigDecimal meat() {
    return meat;
  }

  /** When the last tub came, or null. */
  LocalDateTime last() {
    return last;
  }
}
