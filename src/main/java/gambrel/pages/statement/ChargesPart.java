package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.pages.views.ChargesView;
import gambrel.pages.views.Fact;
import gambrel.trade.account.Bill;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Charge;
import gambrel.trade.shop.Payment;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What the customer owes: the answer, and the table of charges, tax and payments. */
final class ChargesPart extends StatementPart {
  private static final int QUANTITY_DECIMALS = 3;

  private final CustomerMoney money = night.money(account, own.customer());
  private final List<Bill.Line> bill = account.bill().linesOf(own.customer());
  private final boolean included = settings.taxIncluded();

  ChargesPart(StatementPart statement) {
    super(statement);
  }

  /** Answers "What do I owe?". */
  Answer owed() {
    return own.isOutrightOnly()
        ? answer("owe.question", say("owe.free.lead"), List.of(say("owe.outright")))
        : answer("owe.question", due(), explained());
  }

  private String due() {
    if (held) {
      return say("owe.held.lead");
    }
    int sign = money.due().compareTo(Money.ZERO);
    if (sign > 0) {
      return say("owe.due.lead", formats.money(money.due()));
    }
    if (sign < 0) {
      return say("owe.credit.lead", formats.money(Money.ZERO.minus(money.due())));
    }
    return say(money.total().equals(Money.ZERO) ? "owe.free.lead" : "owe.paid.lead");
  }

  private List<String> explained() {
    var lines = new ArrayList<String>();
    if (!bill.isEmpty()) {
      lines.add(charged());
    }
    unknown().ifPresent(lines::add);
    if (!money.paid().equals(Money.ZERO)) {
      lines.add(say("owe.payments", formats.money(money.paid())));
    }
    if (isSharer() && !lines.isEmpty() && body.sharesAddUp()) {
      lines.add(say("owe.part", share()));
    }
    return lines;
  }

  private String charged() {
    String total = formats.money(money.total());
    String tax = formats.money(money.tax());
    if (money.tax().equals(Money.ZERO)) {
      return say("owe.charges", total);
    }
    return included
        ? say("owe.charges.included", total, tax, taxName())
        : say("owe.charges.tax", formats.money(money.net()), taxName(), tax);
  }

  /** The shop's name for its tax. */
  private String taxName() {
    return settings.taxName().isEmpty() ? say("charges.tax.unnamed") : settings.taxName();
  }

  /** A sentence that names the charges with unknown quantity; empty if there are none. */
  private Optional<String> unknown() {
    var unknown = account.bill().unknown();
    var names = unknown.stream().map(Charge::description).collect(Collectors.joining(", "));
    return unknown.isEmpty() ? Optional.empty() : Optional.of(say("charges.unknown", names));
  }

  /** The table; empty for a customer without a share, or if it would have no line. */
  Optional<ChargesView> table() {
    var lines = account.bill().printedLinesOf(own.customer());
    var sums = sums();
    var notes = new ArrayList<String>();
    if (isSharer() && !lines.isEmpty()) {
      notes.add(say("charges.part"));
    }
    unknown().ifPresent(notes::add);
    if (own.isOutrightOnly() || lines.isEmpty() && sums.size() < 2 && notes.isEmpty()) {
      return Optional.empty();
    }
    String currency = formats.currency();
    return Optional.of(
        new ChargesView(
            isSharer() ? say("charges.yours", share(), currency) : currency,
            isSharer() ? say("charges.in_all") : "",
            lines.stream().map(this::row).toList(),
            sums,
            held ? List.of() : paying(),
            notes));
  }

