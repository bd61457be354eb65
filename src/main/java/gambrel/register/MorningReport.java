package gambrel.register;

import gambrel.notice.Notice;
import gambrel.reckoning.Night;
import java.util.List;

/**
 * What the morning sheet tells.
 *
 * @param night the night's figures
 * @param issued the statements that went out
 * @param held the drafts that wait
 * @param notices everything that a person should know, in order
 * @param newRegister whether there was no register before
 */
public record MorningReport(
    Night night,
    List<RegisterRow> issued,
    List<Planned> held,
    List<Notice> notices,
    boolean newRegister) {
  /** Copies the lists. */
  public MorningReport {
    issued = List.copyOf(issued);
    held = List.copyOf(held);
    notices = List.copyOf(notices);
  }
}
