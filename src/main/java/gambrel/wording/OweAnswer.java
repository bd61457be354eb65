package gambrel.wording;

import gambrel.charge.CustomerMoney;
import gambrel.measure.Money;
import gambrel.statement.Answer;
import java.util.ArrayList;
import java.util.List;

/** What do I owe? */
final class OweAnswer {

  private OweAnswer() {}

  static Answer of(Subject subject) {
    var wording = subject.wording();
    var lines = new ArrayList<String>();
    String lead;
    if (subject.isOutrightOnly()) {
      lead = wording.say("owe.free.lead");
      lines.add(wording.say("owe.outright"));
    } else {
      var account = subject.money();
      lead = lead(account, subject);
      lines.addAll(lines(account, subject));
    }
    return new Answer("owe", wording.say("owe.question"), lead, lines, List.of());
  }

  private static String lead(CustomerMoney money, Subject subject) {
    var wording = subject.wording();
    int sign = money.due().compareTo(Money.ZERO);
    if (sign > 0) {
      return wording.say("owe.due.lead", subject.formats().money(money.due()));
    }
    if (sign < 0) {
      return wording.say("owe.credit.lead", subject.formats().money(Money.ZERO.minus(money.due())));
    }
    return wording.say(money.total().equals(Money.ZERO) ? "owe.free.lead" : "owe.paid.lead");
  }

  private static List<String> lines(CustomerMoney money, Subject subject) {
    var wording = subject.wording();
    var formats = subject.formats();
    var lines = new ArrayList<String>();
    if (!subject.account().bill().linesOf(subject.customer()).isEmpty()) {
      lines.add(charges(money, subject));
    }
    if (!subject.account().bill().unknown().isEmpty()) {
      lines.add(ChargesPart.unknown(subject));
    }
    if (!money.paid().equals(Money.ZERO)) {
      lines.add(wording.say("owe.payments", formats.money(money.paid())));
    }
    if (subject.isSharer() && !lines.isEmpty()) {
      lines.add(wording.say("owe.part", subject.share()));
    }
    return lines;
  }

  private static String charges(CustomerMoney money, Subject subject) {
    var wording = subject.wording();
    var formats = subject.formats();
    String tax = formats.money(money.tax());
    String name = ChargesPart.taxName(subject);
    if (money.tax().equals(Money.ZERO)) {
      return wording.say("owe.charges", formats.money(money.total()));
    }
    return subject.settings().taxIncluded()
        ? wording.say("owe.charges.included", formats.money(money.total()), tax, name)
        : wording.say("owe.charges.tax", formats.money(money.net()), name, tax);
  }
}