  /** The tax number and, if something is due, when and how to pay. */
  private List<Fact> paying() {
    var terms = settings.terms();
    var facts = new ArrayList<Fact>();
    if (!terms.taxNumber().isEmpty()) {
      boolean named = !terms.taxNumberName().isEmpty();
      String label = named ? terms.taxNumberName() : say("pay.tax_number");
      facts.add(new Fact(label, terms.taxNumber()));
    }
    if (money.due().compareTo(Money.ZERO) > 0) {
      var issued = night.asOf().toLocalDate();
      terms
          .payByDays()
          .ifPresent(days -> facts.add(fact("pay.by", formats.date(issued.plusDays(days)))));
      if (!terms.payTo().isEmpty()) {
        facts.add(fact("pay.to", oneLine(terms.payTo())));
      }
    }
    return facts;
  }

  private ChargesView.Row row(Bill.Line line) {
    var part = line.parts().get(own.customer());
    boolean whole = isSharer() && line.charge().basis() != Charge.Basis.SHARE;
    return new ChargesView.Row(
        line.charge().description(),
        quantity(line),
        formats.price(line.charge().price()),
        whole ? formats.bareMoney(line.amount()) : "",
        formats.bareMoney(included ? part.net().plus(part.tax()) : part.net()));
  }

  /** The charged quantity with its unit; says if it is the minimum or if some of it is free. */
  private String quantity(Bill.Line line) {
    var charge = line.charge();
    String quantity = counted(charge.basis(), line.quantity());
    boolean least =
        charge.minimum().signum() > 0 && line.quantity().equals(Exact.fraction(charge.minimum()));
    if (least) {
      return say("charges.minimum", quantity);
    }
    return charge.free().signum() > 0
        ? say("charges.free", quantity, number(Exact.fraction(charge.free())))
        : quantity;
  }

  private String counted(Charge.Basis basis, BigFraction quantity) {
    String number = number(quantity);
    long form = quantity.equals(BigFraction.ONE) ? 1 : 2;
    return basis.isWeight()
        ? say("charges.quantity.weight", number, formats.unit())
        : wording.count("charges.quantity." + basis.id(), form, number);
  }

  private String number(BigFraction quantity) {
    return formats.quantity(quantity, QUANTITY_DECIMALS);
  }

  /** Tax, total, payments and the amount due. */
  private List<ChargesView.Sum> sums() {
    var sums = new ArrayList<ChargesView.Sum>();
    var rates = taxByRate();
    if (!included && !rates.isEmpty()) {
      sums.add(sum(say("charges.net"), money.net()));
      rates.forEach((rate, tax) -> sums.add(sum(taxLabel(rate), tax)));
    }
    var payments = night.payments(own.customer(), body.id());
    if (!rates.isEmpty() || !payments.isEmpty()) {
      sums.add(sum(say("charges.total"), money.total()));
    }
    if (included) {
      rates.forEach((rate, tax) -> sums.add(sum(say("charges.tax.included", taxLabel(rate)), tax)));
    }
    payments.stream()
        .sorted(Comparator.comparing(Payment::date))
        .map(p -> sum(say("charges.paid", formats.date(p.date())), Money.ZERO.minus(p.amount())))
        .forEach(sums::add);
    boolean credit = !held && money.due().compareTo(Money.ZERO) < 0;
    var due = credit ? Money.ZERO.minus(money.due()) : money.due();
    String label = credit ? "charges.credit" : held ? "charges.due.held" : "charges.due";
    sums.add(new ChargesView.Sum(say(label), formats.bareMoney(due), true));
    return sums;
  }

  private ChargesView.Sum sum(String label, Money amount) {
    return new ChargesView.Sum(label, formats.bareMoney(amount), false);
  }

  private String taxLabel(BigDecimal rate) {
    return say("charges.tax", taxName(), formats.percent(rate));
  }

  private TreeMap<BigDecimal, Money> taxByRate() {
    var rates = new TreeMap<BigDecimal, Money>();
    for (var line : bill) {
      var rate = line.charge().taxPercent().stripTrailingZeros();
      if (rate.signum() != 0) {
        rates.merge(rate, line.parts().get(own.customer()).tax(), Money::plus);
      }
    }
    return rates;
  }
}
