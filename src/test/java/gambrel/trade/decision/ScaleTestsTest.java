package gambrel.trade.decision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Test weights: which weighing of one fails, and what it puts in doubt. */
class ScaleTestsTest extends DecisionScene {
  @BeforeEach
  void testWeights() {
    scene.add("codes.csv", "t4,,test,4,,", "t20,,test,20,,", "t25,,test,25,,");
    scene.simpleBody();
  }

  private void bench(String division, String accuracy) {
    scene.file(
        "scales.csv", "scale,division,class", "rail,0.01,", "bench," + division + "," + accuracy);
  }

  private void tested(String time, String code, String net) {
    scene.weigh(time + " - - - " + net + " code=" + code);
  }

  private List<Notice> failed() {
    return night().notices().stream().filter(n -> n.code() == NoticeCode.SCALE_FAILED).toList();
  }

  private boolean passes(String code, String net) {
    tested("04T08:00", code, net);
    return failed().isEmpty();
  }

  /**
   * Division 0.005, class III. OIML R 76 in service: 1 division up to 500, 2 up to 2000, 3 beyond.
   * NIST Handbook 44, maintenance: the same, but 5 beyond 4000. 20 kg are 4000 divisions, 25 kg
   * 5000.
   */
  @ParameterizedTest
  @CsvSource({
    "au,t20,20.015,true",
    "au,t20,20.016,false",
    "us,t20,20.015,true",
    "us,t20,20.016,false",
    "au,t25,25.015,true",
    "au,t25,25.016,false",
    "us,t25,25.016,true",
    "us,t25,25.025,true",
    "us,t25,25.026,false",
    "us,t25,24.975,true",
    "us,t25,24.974,false",
    "uk,t25,25.016,false"
  })
  void handbook44CountsInTheUnitedStatesAndOimlElsewhere(
      String region, String code, String net, boolean passes) {
    scene.set("region=" + region);
    bench("0.005", "III");
    assertEquals(passes, passes(code, net));
  }

  @ParameterizedTest
  @CsvSource({"20.02,true", "20.021,false", "19.98,true", "19.979,false"})
  void aScaleWithoutAClassMayErrByOneDivision(String net, boolean passes) {
    bench("0.02", "");
    assertEquals(passes, passes("t20", net));
  }

  /** One division of 0.01 lb is 0.0045359237 kg. */
  @ParameterizedTest
  @CsvSource({"20.004,true", "20.005,false"})
  void theDivisionIsInTheScalesOwnUnit(String net, boolean passes) {
    scene.file("scales.csv", "scale,division,class,unit", "rail,0.01,,kg", "bench,0.01,,lb");
    tested("04T08:00", "t20", net + " unit=kg");
    assertEquals(passes, failed().isEmpty());
  }

  @Test
  void aFailedTestKeepsWhatWasExpectedAndFound() {
    bench("0.02", "III");
    tested("04T08:00", "t20", "20.05");
    // 20 kg are 1000 divisions of class III: 2 divisions of 0.02
    var reason = decision().reasons().get(0);
    assertEquals("SCALE_FAILED bench 7", named(decision().reasons()).get(0));
    assertEquals("bench", reason.text("scale"));
    assertEquals(kg("20"), reason.weight("expected"));
    assertEquals(kg("20.05"), reason.weight("found"));
    assertEquals(kg("0.04"), reason.weight("tolerance"));
  }

  @Test
  void aFailedTestWithoutATicketIsNamedByItsPlace() {
    bench("0.02", "");
    scene.weigh("04T08:00 - - - 21 code=t20 ticket=");
    assertEquals("bench exports/a.csv:8", decision().reasons().get(0).name());
  }

  @Test
  void failedTestsAreListedEarliestFirst() {
    tested("06T08:00", "t20", "22");
    tested("04T08:00", "t20", "21");
    assertEquals(List.of("8", "7"), failed().stream().map(Notice::ticket).toList());
  }

  @Test
  void doubtBeginsAfterTheLastGoodTest() {
    // the last of the body's weighings on the bench is that of 10:30
    tested("05T10:30", "t20", "20");
    tested("06T08:00", "t20", "21");
    assertEquals(List.of(), reasons());
  }

  @Test
  void doubtCoversWhatWasWeighedAMinuteAfterTheLastGoodTest() {
    tested("05T10:29", "t20", "20");
    tested("06T08:00", "t20", "21");
    assertEquals(List.of("SCALE_FAILED bench 8"), reasons());
  }

  @Test
  void doubtEndsAtTheNextGoodTest() {
    // the first of the body's weighings on the bench is that of 10:00
    tested("04T08:00", "t20", "21");
    tested("05T10:00", "t20", "20");
    assertEquals(List.of(), reasons());
  }

  @Test
  void doubtCoversWhatWasWeighedAMinuteBeforeTheNextGoodTest() {
    tested("04T08:00", "t20", "21");
    tested("05T10:01", "t20", "20");
    assertEquals(List.of("SCALE_FAILED bench 7"), reasons());
  }

  @Test
  void aGoodTestInTheSameMinuteAsAFailedOneEndsNoDoubt() {
    tested("04T08:00", "t20", "20");
    tested("04T08:00", "t20", "21");
    assertEquals(List.of("SCALE_FAILED bench 8"), reasons());
  }

  @Test
  void aFailedTestBetweenTwoOthersIsNoGoodTest() {
    tested("04T08:00", "t20", "21");
    tested("05T09:00", "t20", "22");
    tested("06T09:00", "t20", "20");
    assertEquals(List.of("SCALE_FAILED bench 7", "SCALE_FAILED bench 8"), reasons());
  }

  @Test
  void onlyTheScaleThatFailedIsInDoubt() {
    // on the rail, on the day before its hot weighing, with a good test between
    scene.weigh("01T08:00 - - - 21 code=t20 scale=rail");
    scene.weigh("01T09:00 - - - 20 code=t20 scale=rail");
    tested("04T08:00", "t20", "20");
    assertEquals(List.of(), reasons());
  }

  /** Class IIII: 4 kg are 400 divisions of 0.01 and the last with a source; 20 kg are 2000. */
  @ParameterizedTest
  @CsvSource({
    "us,IIII,t4,SCALE_FAILED",
    "us,IIII,t20,SCALE_FAILED.NO_SOURCE",
    "us,III,t20,SCALE_FAILED",
    "us,,t20,SCALE_FAILED",
    "au,IIII,t20,SCALE_FAILED"
  })
  void aLimitWithoutAPublishedSourceSaysSo(
      String region, String accuracy, String code, String words) {
    scene.set("region=" + region);
    bench("0.01", accuracy == null ? "" : accuracy);
    tested("04T08:00", code, "30");
    assertEquals(words, failed().get(0).saying().key());
  }

  @Test
  void aGoodTestInTheSameMinuteAfterAFailedOneEndsNoDoubt() {
    tested("04T08:00", "t20", "21");
    tested("04T08:00", "t20", "20");
    assertEquals(List.of("SCALE_FAILED bench 7"), reasons());
  }

  @Test
  void doubtEndsAtTheNextGoodTestBehindAnotherFailedOne() {
    tested("04T08:00", "t20", "21");
    tested("04T09:00", "t20", "22");
    tested("05T09:00", "t20", "20");
    assertEquals(List.of(), reasons());
  }

  @Test
  void doubtBeginsAtTheLastGoodTestBeforeAnotherFailedOne() {
    tested("05T10:40", "t20", "20");
    tested("06T08:00", "t20", "22");
    tested("06T09:00", "t20", "21");
    assertEquals(List.of(), reasons());
  }
}
