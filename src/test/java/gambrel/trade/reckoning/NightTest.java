package gambrel.trade.reckoning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.scenes.FiguresTest;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.account.Entitlement;
import gambrel.trade.decision.Decision;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Money;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a night says of a body: who has a part of it, what holds it, what it costs. */
class NightTest extends FiguresTest {

  @Test
  void theOwnerAndWhomAPackNamesHaveAPartOfABody() {
    scene.simpleBody().weigh("05T10:40 B1 pack rump 0.01 customer=bob");
    assertTrue(night().isOwner("ann", "B1"));
    assertTrue(night().isOwner("bob", "B1"));
    assertFalse(night().isOwner("cat", "B1"));
  }

  @Test
  void nobodyHasAPartOfACancelledBody() {
    scene.file(
        "bodies.csv", "body,species,killed,customer,outcome", "B1,beef,2026-03-02,ann,cancelled");
    assertFalse(night().isOwner("ann", "B1"));
  }

  @Test
  void nobodyHasAPartOfABodyThatIsNotListed() {
    assertFalse(night().isOwner("ann", "B2"));
  }

  @Test
  void aBodyHeldForAFurtherReasonIsHeldWithItsNoticeAndItsFigures() {
    scene.simpleBody().body("B2,beef,2026-03-02,ann");
    var night = night();
    var reason = new Reason(ReasonCode.SHARES, "");
    var holding = night.holding(Map.of("B1", List.of(reason)));
    var held = holding.bodies().get("B1");
    assertEquals(new Decision(State.HELD, List.of(reason), List.of()), held.decision());
    assertEquals(kg("200"), held.sum(Entitlement::takeHome));
    assertEquals(
        List.of("HELD B1"),
        holding.notices().stream().map(n -> n.code() + " " + n.body()).toList());
    assertEquals(State.ISSUED, night.bodies().get("B1").decision().state());
    assertEquals(State.OPEN, holding.bodies().get("B2").decision().state());
  }

  @Test
  void whatIsIssuedIsKeptUnderAWholeSecond() throws Exception {
    scene.set("zone=Australia/Sydney");
    var inputs = scene.read();
    var night =
        new Reckoner(inputs.shop(), inputs.exports())
            .at(OffsetDateTime.parse("2026-03-20T02:00:01.9Z"));
    assertEquals(LocalDateTime.parse("2026-03-20T13:00:01"), night.issueTime());
  }

  @Test
  void aCustomersMoneyIsHisChargesTheirTaxAndWhatHePaidForTheBody() {
    scene.simpleBody().body("B2,beef,2026-03-02,ann");
    scene.file("charges.csv", "charge,description,basis,price,tax_percent", "kill,Kill,head,50,10");
    scene.file(
        "payments.csv", "customer,body,date,amount", "ann,B1,2026-03-06,20", "ann,B2,2026-03-06,1");
    var night = night();
    var money = night.money(night.bodies().get("B1"), "ann");
    assertEquals(new CustomerMoney(new Money(5000), new Money(500), new Money(2000)), money);
    assertEquals(new Money(3500), money.due());
  }
}
