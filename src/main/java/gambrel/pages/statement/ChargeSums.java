package gambrel.pages.statement;

import gambrel.pages.views.ChargesView;
import gambrel.pages.words.Wording;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Payment;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Tax, total, payments and what is left, under the charges. */
final class ChargeSums {
  private final StatementContext subject;
  private final Wording wording;
  private final CustomerMoney money;
  private final List<ChargesView.Sum> sums = new ArrayList<>();

  ChargeSums(StatementContext subject) {
    this.subject = subject;
    this.wording = subject.wording();
    this.money = subject.money();
  }

  List<ChargesView.Sum> sums() {
    boolean included = subject.settings().taxIncluded();
    var rates = taxByRate();
    if (!included && !rates.isEmpty()) {
      add(wording.say("charges.net"), money.net());
      rates.forEach((rate, tax) -> add(label(rate), tax));
    }
    var payments = payments();
    if (!rates.isEmpty() || !payments.isEmpty()) {
      add(wording.say("charges.total"), money.total());
    }
    if (included) {
      rates.forEach((rate, tax) -> add(wording.say("charges.tax.included", label(rate)), tax));
    }
    for (var payment : payments) {
      String date = subject.formats().date(payment.date());
      add(wording.say("charges.paid", date), Money.ZERO.minus(payment.amount()));
    }
    due();
    return sums;
  }

  private void due() {
    boolean credit = money.due().compareTo(Money.ZERO) < 0;
    var amount = credit ? Money.ZERO.minus(money.due()) : money.due();
    sums.add(
        new ChargesView.Sum(
            wording.say(credit ? "charges.credit" : "charges.due"),
            subject.formats().bareMoney(amount),
            true));
  }

  private void add(String label, Money amount) {
    sums.add(new ChargesView.Sum(label, subject.formats().bareMoney(amount), false));
  }

  private String label(BigDecimal rate) {
    return wording.say(
        "charges.tax", ChargesPart.taxName(subject), subject.formats().percent(rate));
  }

  private TreeMap<BigDecimal, Money> taxByRate() {
    var rates = new TreeMap<BigDecimal, Money>();
    for (var line : subject.account().bill().linesOf(subject.customer())) {
      var rate = line.charge().taxPercent().stripTrailingZeros();
      if (rate.signum() != 0) {
        rates.merge(rate, line.parts().get(subject.customer()).tax(), Money::plus);
      }
    }
    return rates;
  }

  private List<Payment> payments() {
    return subject.night().payments(subject.customer(), subject.body().id()).stream()
        .sorted(Comparator.comparing(Payment::date))
        .toList();
  }
}
