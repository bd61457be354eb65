package gambrel.insight.month;

import gambrel.insight.month.figures.MonthRecords;
import gambrel.night.RefusedException;
import gambrel.scenes.Scene;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.register.Register;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.util.List;

/** A scene's month, read without a night's run. */
public final class Books {
  private Books() {}

  /** A scene without bodies: each test brings its own. */
  public static Scene shop(Path folder) {
    return new Scene(folder)
        .file(
            "bodies.csv",
            "body,species,class,killed,customer,supplier,cost,live_weight,head,tags,outcome");
  }

  static Night night(Scene scene, String asOf) {
    try {
      var inputs = scene.read();
      return new Reckoner(inputs.shop(), inputs.exports()).at(OffsetDateTime.parse(asOf));
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }

  /** March 2026 as it is known in the middle of April, before anything was issued. */
  public static MonthRecords march(Scene scene) {
    return MonthRecords.of(
        night(scene, "2026-04-15T00:00:00Z"), new Register(List.of()), YearMonth.of(2026, 3));
  }
}
