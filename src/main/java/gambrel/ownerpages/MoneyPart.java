package gambrel.ownerpages;

import gambrel.month.MonthBodies;
import gambrel.month.money.Debt;
import gambrel.measure.Money;
import gambrel.register.Register;
import gambrel.statement.Fact;
import gambrel.statement.MoneyChapter.Unpaid;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What statements came to, and what is still to be paid of them. */
final class MoneyPart {
  private static final int MOST_UNPAID = 24;

  private final Wording wording;
  private final Named named;
  private final List<Debt> ofMonth;
  private final List<Debt> unpaid;

  MoneyPart(MonthBodies month, Register register, Wording wording) {
    this.wording = wording;
    this.named = new Named(month.night(), wording);
    this.ofMonth = Debt.of(month, register);
    this.unpaid =
        Debt.until(month, register).stream()
            .filter(debt -> debt.due().compareTo(Money.ZERO) > 0)
            .toList();
  }

  /**
   * Statements of this month and before that are not paid in full, oldest first; of many, the last
   * ones in one line.
   */
  List<Unpaid> unpaid() {
    if (unpaid.size() <= MOST_UNPAID + 1) {
      return rows(unpaid);
    }
    var rows = new ArrayList<>(rows(unpaid.subList(0, MOST_UNPAID)));
    var later = unpaid.subList(MOST_UNPAID, unpaid.size());
    String number = wording.formats().count(later.size());
    rows.add(
        new Unpaid(
            "",
            wording.say("month.unpaid.later", number),
            "",
            wording.formats().bareMoney(sum(later, Debt::due))));
    return rows;
  }

  private List<Unpaid> rows(List<Debt> debts) {
    return debts.stream()
        .map(
            debt ->
                new Unpaid(
                    wording.formats().date(debt.since()),
                    named.customer(debt.statement().customer()),
                    debt.statement().body(),
                    wording.formats().bareMoney(debt.due())))
        .toList();
  }

  /** What they come to. */
  String unpaidTotal() {
    return wording.formats().bareMoney(sum(unpaid, Debt::due));
  }

  /** The month's statements: charges, tax, what was paid and what is open of them. */
  List<Fact> totals() {
    var facts = new ArrayList<Fact>();
    if (ofMonth.isEmpty()) {
      return facts;
    }
    var tax = sum(ofMonth, d -> d.statement().tax());
    facts.add(fact("summary.total.charges", sum(ofMonth, d -> d.statement().charges())));
    if (!tax.equals(Money.ZERO)) {
      facts.add(fact("summary.total.tax", tax));
    }
    facts.add(fact("summary.total.paid", sum(ofMonth, Debt::paid)));
    facts.add(fact("summary.total.due", sum(ofMonth, d -> atLeastNothing(d.due()))));
    var credit = sum(ofMonth, d -> atLeastNothing(Money.ZERO.minus(d.due())));
    if (!credit.equals(Money.ZERO)) {
      facts.add(fact("summary.total.credit", credit));
    }
    return facts;
  }

  private static Money atLeastNothing(Money amount) {
    return amount.compareTo(Money.ZERO) > 0 ? amount : Money.ZERO;
  }

  private Fact fact(String key, Money amount) {
    return new Fact(wording.say(key), wording.formats().money(amount));
  }

  private static Money sum(List<Debt> debts, Function<Debt, Money> amount) {
    return debts.stream().map(amount).reduce(Money.ZERO, Money::plus);
  }
}
