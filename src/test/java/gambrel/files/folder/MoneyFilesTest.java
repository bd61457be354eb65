package gambrel.files.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.trade.measure.Money;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.shop.Batch;
import gambrel.trade.shop.Charge;
import gambrel.trade.shop.ItemValue;
import gambrel.trade.shop.Payment;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Charges, values, payments and batches. */
class MoneyFilesTest {
  private static final LocalDate JULY = LocalDate.of(2026, 7, 1);
  @TempDir Path folder;
  private ShopFiles files;

  @BeforeEach
  void start() {
    files = new ShopFiles(folder);
  }

  @Test
  void everyColumnOfAChargeIsRead() {
    files.with(
        "charges.csv",
        """
        charge,description,basis,price,minimum,free,species,class,item,body,hot_from,hot_to,\
        tax_percent,from,to
        bone,Boning,Packed,1.125,50,10,Beef,steer,Rump,B1,100,200.5,10,2026-07-01,2026-07-01
        hide,Hide credit,head,-5,,,,,,,,,,,
        """);
    var charges = files.clean().charges();
    assertEquals(
        new Charge(
            "bone",
            "Boning",
            Charge.Basis.PACKED,
            new BigDecimal("1.125"),
            new BigDecimal("50"),
            new BigDecimal("10"),
            "beef",
            "steer",
            "rump",
            "B1",
            Optional.of(Weight.ofThousandths(100_000)),
            Optional.of(Weight.ofThousandths(200_500)),
            new BigDecimal("10"),
            Optional.of(JULY),
            Optional.of(JULY)),
        charges.get(0));
    assertEquals(new BigDecimal("-5"), charges.get(1).price());
    assertEquals(BigDecimal.ZERO, charges.get(1).minimum());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a,A,side,1,,,,,",
        "a,A,head,,,,,,",
        "a,,head,1,,,,,",
        "a,A,head,\"1,5\",,,,,",
        "a,A,head,1,-1,,,,",
        "a,A,head,1,,ox,,,",
        "a,A,head,1,,,unicorn,,",
        "a,A,head,1,,,,2026-07-02,2026-07-01"
      })
  void aChargeThatIsNotUnderstoodIsLeftOut(String row) {
    files.with(
        "charges.csv", "charge,description,basis,price,minimum,species,item,from,to\n" + row);
    assertEquals(2, files.onlyNotice().place().line());
    assertTrue(files.read().shop().charges().isEmpty());
  }

  @Test
  void oneChargeMayHaveSeveralPricesButNotTwoForTheSameThing() {
    files.with(
        "charges.csv",
        """
        charge,description,basis,price,species,from
        kill,Kill,head,90,beef,
        kill,Kill,head,30,lamb,
        kill,Kill,head,95,beef,2026-07-01
        kill,Kill,head,31,lamb,
        """);
    files.refuses(NoticeCode.ID_TWICE, "charges.csv", 5);
    assertEquals(3, files.read().shop().charges().size());
  }

  @Test
  void aDecimalCommaStandsBesideSemicolons() {
    files.with("charges.csv", "charge;description;basis;price\nkill;Kill;head;90,50\n");
    assertEquals(new BigDecimal("90.50"), files.clean().charges().get(0).price());
  }

  @Test
  void valuesNameAnItemOfSomeSpecies() {
    files.with("values.csv", "item,value,from,to\nrump,18.5,2026-07-01,\nunicorn,1,,\n");
    files.refuses(NoticeCode.REFERENCE_UNKNOWN, "values.csv", 3);
    assertEquals(
        List.of(new ItemValue("rump", new BigDecimal("18.5"), Optional.of(JULY), Optional.empty())),
        files.read().shop().values());
  }

  @Test
  void paymentsFitTheCurrency() {
    files.with(
        "payments.csv",
        "customer,body,date,amount,note\nash,B1,2026-07-01,100.5,cash\nash,,2026-07-01,0.001,\n");
    files.refuses(NoticeCode.SHOP_ROW_BAD, "payments.csv", 3);
    assertEquals(
        List.of(new Payment("ash", "B1", JULY, new Money(10_050), "cash")),
        files.read().shop().payments());
  }

  @Test
  void aPaymentFindsItsBodyWithoutLeadingZeros() {
    files.with("bodies.csv", "body,species\n0042,beef\n");
    files.with("payments.csv", "customer,body,date,amount\nash,42,2026-07-01,1\n");
    files.refuses(NoticeCode.ID_ZEROS, "payments.csv", 2);
    assertEquals("0042", files.read().shop().payments().get(0).body());
  }

  @Test
  void aPaymentOfAnUnknownCustomerIsKeptWithARemark() {
    files.with("payments.csv", "customer,date,amount\nzed,2026-07-01,1\n");
    files.refuses(NoticeCode.REFERENCE_UNKNOWN, "payments.csv", 2);
    assertEquals("zed", files.read().shop().payments().get(0).customer());
  }

  @Test
  void batchesAreReadById() {
    files.with(
        "batches.csv",
        "batch,product,made,gain,due,added,note\nS7,Sausage,2026-07-01,yes,,salt (no gluten),n\n");
    assertEquals(
        Map.of(
            "S7",
            new Batch(
                "S7",
                "Sausage",
                Optional.of(JULY),
                true,
                Optional.empty(),
                "salt (no gluten)",
                "n",
                true)),
        files.clean().batches());
  }
}
