package gambrel.insight.cause;

import gambrel.trade.measure.Share;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.Correction;
import java.util.List;
import java.util.Optional;

/**
 * A change that would make a body balance, with the evidence for it.
 *
 * @param body the body that does not balance
 * @param cause what probably happened
 * @param rows the rows concerned, earliest first; empty where a weighing is missing
 * @param scale the scale of the first row, or empty
 * @param ticket the ticket of the first row, or empty
 * @param raw the first row as it stands in its export, or empty
 * @param evidence why, with the numbers; where no correction can be written its advice says what to
 *     look for
 * @param lossBefore the body's cutting loss as it is; empty if unknown
 * @param lossAfter its cutting loss with the change; empty if unknown
 * @param corrections the rows of {@code corrections.csv} that make the change; empty where a
 *     weighing is missing
 */
public record Suggestion(
    String body,
    Cause cause,
    List<Place> rows,
    String scale,
    String ticket,
    String raw,
    Phrase evidence,
    Optional<Share> lossBefore,
    Optional<Share> lossAfter,
    List<Correction> corrections) {
  /** Copies the lists. */
  public Suggestion {
    rows = List.copyOf(rows);
    corrections = List.copyOf(corrections);
  }

  /** A weighing is missing, so that there is no row to correct. */
  static Suggestion missing(
      BodyFacts suspect, Cause cause, Phrase evidence, Optional<Share> lossAfter) {
    var lossBefore = suspect.balance().shares().cuttingLoss();
    return new Suggestion(
        suspect.id(), cause, List.of(), "", "", "", evidence, lossBefore, lossAfter, List.of());
  }

  /** The rows to paste; {@code by} and {@code on} are blank for the person who decides. */
  public List<Phrase> lines() {
    return corrections.stream().map(c -> CorrectionLines.line(cause, c)).toList();
  }

  /** The suggestion as notices: one for each row to paste, or one with advice if there is none. */
  public List<Notice> notices() {
    var place = rows.isEmpty() ? Place.NONE : rows.get(0);
    var notice =
        Notice.of(NoticeCode.LIKELY_CAUSE, evidence, place)
            .aboutBody(body)
            .aboutTicket(scale, ticket)
            .quoting(raw);
    return corrections.isEmpty()
        ? List.of(notice)
        : lines().stream().map(line -> notice.with("correction", line).advising("LINE")).toList();
  }
}
