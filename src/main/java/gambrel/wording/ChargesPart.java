package gambrel.wording;

import gambrel.charge.Bill;
import gambrel.measure.Money;
import gambrel.shop.Charge;
import gambrel.statement.ChargesView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is charged and what is left to pay. */
final class ChargesPart {
  private final Subject subject;
  private final Wording wording;
  private final Formats formats;
  private final boolean included;

  private ChargesPart(Subject subject) {
    this.subject = subject;
    this.wording = subject.wording();
    this.formats = subject.formats();
    this.included = subject.settings().taxIncluded();
  }

  /** Empty for whoever has no share, and where there is nothing to show. */
  static Optional<ChargesView> of(Subject subject) {
    if (subject.isOutrightOnly()) {
      return Optional.empty();
    }
    var part = new ChargesPart(subject);
    var view = part.view();
    return view.rows().isEmpty() && view.sums().size() < 2 && view.notes().isEmpty()
        ? Optional.empty()
        : Optional.of(view);
  }

  /** What the shop calls its tax. */
  static String taxName(Subject subject) {
    String name = subject.settings().taxName();
    return name.isEmpty() ? subject.wording().say("charges.tax.unnamed") : name;
  }

  private ChargesView view() {
    var lines =
        subject.account().bill().linesOf(subject.customer()).stream()
            .filter(line -> !line.amount().equals(Money.ZERO))
            .toList();
    boolean shared = subject.isSharer();
    return new ChargesView(
        shared
            ? wording.say("charges.yours", subject.share(), formats.currency())
            : formats.currency(),
        shared ? wording.say("charges.in_all") : "",
        lines.stream().map(this::row).toList(),
        new ChargeSums(subject).sums(),
        notes(shared && !lines.isEmpty()));
  }

  private ChargesView.Row row(Bill.Line line) {
    var part = line.parts().get(subject.customer());
    boolean whole = subject.isSharer() && line.charge().basis() != Charge.Basis.SHARE;
    return new ChargesView.Row(
        line.charge().description(),
        ChargeQuantity.of(line, subject),
        formats.price(line.charge().price()),
        whole ? formats.bareMoney(line.amount()) : "",
        formats.bareMoney(included ? part.net().plus(part.tax()) : part.net()));
  }

  private List<String> notes(boolean divided) {
    var notes = new ArrayList<String>();
    if (divided) {
      notes.add(wording.say("charges.part"));
    }
    var unknown = subject.account().bill().unknown();
    if (!unknown.isEmpty()) {
      notes.add(
          wording.say(
              "charges.unknown",
              unknown.stream().map(Charge::description).collect(Collectors.joining(", "))));
    }
    return notes;
  }
}
