package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.measure.Money;
import java.util.ArrayList;
import java.util.List;

/** Answers "What do I owe?". */
final class OweAnswer extends StatementPart {
  private final CustomerMoney money;

  private OweAnswer(StatementContext subject) {
    super(subject);
    this.money = subject.money();
  }

  static Answer of(StatementContext subject) {
    var wording = subject.wording();
    String question = wording.say("owe.question");
    if (subject.isOutrightOnly()) {
      var lines = List.of(wording.say("owe.outright"));
      return new Answer("owe", question, wording.say("owe.free.lead"), lines, List.of());
    }
    var owed = new OweAnswer(subject);
    return new Answer("owe", question, owed.lead(), owed.lines(), List.of());
  }

  private String lead() {
    int sign = money.due().compareTo(Money.ZERO);
    if (sign > 0) {
      return say("owe.due.lead", formats.money(money.due()));
    }
    if (sign < 0) {
      return say("owe.credit.lead", formats.money(Money.ZERO.minus(money.due())));
    }
    return say(money.total().equals(Money.ZERO) ? "owe.free.lead" : "owe.paid.lead");
  }

  private List<String> lines() {
    var lines = new ArrayList<String>();
    if (!subject.account().bill().linesOf(subject.customer()).isEmpty()) {
      lines.add(charges());
    }
    ChargesPart.unknown(subject).ifPresent(lines::add);
    if (!money.paid().equals(Money.ZERO)) {
      lines.add(say("owe.payments", formats.money(money.paid())));
    }
    if (subject.isSharer() && !lines.isEmpty()) {
      lines.add(say("owe.part", subject.share()));
    }
    return lines;
  }

  private String charges() {
    String total = formats.money(money.total());
    if (money.tax().equals(Money.ZERO)) {
      return say("owe.charges", total);
    }
    String tax = formats.money(money.tax());
    String name = ChargesPart.taxName(subject);
    return subject.settings().taxIncluded()
        ? say("owe.charges.included", total, tax, name)
        : say("owe.charges.tax", formats.money(money.net()), name, tax);
  }
}
