package gambrel.pages.explain;

import gambrel.trade.account.Bill;
import gambrel.trade.account.Entitlement;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.Optional;

/** Explains what one customer gets of a body, and what it costs. */
final class CustomerExplanation {
  private final Night night;
  private final BodyAccount account;
  private final Lines lines;
  private final String customer;
  private final Currency currency;

  CustomerExplanation(Night night, BodyAccount account, Lines lines, String customer) {
    this.night = night;
    this.account = account;
    this.lines = lines;
    this.customer = customer;
    this.currency = night.shop().settings().currency();
  }

  void add() {
    var own = account.entitlements().get(customer);
    lines.heading("Customer %s, share %s%s".formatted(customer, own.share(), shareSource(own)));
    lines.weight("take home", Optional.of(own.takeHome()), "the lines below without offal");
    for (var line : own.lines()) {
      lines.weight(
          line.item(),
          Optional.of(line.weight()),
          "outright " + line.outright() + ", the rest by share");
      lines.weighings(
          account.balance().weighings().of(Step.PACK).stream()
              .filter(w -> w.item().equals(line.item()))
              .filter(w -> w.customer().isEmpty() || w.customer().equals(customer)));
    }
    for (var part : own.batchParts()) {
      lines.weight("batch " + part.batch(), Optional.of(part.weight()), "share of the body's part");
    }
    if (!own.isOutrightOnly()) {
      account.bill().linesOf(customer).forEach(this::charge);
      money();
    }
  }

  private String shareSource(Entitlement own) {
    if (own.isOutrightOnly()) {
      return " (packs weighed with this customer only)";
    }
    return account.body().shares().isEmpty() ? "  bodies.csv" : "  shares.csv";
  }

  private void charge(Bill.Line line) {
    var charge = line.charge();
    lines.figure(
        "charge " + charge.id(),
        money(line.parts().get(customer).net()),
        "charges.csv: %s %s x %s = %s for the whole body, tax in it or on it %s"
            .formatted(
                charge.basis().name().toLowerCase(Locale.ROOT),
                Exact.round(line.quantity(), 3),
                charge.price(),
                line.amount().decimal(currency),
                line.tax().decimal(currency)));
  }

  private void money() {
    var money = night.money(account, customer);
    lines.figure("charges", money(money.net()), "without tax");
    lines.figure("tax", money(money.tax()), "");
    lines.figure("paid", money(money.paid()), "payments.csv, those that name customer and body");
    for (var payment : night.payments(customer, account.body().id())) {
      lines.text(
          "  payment of %s  %s  %s"
              .formatted(
                  payment.date(),
                  payment.amount().decimal(currency).toPlainString(),
                  payment.note())
              .stripTrailing());
    }
    lines.figure("due", money(money.due()), "charges + tax - paid");
  }

  private Optional<BigDecimal> money(Money amount) {
    return Optional.of(amount.decimal(currency));
  }
}
