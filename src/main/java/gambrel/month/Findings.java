package gambrel.month;

import java.util.List;
import java.util.stream.Stream;

/** All that a month asks its owner to look at, most money first. */
public final class Findings {
  private Findings() {}

  /** The findings of a month, in {@link Finding#ORDER}. */
  public static List<Finding> of(MonthRecords records) {
    return Stream.of(ShrinkFindings.of(records), ValueFindings.of(records))
        .flatMap(List::stream)
        .sorted(Finding.ORDER)
        .toList();
  }
}
