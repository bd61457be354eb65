package gambrel.pages.explain;

import gambrel.trade.account.Bill;
import gambrel.trade.account.Entitlement;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;

/** Explains what one customer gets of a body, and what it costs. */
record CustomerExplanation(Night night, BodyAccount account, Lines lines, String customer) {
  void add() {
    var own = account.entitlements().get(customer);
    lines.heading("Customer %s, share %s%s".formatted(customer, own.share(), shareSource(own)));
    lines.figure("take home", own.takeHome(), "the lines below without offal");
    for (var line : own.lines()) {
      lines.figure(
          line.item(),
          line.weight(),
          "outright " + line.outright() + ", the rest by share",
          account.balance().weighings().of(Step.PACK, pack -> isIn(line, pack)));
    }
    for (var part : own.batchParts()) {
      lines.figure("batch " + part.batch(), part.weight(), "share of the body's part");
    }
    if (!own.isOutrightOnly()) {
      account.bill().linesOf(customer).forEach(this::charge);
      money();
    }
  }

  private boolean isIn(Entitlement.Line line, Weighing pack) {
    return pack.item().equals(line.item())
        && (pack.customer().isEmpty() || pack.customer().equals(customer));
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
        decimal(line.parts().get(customer).net()),
        "charges.csv: %s %s x %s = %s for the whole body, tax in it or on it %s"
            .formatted(
                charge.basis().id(),
                Exact.round(line.quantity(), 3),
                charge.price(),
                decimal(line.amount()),
                decimal(line.tax())));
  }

  private void money() {
    var money = night.money(account, customer);
    lines.figure("charges", decimal(money.net()), "without tax");
    lines.figure("tax", decimal(money.tax()), "");
    lines.figure("paid", decimal(money.paid()), "payments.csv, those that name customer and body");
    for (var payment : night.payments(customer, account.body().id())) {
      lines.text(
          "  payment of %s  %s  %s"
              .formatted(payment.date(), decimal(payment.amount()), payment.note())
              .stripTrailing());
    }
    lines.figure("due", decimal(money.due()), "charges + tax - paid");
  }

  private String decimal(Money amount) {
    return amount.decimal(night.shop().settings().currency()).toPlainString();
  }
}
