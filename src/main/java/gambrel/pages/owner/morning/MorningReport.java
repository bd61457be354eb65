package gambrel.pages.owner.morning;

import gambrel.insight.cause.LikelyCauses;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Planned;
import gambrel.trade.register.RegisterRow;
import java.util.List;

/**
 * What the morning sheet tells.
 *
 * @param night the night's figures
 * @param issued the statements that went out
 * @param held the drafts that wait
 * @param notices everything that a person should know, in order
 * @param causes what probably went wrong with the bodies that do not balance
 * @param newRegister whether there was no register before
 */
public record MorningReport(
    Night night,
    List<RegisterRow> issued,
    List<Planned> held,
    List<Notice> notices,
    LikelyCauses causes,
    boolean newRegister) {
  /** Copies the lists. */
  public MorningReport {
    issued = List.copyOf(issued);
    held = List.copyOf(held);
    notices = List.copyOf(notices);
  }

  /** The report of a night without likely causes. */
  public MorningReport(
      Night night,
      List<RegisterRow> issued,
      List<Planned> held,
      List<Notice> notices,
      boolean newRegister) {
    this(night, issued, held, notices, LikelyCauses.NONE, newRegister);
  }
}
