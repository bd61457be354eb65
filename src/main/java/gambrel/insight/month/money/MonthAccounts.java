package gambrel.insight.month.money;

import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.MonthRecords;
import gambrel.trade.measure.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;

/** The accounts of a month: what its statements charge, by rate of tax, and what is owed. */
public final class MonthAccounts {
  private final MonthRecords records;
  private final List<MonthFigure> figures = new ArrayList<>();

  private MonthAccounts(MonthRecords records) {
    this.records = records;
  }

  /** Charges at one rate of tax. */
  public record TaxRate(BigDecimal percent) implements MonthFigure.Group {
    @Override
    public String id() {
      return "tax " + percent.toPlainString();
    }
  }

  /**
   * Debts of an age in days.
   *
   * @param from the least
   * @param to the greatest; {@link Integer#MAX_VALUE} if there is none
   */
  public record Age(int from, int to) implements MonthFigure.Group {
    /** The ages by which debts are added up. */
    public static final List<Age> ALL =
        List.of(new Age(0, 30), new Age(31, 60), new Age(61, 90), new Age(91, Integer.MAX_VALUE));

    /** Whether it has no upper end. */
    public boolean isOpen() {
      return to == Integer.MAX_VALUE;
    }

    private boolean includes(long days) {
      // A statement that was issued after the month's end is new.
      return Math.max(0, days) >= from && days <= to;
    }

    @Override
    public String id() {
      return "days " + from + '-' + (isOpen() ? "" : to);
    }
  }

  /**
   * The month's statements at each rate of tax and together, then what is owed for them and for
   * statements of earlier months, by age and together; none if nothing was issued.
   */
  public static List<MonthFigure> of(MonthRecords records) {
    var accounts = new MonthAccounts(records);
    var month = Debt.of(records);
    if (!month.isEmpty()) {
      accounts.rates(month);
      accounts.charged(BodyGroup.ALL, month);
      accounts.sum(FigureName.STATEMENTS_RECEIVED, BodyGroup.ALL, month, Debt::received);
      accounts.sum(FigureName.STATEMENTS_OWED, BodyGroup.ALL, month, Debt::due);
    }
    var unpaid = Debt.unpaid(records);
    if (!month.isEmpty() || !unpaid.isEmpty()) {
      for (var age : Age.ALL) {
        var some = unpaid.stream().filter(debt -> age.includes(debt.days(records))).toList();
        accounts.sum(FigureName.OWED, age, some, Debt::due);
      }
      accounts.sum(FigureName.OWED, BodyGroup.ALL, unpaid, Debt::due);
    }
    return accounts.figures;
  }

  /** Adds the sums at each rate of tax, the least first; then those whose rate was not kept. */
  private void rates(List<Debt> month) {
    var net = new TreeMap<BigDecimal, Money>();
    var tax = new TreeMap<BigDecimal, Money>();
    for (var debt : month) {
      for (var line : debt.statement().lines()) {
        var rate = line.taxPercent().stripTrailingZeros();
        net.merge(rate, line.amount(), Money::plus);
        tax.merge(rate, line.tax(), Money::plus);
      }
    }
    net.forEach(
        (rate, amount) -> {
          var group = new TaxRate(rate);
          add(FigureName.STATEMENTS_NET, group, month.size(), amount);
          add(FigureName.STATEMENTS_TAX, group, month.size(), tax.get(rate));
        });
    var bare = month.stream().filter(debt -> debt.statement().lines().isEmpty()).toList();
    if (!Debt.sum(bare, debt -> debt.statement().charges()).equals(Money.ZERO)) {
      charged(new MonthFigure.Named("tax not kept"), bare);
    }
  }

  private void charged(MonthFigure.Group group, List<Debt> debts) {
    sum(FigureName.STATEMENTS_NET, group, debts, debt -> debt.statement().charges());
    sum(FigureName.STATEMENTS_TAX, group, debts, debt -> debt.statement().tax());
  }

  private void sum(
      FigureName name, MonthFigure.Group group, List<Debt> debts, Function<Debt, Money> amount) {
    add(name, group, debts.size(), Debt.sum(debts, amount));
  }

  private void add(FigureName name, MonthFigure.Group group, int number, Money amount) {
    var value = amount.fraction(records.settings().currency());
    figures.add(MonthFigure.ofAll(name, group, number, value));
  }
}
