package gambrel.trade.account;

import static org.junit.jupiter.api.Assertions.assertEquals;

import gambrel.scenes.FiguresTest;
import gambrel.trade.measure.Money;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The bill of a body: 300 hot, 294 cold, 200 packed, three days hung. Money is in cents. */
class BillingTest extends FiguresTest {
  private static final String COLUMNS =
      "charge,description,basis,price,minimum,free,species,class,item,body,hot_from,hot_to,"
          + "tax_percent,from,to";

  @BeforeEach
  void cut() {
    scene.simpleBody();
  }

  private Bill bill(String... charges) {
    scene.file("charges.csv", COLUMNS).add("charges.csv", charges);
    var night = night();
    return new Billing(night.shop()).bill(night.bodies().get("B1").balance());
  }

  private BigFraction quantity(String charge) {
    return bill(charge).lines().get(0).quantity();
  }

  private static Money cents(long cents) {
    return new Money(cents);
  }

  @Test
  void eachBasisCountsItsOwnFigure() {
    assertEquals(BigFraction.of(1), quantity("c,C,head,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(1), quantity("c,C,share,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(560), quantity("c,C,live,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(300), quantity("c,C,hot,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(294), quantity("c,C,cold,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(294), quantity("c,C,boning,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(3), quantity("c,C,day,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(200), quantity("c,C,packed,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(2), quantity("c,C,pack,1,,,,,,,,,,,"));
    assertEquals(BigFraction.of(0), quantity("c,C,tub,1,,,,,,,,,,,"));
  }

  @Test
  void tubsCountIfTheyGoIntoABatch() {
    scene.weigh("05T11:00 B1 tub trim 8 batch=M1\n05T11:01 B1 tub trim 4");
    assertEquals(BigFraction.of(8), quantity("c,C,tub,1,,,,,,,,,,,"));
  }

  @Test
  void theFreeQuantityIsTakenOffAndTheMinimumIsCharged() {
    assertEquals(BigFraction.of(1), quantity("c,C,day,1,,2,,,,,,,,,"));
    assertEquals(BigFraction.of(0), quantity("c,C,day,1,,5,,,,,,,,,"));
    assertEquals(BigFraction.of(4), quantity("c,C,day,1,4,,,,,,,,,,"));
    assertEquals(BigFraction.of(3), quantity("c,C,day,1,2,,,,,,,,,,"));
  }

  @Test
  void whereNothingWasDoneThereIsNoMinimum() {
    assertEquals(BigFraction.of(0), quantity("c,C,tub,1,10,,,,,,,,,,"));
    assertEquals(BigFraction.of(0), quantity("c,C,packed,1,10,,,,liver,,,,,,"));
    assertEquals(BigFraction.of(0), quantity("c,C,pack,1,10,,,,liver,,,,,,"));
  }

  @Test
  void aChargeForAnItemCountsItAndAllUnderIt() {
    assertEquals(BigFraction.of(120), quantity("c,C,packed,1,,,,,hindquarter,,,,,,"));
    assertEquals(BigFraction.of(1), quantity("c,C,pack,1,,,,,hindquarter,,,,,,"));
  }

  @Test
  void aChargeAppliesToItsSpeciesClassAndBody() {
    assertEquals(1, bill("c,C,head,1,,,beef,,,,,,,,").lines().size());
    assertEquals(0, bill("c,C,head,1,,,pork,,,,,,,,").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,steer,,,,,,,").lines().size());
    assertEquals(1, bill("c,C,head,1,,,,,,B1,,,,,").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,,,B2,,,,,").lines().size());
  }

  @Test
  void aBandHoldsItsLowerEndAndNotItsUpper() {
    assertEquals(1, bill("c,C,head,1,,,,,,,300,,,,").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,,,,300.01,,,,").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,,,,,300,,,").lines().size());
    assertEquals(1, bill("c,C,head,1,,,,,,,,300.01,,,").lines().size());
  }

  @Test
  void pricesAreThoseOfTheDayOfTheFirstPack() {
    assertEquals(1, bill("c,C,head,1,,,,,,,,,,2026-03-05,2026-03-05").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,,,,,,,2026-03-06,").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,,,,,,,,2026-03-04").lines().size());
  }

  @Test
  void anUnknownQuantityIsNoLine() {
    scene.file("bodies.csv", "body,species,customer", "B1,beef,ann");
    var bill = bill("d,Days,day,1,,,,,,,,,,,", "l,Live,live,1,,,,,,,,,,,", "h,H,head,1,,,,,,,,,,,");
    assertEquals(List.of("d", "l"), bill.unknown().stream().map(c -> c.id()).toList());
    assertEquals(1, bill.lines().size());
  }

  @Test
  void taxComesOnTopOfThePrice() {
    var bill = bill("c,C,head,130.00,,,,,,,,,10,,");
    assertEquals(cents(13000), bill.net("ann"));
    assertEquals(cents(1300), bill.tax("ann"));
  }

  @Test
  void includedTaxIsTakenOutOfThePrice() {
    scene.set("tax_included=yes");
    var bill = bill("c,C,head,110.00,,,,,,,,,10,,");
    assertEquals(cents(10000), bill.net("ann"));
    assertEquals(cents(1000), bill.tax("ann"));
  }

  @Test
  void ownersDivideALineToTheCent() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/3", "B1,bob,1/3", "B1,cat,1/3");
    var bill = bill("c,C,head,1.00,,,,,,,,,10,,");
    assertEquals(cents(34), bill.net("ann"));
    assertEquals(cents(33), bill.net("bob"));
    assertEquals(cents(4), bill.tax("ann"));
    assertEquals(cents(3), bill.tax("cat"));
    assertEquals(cents(100), bill.net());
  }

  @Test
  void everyOwnerPaysAChargePerShareInFull() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    var bill = bill("c,C,share,5.00,,,,,,,,,10,,");
    assertEquals(cents(500), bill.net("ann"));
    assertEquals(cents(500), bill.net("bob"));
    assertEquals(cents(50), bill.tax("bob"));
  }

  @Test
  void theShopPaysNoCharges() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,shop,1/2");
    var bill = bill("c,C,head,1.00,,,,,,,,,,,");
    assertEquals(cents(50), bill.net("ann"));
    assertEquals(List.of(), bill.linesOf("shop"));
    scene.file("shares.csv", "body,customer,share").file("bodies.csv", "body,species", "B1,beef");
    assertEquals(Bill.NONE, bill("c,C,head,1.00,,,,,,,,,,,"));
  }

  @Test
  void aFurtherDayCostsWhatTheChargesPerDaySay() {
    bill("d,Days,day,2.50,,3,,,,,,,10,,", "h,H,head,100,,,,,,,,,,,");
    var night = night();
    var day = LocalDate.of(2026, 3, 5);
    assertEquals(Optional.of(cents(250)), new Billing(night.shop()).furtherDay(balance(), day));
  }

  @Test
  void whatAFurtherDayCostsIsUnknownWithoutDaysHung() {
    scene.file("bodies.csv", "body,species,customer", "B1,beef,ann");
    bill("d,Days,day,2.50,,,,,,,,,,,");
    var night = night();
    var day = LocalDate.of(2026, 3, 5);
    assertEquals(Optional.empty(), new Billing(night.shop()).furtherDay(balance(), day));
  }

  @Test
  void whatIsDueIsChargesAndTaxLessPayments() {
    var money = new CustomerMoney(cents(1000), cents(100), cents(1150));
    assertEquals(cents(1100), money.total());
    assertEquals(cents(-50), money.due());
  }

  @Test
  void paymentsCountUpToTheDayOfTheNightForTheirCustomerAndBody() {
    scene.file(
        "payments.csv",
        "customer,body,date,amount",
        "ann,B1,2026-03-20,30.00",
        "ann,B1,2026-03-21,40.00",
        "bob,B1,2026-03-01,50.00",
        "ann,B2,2026-03-01,60.00");
    bill("h,H,head,100,,,,,,,,,10,,");
    var night = night();
    assertEquals(
        new CustomerMoney(cents(10000), cents(1000), cents(3000)),
        night.money(night.bodies().get("B1"), "ann"));
  }

  @Test
  void aMinimumIsChargedForATubThatIsLighter() {
    scene.weigh("05T11:00 B1 tub trim 8 batch=M1");
    assertEquals(BigFraction.of(10), quantity("c,C,tub,1,10,,,,,,,,,,"));
    assertEquals(BigFraction.of(8), quantity("c,C,tub,1,7,,,,,,,,,,"));
  }

  @Test
  void aMinimumIsChargedThoughTheFreeQuantityLeavesNothing() {
    assertEquals(BigFraction.of(2), quantity("c,C,day,1,2,3,,,,,,,,,"));
    assertEquals(BigFraction.of(1), quantity("c,C,pack,1,1,5,,,,,,,,,"));
  }

  @Test
  void aMinimumIsChargedForNoDaysHung() {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-05,ann");
    assertEquals(BigFraction.of(2), quantity("c,C,day,1,2,,,,,,,,,,"));
  }

  @Test
  void onlyTheWeighingsOfAnItemAreCountedOnTheRailToo() {
    assertEquals(BigFraction.of(0), quantity("c,C,hot,1,,,,,hindquarter,,,,,,"));
    assertEquals(BigFraction.of(5), quantity("c,C,hot,1,5,,,,hindquarter,,,,,,"));
  }

  @Test
  void aWeightThatWasNotTakenIsAnUnknownQuantity() {
    scene.withoutWeighings().weigh("05T10:00 B1 pack rump 120");
    var bill = bill("h,H,hot,1,,,,,,,,,,,", "c,C,cold,1,,,,,,,,,,,", "b,B,boning,1,,,,,,,,,,,");
    assertEquals(List.of("h", "c", "b"), bill.unknown().stream().map(c -> c.id()).toList());
    assertEquals(List.of(), bill.lines());
  }

  @Test
  void aChargeOfAClassAppliesToBodiesOfThatClass() {
    scene.file("bodies.csv", "body,species,class,killed,customer", "B1,beef,steer,2026-03-02,ann");
    assertEquals(1, bill("c,C,head,1,,,,steer,,,,,,,").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,cow,,,,,,,").lines().size());
    assertEquals(1, bill("c,C,head,1,,,,,,,,,,,").lines().size());
  }

  @Test
  void aChargeOfAnotherBodyDoesNotApply() {
    scene.body("B2,beef,2026-03-02,ann");
    assertEquals(0, bill("c,C,head,1,,,,,,B2,,,,,").lines().size());
  }

  @Test
  void aBandOfAnUnknownHotWeightIsAnUnknownQuantity() {
    scene.withoutWeighings().weigh("05T10:00 B1 pack rump 120");
    var bill =
        bill(
            "from,F,head,1,,,,,,,300,,,,",
            "to,T,head,1,,,,,,,,300,,,",
            "both,B,head,1,,,,,,,100,300,,,",
            "none,N,head,1,,,,,,,,,,,");
    assertEquals(List.of("from", "to", "both"), bill.unknown().stream().map(c -> c.id()).toList());
    assertEquals("none", bill.lines().get(0).charge().id());
    assertEquals(1, bill.lines().size());
  }

  @Test
  void pricesAreNotThoseOfALaterWeighing() {
    scene.weigh("07T10:00 B1 bin waste 1");
    assertEquals(1, bill("c,C,head,1,,,,,,,,,,,2026-03-05").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,,,,,,,2026-03-06,").lines().size());
  }

  @Test
  void withoutAPackPricesAreThoseOfTheDayOfTheLastWeighing() {
    scene.withoutWeighings();
    scene.weigh("02T10:00 B1 hot carcase 300\n03T10:00 B1 cold carcase 294");
    assertEquals(1, bill("c,C,head,1,,,,,,,,,,2026-03-03,2026-03-03").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,,,,,,,2026-03-04,").lines().size());
    assertEquals(0, bill("c,C,head,1,,,,,,,,,,,2026-03-02").lines().size());
  }

  @Test
  void withoutWeighingsOnlyChargesOfEveryDayApply() {
    scene.withoutWeighings();
    var bill =
        bill(
            "always,A,head,1,,,,,,,,,,,",
            "from,F,head,1,,,,,,,,,,2026-03-01,",
            "to,T,head,1,,,,,,,,,,,2026-03-31");
    assertEquals(List.of("always"), bill.lines().stream().map(l -> l.charge().id()).toList());
  }

  @Test
  void taxIsRoundedHalfUpOnTheLine() {
    // 10 % of 0.05 and of 0.04
    assertEquals(cents(1), bill("c,C,head,0.05,,,,,,,,,10,,").tax("ann"));
    assertEquals(cents(0), bill("c,C,head,0.04,,,,,,,,,10,,").tax("ann"));
    assertEquals(cents(-1), bill("c,C,head,-0.05,,,,,,,,,10,,").tax("ann"));
  }

  @Test
  void anAmountIsRoundedHalfUpAndACreditAwayFromZero() {
    // 300 · 0.00005 is 0.015
    assertEquals(cents(2), bill("c,C,hot,0.00005,,,,,,,,,,,").net("ann"));
    assertEquals(cents(-2), bill("c,C,hot,-0.00005,,,,,,,,,,,").net("ann"));
  }

  @Test
  void aCreditIsDividedLikeACharge() {
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/3", "B1,bob,1/3", "B1,cat,1/3");
    var bill = bill("c,C,head,-1.00,,,,,,,,,,,");
    assertEquals(cents(-34), bill.net("ann"));
    assertEquals(cents(-33), bill.net("cat"));
  }

  @Test
  void includedTaxIsTakenOutOfEveryOwnersPart() {
    scene.set("tax_included=yes");
    scene.file("shares.csv", "body,customer,share", "B1,ann,1/2", "B1,bob,1/2");
    var bill = bill("c,C,share,11.00,,,,,,,,,10,,", "h,H,head,22.00,,,,,,,,,10,,");
    assertEquals(cents(2000), bill.net("bob"));
    assertEquals(cents(200), bill.tax("bob"));
  }

  @Test
  void aFurtherDayIsKnownThoughAnotherChargeIsNot() {
    scene.withoutWeighings().weigh("05T10:00 B1 pack rump 120");
    bill("d,Days,day,2.50,,,,,,,,,,,", "h,H,hot,1,,,,,,,,,,,");
    var night = night();
    var day = LocalDate.of(2026, 3, 5);
    assertEquals(Optional.of(cents(250)), new Billing(night.shop()).furtherDay(balance(), day));
  }

  @Test
  void aFurtherDayIsUnknownWhereTheBandOfADaysChargeIs() {
    scene.withoutWeighings().weigh("05T10:00 B1 pack rump 120");
    bill("d,Days,day,2.50,,,,,,,300,,,,");
    var night = night();
    var day = LocalDate.of(2026, 3, 5);
    assertEquals(Optional.empty(), new Billing(night.shop()).furtherDay(balance(), day));
  }

  @Test
  void whatIsAskedForABodyLeavesOutTheChargesOfItAlone() {
    bill("h,Kill,head,100,,,,,,,,,10,,", "x,Extra,head,5,,,,,,B1,,,,,");
    var day = LocalDate.of(2026, 3, 5);
    assertEquals(Optional.of(cents(10000)), new Billing(night().shop()).asked(balance(), day));
  }

  @Test
  void whatIsAskedForABodyIsUnknownWhereAQuantityIs() {
    scene.file("bodies.csv", "body,species,killed,customer", "B1,beef,2026-03-02,ann");
    bill("h,Kill,head,100,,,,,,,,,,,", "l,Live,live,1,,,,,,,,,,,");
    var day = LocalDate.of(2026, 3, 5);
    assertEquals(Optional.empty(), new Billing(night().shop()).asked(balance(), day));
    bill("h,Kill,head,100,,,,,,,,,,,", "l,Live,live,1,,,,,,B1,,,,,");
    assertEquals(Optional.of(cents(10000)), new Billing(night().shop()).asked(balance(), day));
  }

  @Test
  void salesAndCreditsAreApart() {
    var bill = bill("h,Kill,head,100,,,,,,,,,10,,", "s,Hide,head,-22,,,,,,,,,,,");
    assertEquals(cents(10000), bill.sales().net("ann"));
    assertEquals(cents(-2200), bill.credits().net("ann"));
    assertEquals(cents(7800), bill.net("ann"));
  }

  @Test
  void chargesAddUpByTheirRateOfTax() {
    var rates =
        bill(
                "h,Kill,head,100,,,,,,,,,10,,",
                "p,Packs,pack,1,,,,,,,,,10.0,,",
                "c,Cards,head,3,,,,,,,,,0,,",
                "n,Nothing,tub,3,,,,,,,,,5,,")
            .byRate("ann");
    assertEquals(List.of("0", "10"), rates.keySet().stream().map(r -> r.toPlainString()).toList());
    assertEquals(cents(300), rates.get(rates.firstKey()).net());
    assertEquals(cents(10200), rates.get(rates.lastKey()).net());
    assertEquals(cents(1020), rates.get(rates.lastKey()).tax());
  }

  @Test
  void thereAreNoRatesWhereNothingIsTaxed() {
    assertEquals(0, bill("h,Kill,head,100,,,,,,,,,,,").byRate("ann").size());
    assertEquals(0, bill("h,Kill,head,100,,,,,,,,,0,,").byRate("ann").size());
  }

  private List<Weighing> notCharged(String... charges) {
    scene.file("charges.csv", COLUMNS).add("charges.csv", charges);
    return new Billing(night().shop()).notCharged(balance());
  }

  private void tubs() {
    scene.weigh(
        """
        05T11:02 B1 tub trim 3
        05T11:01 B1 tub trim 4
        05T11:00 B1 tub trim 8 batch=M1
        """);
  }

  @Test
  void tubsWithoutABatchMissAChargeByGreenWeightEarliestFirst() {
    tubs();
    var missed = notCharged("c,C,tub,1,,,,,,,,,,,", "d,D,tub,2,,,,,trim,,,,,,");
    assertEquals(List.of(kg("4"), kg("3")), missed.stream().map(Weighing::net).toList());
  }

  @Test
  void tubsMissNoChargeThatDoesNotCountThem() {
    tubs();
    assertEquals(List.of(), notCharged("c,C,packed,1,,,,,,,,,,,"));
    assertEquals(List.of(), notCharged("c,C,tub,1,,,,,rump,,,,,,"));
    assertEquals(List.of(), notCharged("c,C,tub,1,,,lamb,,,,,,,,"));
  }

  @Test
  void tubsOfTheShopsOwnBodyMissNoCharge() {
    tubs();
    scene.file("bodies.csv", "body,species,killed", "B1,beef,2026-03-02");
    assertEquals(List.of(), notCharged("c,C,tub,1,,,,,,,,,,,"));
  }

  @Test
  void workThatCostsNothingIsNoCredit() {
    var bill = bill("h,Kill,head,0,,,,,,,,,,,");
    assertEquals(1, bill.sales().lines().size());
    assertEquals(List.of(), bill.credits().lines());
  }

  @Test
  void anOwnersPartIsChargeAndTaxTogether() {
    var line = bill("h,Kill,head,100,,,,,,,,,10,,").lines().get(0);
    assertEquals(cents(11000), line.parts().get("ann").total());
  }
}
