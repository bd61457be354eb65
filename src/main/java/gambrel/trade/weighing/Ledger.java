package gambrel.trade.weighing;

import gambrel.trade.notice.Notice;
import gambrel.trade.rows.AppliedCorrection;
import java.util.List;

/**
 * All that the exports say, as known at one moment.
 *
 * @param weighings those that have taken effect
 * @param rows what became of each file's rows, in path order
 * @param setAside rows that wait for a person, in file and line order
 * @param notices everything else worth saying about rows
 * @param corrections those in force, as they were laid over rows
 */
public record Ledger(
    Weighings weighings,
    List<RowCount> rows,
    List<SetAside> setAside,
    List<Notice> notices,
    List<AppliedCorrection> corrections) {
  /** Copies the lists. */
  public Ledger {
    rows = List.copyOf(rows);
    setAside = List.copyOf(setAside);
    notices = List.copyOf(notices);
    corrections = List.copyOf(corrections);
  }
}
