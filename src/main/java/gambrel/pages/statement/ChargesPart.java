package gambrel.pages.statement;

import gambrel.pages.views.ChargesView;
import gambrel.pages.words.Formats;
import gambrel.pages.words.Wording;
import gambrel.trade.account.Bill;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Money;
import gambrel.trade.shop.Charge;
import java.util.ArrayList;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What is charged and what is left to pay. */
final class ChargesPart {
  private static final int QUANTITY_DECIMALS = 3;

  private final StatementContext subject;
  private final Wording wording;
  private final Formats formats;

  private ChargesPart(StatementContext subject) {
    this.subject = subject;
    this.wording = subject.wording();
    this.formats = subject.formats();
  }

  /** Empty for a customer without a share, and where there is nothing to show. */
  static Optional<ChargesView> of(StatementContext subject) {
    if (subject.isOutrightOnly()) {
      return Optional.empty();
    }
    var view = new ChargesPart(subject).view();
    return view.rows().isEmpty() && view.sums().size() < 2 && view.notes().isEmpty()
        ? Optional.empty()
        : Optional.of(view);
  }

  /** What the shop calls its tax. */
  static String taxName(StatementContext subject) {
    String name = subject.settings().taxName();
    return name.isEmpty() ? subject.wording().say("charges.tax.unnamed") : name;
  }

  /** Which charges cannot be worked out yet; empty if none. */
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
      notes.add(wording.say("charges.part"));
    }
    unknown(subject).ifPresent(notes::add);
    return new ChargesView(
        shared
            ? wording.say("charges.yours", subject.share(), formats.currency())
            : formats.currency(),
        shared ? wording.say("charges.in_all") : "",
        lines.stream().map(this::row).toList(),
        new ChargeSums(subject).sums(),
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

  /** What a charge counts, with its unit, and whether some is free or it is the least charged. */
  private String quantity(Bill.Line line) {
    var charge = line.charge();
    String quantity = counted(charge.basis(), line.quantity());
    boolean least =
        charge.minimum().signum() > 0 && line.quantity().equals(Exact.fraction(charge.minimum()));
    if (least) {
      return wording.say("charges.minimum", quantity);
    }
    return charge.free().signum() > 0
        ? wording.say("charges.free", quantity, number(Exact.fraction(charge.free())))
        : quantity;
  }

  private String counted(Charge.Basis basis, BigFraction quantity) {
    String number = number(quantity);
    long form = quantity.equals(BigFraction.ONE) ? 1 : 2;
    return switch (basis) {
      case LIVE, HOT, COLD, BONING, TUB, PACKED ->
          wording.say("charges.quantity.weight", number, formats.unit());
      case HEAD, PACK, DAY, SHARE ->
          wording.count("charges.quantity." + basis.name().toLowerCase(Locale.ROOT), form, number);
    };
  }

  private String number(BigFraction quantity) {
    return formats.quantity(quantity, QUANTITY_DECIMALS);
  }
}
