package gambrel.month.value;

import gambrel.month.MonthRecords;
import gambrel.month.Settled;
import gambrel.reckoning.BodyAccount;
import java.util.ArrayList;
import java.util.List;

/** The bodies of a month and of the twelve before it: a single month has few of a kind. */
public final class Lately {
  private Lately() {}

  /** Those cut then whose weights hold, earliest month first. */
  public static List<BodyAccount> settled(MonthRecords records) {
    var accounts = new ArrayList<BodyAccount>(Settled.of(records.baseline().cut()));
    accounts.addAll(Settled.of(records.bodies().cut()));
    return accounts;
  }
}
