package gambrel.insight.month;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.insight.month.figures.MonthRecords;
import gambrel.insight.month.money.Debt;
import gambrel.scenes.Scene;
import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.register.Register;
import gambrel.trade.register.RegisterRow;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A debt is late from the 31st day on; February 2026 has 28. */
class LateDebtsTest {
  @TempDir Path folder;

  private Scene scene;

  @BeforeEach
  void shop() {
    scene = Books.shop(folder).file("payments.csv", "customer,body,date,amount");
  }

  @Test
  void turnLateDayByDayWhileTheMonthRuns() {
    assertEquals(List.of(), late("2026-03-12", "2026-02-10"));
    assertEquals(List.of("B0"), late("2026-03-13", "2026-02-10"));
  }

  @Test
  void areThoseOfTheMonthsEndOnceItIsOver() {
    assertEquals(List.of("B0"), late("2026-05-20", "2026-02-28", "2026-03-01"));
  }

  @Test
  void fallAwayWithAPaymentEnteredAfterTheMonth() {
    scene.add("payments.csv", "ann,B0,2026-04-10,300.00");
    assertEquals(List.of("B0"), late("2026-04-09", "2026-02-10"));
    assertEquals(List.of(), late("2026-04-11", "2026-02-10"));
  }

  @Test
  void stayForWhatIsNotPaidOfThem() {
    scene.add("payments.csv", "ann,B0,2026-03-01,299.99");
    var debts = debts("2026-04-15", "2026-02-10");
    assertEquals(List.of(new Money(1)), debts.stream().map(Debt::due).toList());
  }

  private List<String> late(String asOf, String... issued) {
    return debts(asOf, issued).stream().map(debt -> debt.statement().body()).toList();
  }

  /** Statements of 300.00 over bodies B0, B1 and so on, issued on those days. */
  private List<Debt> debts(String asOf, String... issued) {
    var rows = new ArrayList<RegisterRow>();
    for (int i = 0; i < issued.length; i++) {
      rows.add(statement("B" + i, LocalDate.parse(issued[i])));
    }
    return Debt.late(
        MonthRecords.of(
            Books.night(scene, asOf + "T00:00:00Z"), new Register(rows), YearMonth.of(2026, 3)));
  }

  private static RegisterRow statement(String body, LocalDate issued) {
    return new RegisterRow(
        "ann",
        body,
        1,
        issued.atTime(2, 0),
        Weight.ofThousandths(150_000),
        new Money(30_000),
        Money.ZERO,
        Money.ZERO,
        Optional.empty(),
        "statements/ann/" + body + "-r1.pdf",
        "",
        "");
  }
}
