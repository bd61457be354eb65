package gambrel.pages.statement;

import gambrel.pages.views.ChargesView;
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
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** The charges, and below them tax, total, payments and the amount due. */
final class ChargesPart extends StatementPart {
  private static final int QUANTITY_DECIMALS = 3;

  private final CustomerMoney money;
  private final List<ChargesView.Sum> sums = new ArrayList<>();

  private ChargesPart(StatementContext subject) {
    super(subject);
    this.money = subject.money();
  }

  /** The table; empty for a customer without a share, or if it would have no line. */
  static Optional<ChargesView> of(StatementContext subject) {
    if (subject.isOutrightOnly()) {
      return Optional.empty();
    }
    var view = new ChargesPart(subject).view();
    return view.rows().isEmpty() && view.sums().size() < 2 && view.notes().isEmpty()
        ? Optional.empty()
        : Optional.of(view);
  }

  /** The shop's name for its tax. */
  static String taxName(StatementContext subject) {
    String name = subject.settings().taxName();
    return name.isEmpty() ? subject.wording().say("charges.tax.unnamed") : name;
  }

  /** A sentence that names the charges with unknown quantity; empty if there are none. */
  static Optional<String> unknown(StatementContext subject) {
    var unknown = subject.account().bill().unknown();
    var names = unknown.stream().map(Charge::description).collect(Collectors.joining(", "));
    return unknown.isEmpty()
        ? Optional.empty()
        : Optional.of(subject.wording().say("charges.unknown", names));
  }

  private ChargesView view() {
    var lines =
        subject.account().bill().linesOf(subject.customer()).stream()
            .filter(line -> !line.amount().equals(Money.ZERO))
            .toList();
    boolean shared = subject.isSharer();
    var notes = new ArrayList<String>();
    if (shared && !lines.isEmpty()) {
      notes.add(say("charges.part"));
    }
    unknown(subject).ifPresent(notes::add);
    return new ChargesView(
        shared ? say("charges.yours", subject.share(), formats.currency()) : formats.currency(),
        shared ? say("charges.in_all") : "",
        lines.stream().map(this::row).toList(),
        sums(),
        notes);
  }

  private ChargesView.Row row(Bill.Line line) {
    var part = line.parts().get(subject.customer());
    boolean whole = subject.isSharer() && line.charge().basis() != Charge.Basis.SHARE;
    boolean included = subject.settings().taxIncluded();
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
    return switch (basis) {
      case LIVE, HOT, COLD, BONING, TUB, PACKED ->
          say("charges.quantity.weight", number, formats.unit());
      case HEAD, PACK, DAY, SHARE ->
          wording.count("charges.quantity." + basis.name().toLowerCase(Locale.ROOT), form, number);
    };
  }

  private String number(BigFraction quantity) {
    return formats.quantity(quantity, QUANTITY_DECIMALS);
  }

  /** Tax, total, payments and the amount due. */
  private List<ChargesView.Sum> sums() {
    boolean included = subject.settings().taxIncluded();
    var rates = taxByRate();
    if (!included && !rates.isEmpty()) {
      add(say("charges.net"), money.net());
      rates.forEach((rate, tax) -> add(taxLabel(rate), tax));
    }
    var payments = payments();
    if (!rates.isEmpty() || !payments.isEmpty()) {
      add(say("charges.total"), money.total());
    }
    if (included) {
      rates.forEach((rate, tax) -> add(say("charges.tax.included", taxLabel(rate)), tax));
    }
    for (var payment : payments) {
      String date = formats.date(payment.date());
      add(say("charges.paid", date), Money.ZERO.minus(payment.amount()));
    }
    due();
    return sums;
  }

  private void due() {
    boolean credit = money.due().compareTo(Money.ZERO) < 0;
    var amount = credit ? Money.ZERO.minus(money.due()) : money.due();
    sums.add(
        new ChargesView.Sum(
            say(credit ? "charges.credit" : "charges.due"), formats.bareMoney(amount), true));
  }

  private void add(String label, Money amount) {
    sums.add(new ChargesView.Sum(label, formats.bareMoney(amount), false));
  }

  private String taxLabel(BigDecimal rate) {
    return say("charges.tax", taxName(subject), formats.percent(rate));
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
