package gambrel.pages.owner.morning;

import gambrel.insight.cause.LikelyCauses;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.notice.Notice;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Planned;
import gambrel.trade.register.RegisterRow;
import java.util.List;

/**
 * What the morning sheet is made from.
 *
 * @param night the night's figures
 * @param issued the statements issued in the night
 * @param accounts the customers' accounts after the night, by id
 * @param held the drafts of statements that are held
 * @param notices the notices of the night, in order
 * @param causes what probably went wrong with the bodies that do not balance
 * @param newRegister whether the night began a register
 */
public record MorningReport(
    Night night,
    List<RegisterRow> issued,
    List<CustomerAccount> accounts,
    List<Planned> held,
    List<Notice> notices,
    LikelyCauses causes,
    boolean newRegister) {}
