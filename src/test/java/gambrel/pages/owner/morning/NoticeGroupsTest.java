package gambrel.pages.owner.morning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which notices are one thing to do. */
class NoticeGroupsTest {
  private static Notice tareLeftOn(String witness, String correction) {
    return Notice.of(NoticeCode.LIKELY_CAUSE, "TARE_LEFT_ON.one", new Place("exports/a.csv", 8))
        .with("witness", new Value.Text(witness))
        .with("correction", new Value.Text(correction))
        .advising("LINE");
  }

  /** Net and tare of one row are corrected together; another tare is another cause. */
  @Test
  void theCorrectionsOfOneLikelyCauseAreOneThing() {
    var net = tareLeftOn("1.5 kg", "bench,12,,net,16.05");
    var tare = tareLeftOn("1.5 kg", "bench,12,,tare,1.5");
    var other = tareLeftOn("2.0 kg", "bench,12,,net,15.55");

    assertEquals(
        List.of(List.of(net, tare), List.of(other)), NoticeGroups.of(List.of(net, tare, other)));
  }
}
