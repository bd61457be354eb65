package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.pages.views.ChargesView;
import gambrel.trade.account.Bill;
import gambrel.trade.account.CustomerAccount;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Charge;
import gambrel.trade.shop.Payment;
import gambrel.trade.shop.Step;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** What the customer owes: the answer, and the table of charges, tax and payments. */
final class ChargesPart extends StatementPart {
  private static final int QUANTITY_DECIMALS = 3;

  private final CustomerMoney money = night.money(account, own.customer());
  private final Bill bill = account.bill();
  private final boolean included = settings.taxIncluded();

  ChargesPart(StatementPart statement) {
    super(statement);
  }

  /**
   * The key of the title that the region's tax office asks for: that of an invoice if the shop has
   * a tax number and charges tax.
   */
  String title() {
    boolean taxed = bill.sales().tax(own.customer()).compareTo(Money.ZERO) > 0;
    boolean invoice = taxed && !held && !settings.terms().taxNumber().isEmpty();
    String key = "statement.invoice." + settings.region().id();
    return invoice && wording.words().has(key) ? key : "statement.kind";
  }

  /** Answers "What do I owe?": how much, by when, and how to pay it. */
  Answer owed() {
    if (own.isOutrightOnly()) {
      return answer("owe.question", say("owe.free.lead"), List.of(say("owe.outright")));
    }
    return answer("owe.question", due(), explained());
  }

  private String due() {
    if (held) {
      return say("owe.held.lead");
    }
    int sign = money.due().compareTo(Money.ZERO);
    if (isPayable()) {
      String due = formats.money(money.due());
      return payBy()
          .map(day -> say("owe.by.lead", due, day))
          .orElseGet(() -> say("owe.due.lead", due));
    }
    if (sign > 0) {
      return say("owe.covered.lead");
    }
    if (sign < 0) {
      return say("owe.credit.lead", formats.money(Money.ZERO.minus(money.due())));
    }
    return say(money.total().equals(Money.ZERO) ? "owe.free.lead" : "owe.paid.lead");
  }

  /** Whether anything of it is still to be paid when other payments are counted too. */
  private boolean isPayable() {
    return !held
        && money.due().compareTo(Money.ZERO) > 0
        && planned.owed().filter(all -> all.due().compareTo(Money.ZERO) <= 0).isEmpty();
  }

  /** The day by which it is to be paid; empty if nothing is due or the shop sets no time. */
  private Optional<String> payBy() {
    var issued = night.asOf().toLocalDate();
    var days = settings.terms().payByDays().filter(some -> isPayable());
    return days.map(some -> formats.date(issued.plusDays(some)));
  }

  private List<String> explained() {
    var lines = new ArrayList<String>();
    howToPay().ifPresent(lines::add);
    if (!money.paid().equals(Money.ZERO)) {
      lines.add(say("owe.payments", formats.money(money.paid())));
    }
    if (isSharer() && !bill.linesOf(own.customer()).isEmpty() && body.sharesAddUp()) {
      lines.add(say("owe.part", yours()));
    }
    unknown().ifPresent(lines::add);
    elsewhere().ifPresent(lines::add);
    return lines;
  }

  /** What is owed in all, with the customer's other statements and payments; empty if nothing. */
  private Optional<String> elsewhere() {
    return planned
        .owed()
        .filter(all -> !held && !all.due().equals(money.due()))
        .map(
            all -> {
              boolean credit = all.due().compareTo(Money.ZERO) < 0;
              var sum = credit ? Money.ZERO.minus(all.due()) : all.due();
              if (!credit && money.due().equals(Money.ZERO) && all.other().equals(Money.ZERO)) {
                var owing = all.without(body.id()).stream().map(other -> other.money().due());
                long number = owing.filter(due -> !due.equals(Money.ZERO)).count();
                return wording.counted("owe.only", number, formats.money(sum));
              }
              return say(credit ? "owe.all.credit" : "owe.all", others(all), formats.money(sum));
            });
  }

  /** The other statements and payments with their sums. */
  private String others(CustomerAccount all) {
    var others = all.without(body.id());
    var due = Money.sum(others.stream().map(statement -> statement.money().due()));
    var parts = new ArrayList<String>();
    if (!due.equals(Money.ZERO)) {
      parts.add(wording.counted("owe.others", others.size(), formats.money(due)));
    }
    if (!all.other().equals(Money.ZERO)) {
      parts.add(say("owe.others.paid", formats.money(Money.ZERO.minus(all.other()))));
    }
    return String.join(", ", parts);
  }

  /** How to pay, with the number of the statement as the reference; empty if nothing is due. */
  private Optional<String> howToPay() {
    String payTo = oneLine(settings.terms().payTo());
    return isPayable() && !payTo.isEmpty()
        ? Optional.of(
            planned
                .number()
                .map(number -> say("pay.reference", payTo, String.valueOf(number)))
                .orElseGet(() -> say("pay.to", payTo)))
        : Optional.empty();
  }

  /** The shop's name for its tax. */
  private String taxName() {
    return settings.taxName().isEmpty() ? say("charges.tax.unnamed") : settings.taxName();
  }

  /** A sentence that names the charges with unknown quantity; empty if there are none. */
  private Optional<String> unknown() {
    var unknown = bill.unknown();
    var names = unknown.stream().map(Charge::description).collect(Collectors.joining(", "));
    return unknown.isEmpty() ? Optional.empty() : Optional.of(say("charges.unknown", names));
  }

