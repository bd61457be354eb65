package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Place;
import gambrel.trade.shop.BenchEntry;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.Release;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What people write down beside the scale: bench, corrections, releases. */
class DecisionFilesTest {
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void startWithAScale() {
    files = new ShopFiles(folder).with("scales.csv", "scale,division\n07,0.1\n");
  }

  @Test
  void benchFillsFromTheFirstToTheLastMoment() {
    files.with("bodies.csv", "body,species,tags\nB1,beef,311\n");
    files.with(
        "bench.csv",
        """
        scale,from,to,body,batch,customer,boner
        07,2026-07-01 07:00,2026-07-01 09:30,B1,,ash,Ned
        07,2026-07-02,2026-07-02,311,S7,,
        """);
    assertEquals(
        List.of(
            new BenchEntry(
                "07",
                OffsetDateTime.parse("2026-07-01T07:00+10:00"),
                OffsetDateTime.parse("2026-07-01T09:30+10:00"),
                "B1",
                "",
                "ash",
                "Ned"),
            new BenchEntry(
                "07",
                OffsetDateTime.parse("2026-07-02T00:00+10:00"),
                OffsetDateTime.parse("2026-07-02T23:59:59.999999999+10:00"),
                "311",
                "S7",
                "",
                "")),
        files.clean().bench());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"8,2026-07-01,2026-07-02", "07,2026-07-02,2026-07-01", "07,,2026-07-01", "07,x,y"})
  void aBenchEntryOfAnUnknownScaleOrOfNoTimeIsLeftOut(String row) {
    files.with("bench.csv", "scale,from,to\n" + row + "\n");
    assertEquals(new Place("bench.csv", 2), files.onlyNotice().place());
    assertTrue(files.read().shop().bench().isEmpty());
  }

  @Test
  void aBenchEntryOfAnUnknownBodyDoesNotPassForOneOfNobody() {
    files.with("bench.csv", "scale,from,to,body\n07,2026-07-01,2026-07-01,B9\n");
    files.refuses(NoticeCode.REFERENCE_UNKNOWN, "bench.csv", 2);
    assertEquals("B9", files.read().shop().bench().get(0).body());
  }

  @Test
  void aCorrectionIsReadWithItsPlace() {
    files.with(
        "corrections.csv",
        """
        scale,ticket,date,field,value,by,on,reason
        07,5120-5163,2026-07-01,Status,void,Ned,2026-07-02T06:00,shown twice
        """);
    assertEquals(
        List.of(
            new Correction(
                "07",
                "5120-5163",
                Optional.of(LocalDate.of(2026, 7, 1)),
                "status",
                "void",
                "Ned",
                OffsetDateTime.parse("2026-07-02T06:00+10:00"),
                "shown twice",
                new Place("corrections.csv", 2))),
        files.clean().corrections());
  }

  @Test
  void aCorrectionFindsItsScaleWithoutLeadingZeros() {
    files.with(
        "corrections.csv",
        "scale,ticket,field,value,by,on,reason\n7,1,net,2.5,Ned,2026-07-02,typo\n");
    files.refuses(NoticeCode.ID_ZEROS, "corrections.csv", 2);
    assertEquals("07", files.read().shop().corrections().get(0).scale());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "07,1,scale,08,Ned,2026-07-02,why",
        "07,1,ticket,2,Ned,2026-07-02,why",
        "07,1,price,2,Ned,2026-07-02,why",
        "07,,net,2,Ned,2026-07-02,why",
        "07,05-Dec,net,2,Ned,2026-07-02,why",
        "07,1,net,2,,2026-07-02,why",
        "07,1,net,2,Ned,,why",
        "07,1,net,2,Ned,2026-07-02,"
      })
  void aCorrectionThatDoesNotSayWhatWhoWhenAndWhyIsLeftOut(String row) {
    files.with("corrections.csv", "scale,ticket,field,value,by,on,reason\n" + row + "\n");
    assertEquals(new Place("corrections.csv", 2), files.onlyNotice().place());
    assertTrue(files.read().shop().corrections().isEmpty());
  }

  @Test
  void aReleaseWithoutAnActionReleases() {
    files.with(
        "releases.csv",
        """
        body,by,on,reason,action
        B1,Ned,2026-07-02,spoke to Ash,
        B1,Ned,2026-07-03T08:00Z,new prices,Reissue
        """);
    assertEquals(
        List.of(
            new Release(
                "B1",
                "Ned",
                OffsetDateTime.parse("2026-07-02T00:00+10:00"),
                "spoke to Ash",
                Release.Action.RELEASE,
                new Place("releases.csv", 2)),
            new Release(
                "B1",
                "Ned",
                OffsetDateTime.parse("2026-07-03T08:00Z"),
                "new prices",
                Release.Action.REISSUE,
                new Place("releases.csv", 3))),
        files.clean().releases());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"B9,Ned,2026-07-02,why,", "B1,Ned,2026-07-02,why,send", "B1,,2026-07-02,why,"})
  void aReleaseOfNothingKnownIsLeftOut(String row) {
    files.with("releases.csv", "body,by,on,reason,action\n" + row + "\n");
    assertEquals(new Place("releases.csv", 2), files.onlyNotice().place());
    assertTrue(files.read().shop().releases().isEmpty());
  }
}
