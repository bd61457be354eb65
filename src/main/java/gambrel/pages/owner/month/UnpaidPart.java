package gambrel.pages.owner.month;

import gambrel.insight.month.money.Debt;
import gambrel.pages.owner.Names;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.measure.Money;
import java.util.List;

/**
 * Statements of this month and before that are not paid in full, oldest first; of many, the last
 * ones in one line.
 */
final class UnpaidPart {
  private static final int MOST_UNPAID = 24;

  private final MonthPage page;

  UnpaidPart(MonthPage page) {
    this.page = page;
  }

  PartView part() {
    var table =
        new TableBuilder("unpaid", "")
            .first(page.say("issued_on"))
            .words(page.say("customer"), "")
            .words(page.say("body"), "")
            .number(page.currency());
    var named = new Names(page.records().night(), page.wording());
    var unpaid =
        Debt.until(page.records().bodies(), page.records().register()).stream()
            .filter(debt -> debt.due().compareTo(Money.ZERO) > 0)
            .toList();
    int shown = unpaid.size() <= MOST_UNPAID + 1 ? unpaid.size() : MOST_UNPAID;
    for (var debt : unpaid.subList(0, shown)) {
      table.row(
          page.formats().date(debt.since()),
          named.customer(debt.statement().customer()),
          debt.statement().body(),
          page.formats().bareMoney(debt.due()));
    }
    var later = unpaid.subList(shown, unpaid.size());
    if (!later.isEmpty()) {
      table.row("", page.say("month.unpaid.later", page.count(later.size())), "", due(later));
    }
    if (!unpaid.isEmpty()) {
      table.add(
          "total",
          List.of(
              new Cell(page.label("total", page.say("unpaid_total")), TableBuilder.FIRST, 3),
              new Cell(due(unpaid), TableBuilder.NUMBER)));
    }
    var tables = table.kept("", 2, List.of(page.say("payments_known")));
    return PartView.withRoom(page.say("unpaid"), tables, List.of());
  }

  private String due(List<Debt> debts) {
    return page.formats().bareMoney(Debt.sum(debts, Debt::due));
  }
}
