package gambrel.insight.cause;

import gambrel.trade.measure.Share;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Correction;
import java.util.List;
import java.util.Optional;

/**
 * A change that would make a body balance, with the evidence for it.
 *
 * @param cause what probably happened
 * @param notice why, with the numbers, about the body and its first row; where no correction can be
 *     written its advice says what to look for
 * @param rows the rows concerned, earliest first; empty where a weighing is missing
 * @param corrections the rows of {@code corrections.csv} that make the change; empty where a
 *     weighing is missing
 * @param lossBefore the body's loss of its weight into the boning room, as weighed; empty if it is
 *     not known
 * @param lossAfter the same with the change; empty if it is not known
 */
public record Suggestion(
    Cause cause,
    Notice notice,
    List<Place> rows,
    List<Correction> corrections,
    Optional<Share> lossBefore,
    Optional<Share> lossAfter) {
  /** Copies the lists. */
  public Suggestion {
    rows = List.copyOf(rows);
    corrections = List.copyOf(corrections);
  }

  /** Why, with the numbers. */
  public Phrase evidence() {
    return notice.saying();
  }

  /** The rows to paste; {@code by} and {@code on} are blank for the person who decides. */
  public List<Phrase> lines() {
    return corrections.stream().map(c -> CorrectionLines.line(cause, c)).toList();
  }

  /** The suggestion as notices: one for each row to paste, or one with advice if there is none. */
  public List<Notice> notices() {
    return corrections.isEmpty()
        ? List.of(notice)
        : lines().stream().map(line -> notice.with("correction", line).advising("LINE")).toList();
  }
}