  /** The table; empty for a customer without a share, or if it would have no line. */
  Optional<ChargesView> table() {
    var lines = bill.printedLinesOf(own.customer());
    var settling = settling();
    if (own.isOutrightOnly() || lines.isEmpty() && settling.size() < 2) {
      return Optional.empty();
    }
    var notes = new ArrayList<String>();
    if (isSharer() && !lines.isEmpty()) {
      boolean isEach = lines.stream().anyMatch(line -> line.charge().basis() == Charge.Basis.SHARE);
      notes.add(say("charges.part") + (isEach ? " " + say("charges.part.each") : ""));
    }
    packs().ifPresent(notes::add);
    green(lines).ifPresent(notes::add);
    var sections =
        Stream.of(
                section("", bill.sales()),
                section(say("charges.bought"), bill.credits()),
                new ChargesView.Section("", List.of(), settling))
            .filter(section -> !section.rows().isEmpty() || !section.sums().isEmpty())
            .toList();
    String currency = formats.currency();
    return Optional.of(
        new ChargesView(
            isSharer() ? say("charges.yours", formats.opening(yours()), currency) : currency,
            isSharer() ? say("charges.in_all") : "",
            sections,
            notes));
  }

  /** Charges with their sum and tax; without them if there is neither tax nor anything else. */
  private ChargesView.Section section(String title, Bill bill) {
    var rows = bill.printedLinesOf(own.customer()).stream().map(this::row).toList();
    var rates = bill.byRate(own.customer());
    var sums = new ArrayList<ChargesView.Sum>();
    if (!included && !rates.isEmpty()) {
      sums.add(sum(say("charges.net"), bill.net(own.customer())));
      rates.forEach((rate, part) -> sums.add(sum(taxLabel(rate, part), part.tax())));
    }
    if (rows.size() > 1 || !included && !rates.isEmpty()) {
      sums.add(sum(say("charges.total"), total(bill)));
    }
    if (included) {
      rates.forEach(
          (rate, part) ->
              sums.add(sum(say("charges.tax.included", taxLabel(rate, part)), part.tax())));
    }
    return new ChargesView.Section(title, rows, rows.isEmpty() ? List.of() : sums);
  }

  private Money total(Bill bill) {
    return bill.net(own.customer()).plus(bill.tax(own.customer()));
  }

  private String taxLabel(BigDecimal rate, Bill.Part part) {
    String key = isSharer() ? "charges.tax.shared" : "charges.tax";
    return say(key, taxName(), formats.percent(rate), formats.bareMoney(part.net()));
  }

  /** Payments and the amount due. */
  private List<ChargesView.Sum> settling() {
    var sums = new ArrayList<ChargesView.Sum>();
    night.payments(own.customer(), body.id()).stream()
        .sorted(Comparator.comparing(Payment::date))
        .map(p -> sum(say("charges.paid", formats.date(p.date())), Money.ZERO.minus(p.amount())))
        .forEach(sums::add);
    int sign = held ? 0 : money.due().compareTo(Money.ZERO);
    var due = sign < 0 ? Money.ZERO.minus(money.due()) : money.due();
    String open = held ? "held" : sign > 0 && !isPayable() ? "covered" : "left";
    String label = say("charges.due." + (sign < 0 ? "credit" : open));
    var name = payBy().map(day -> say("charges.due.by", day)).orElse(label);
    sums.add(new ChargesView.Sum(name, formats.bareMoney(due), true));
    return sums;
  }

  private ChargesView.Sum sum(String label, Money amount) {
    return new ChargesView.Sum(label, formats.bareMoney(amount), false);
  }

  /** Why packs that are charged by number are not as many as those in the boxes. */
  private Optional<String> packs() {
    boolean charged =
        bill.printedLinesOf(own.customer()).stream()
            .anyMatch(l -> l.charge().basis() == Charge.Basis.PACK && l.charge().item().isEmpty());
    if (!charged) {
      return Optional.empty();
    }
    String batches =
        batchMeat().stream().map(BatchMeat::name).distinct().collect(Collectors.joining(", "));
    var others =
        weighings.of(
            Step.PACK, w -> !w.customer().isEmpty() && !w.customer().equals(own.customer()));
    var sentences = new ArrayList<String>();
    if (!batches.isEmpty()) {
      sentences.add(say("charges.packs.batches", batches));
    }
    if (!others.isEmpty()) {
      sentences.add(wording.counted("charges.packs.others", others.size()));
    }
    return sentences.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", sentences));
  }

  /** Says of charges by green weight what they count: it is another weight than that packed. */
  private Optional<String> green(List<Bill.Line> lines) {
    var names =
        lines.stream()
            .map(Bill.Line::charge)
            .filter(charge -> charge.basis() == Charge.Basis.TUB)
            .map(Charge::description)
            .collect(Collectors.joining(", "));
    return names.isEmpty() ? Optional.empty() : Optional.of(say("charges.green", names));
  }

  private ChargesView.Row row(Bill.Line line) {
    var part = line.parts().get(own.customer());
    boolean whole = isSharer() && line.charge().basis() != Charge.Basis.SHARE;
    return new ChargesView.Row(
        description(line),
        quantity(line),
        formats.price(line.charge().price()),
        whole ? formats.bareMoney(line.amount()) : "",
        formats.bareMoney(included ? part.total() : part.net()));
  }

  /** A charge's text; with the rate of its tax if the statement has several. */
  private String description(Bill.Line line) {
    String text = line.charge().description();
    return bill.byRate(own.customer()).size() < 2
        ? text
        : say("charges.rated", text, taxName(), formats.percent(line.charge().taxPercent()));
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
}
