package gambrel.pages.owner.month;

import gambrel.insight.month.figures.BodyFigure;
import gambrel.insight.month.figures.BodyGroup;
import gambrel.insight.month.figures.FigureName;
import gambrel.insight.month.figures.GroupComparison;
import gambrel.insight.month.figures.MonthFigure;
import gambrel.insight.month.figures.Ownership;
import gambrel.insight.month.figures.Spread;
import gambrel.insight.month.money.Debt;
import gambrel.insight.month.money.MonthAccounts.Age;
import gambrel.insight.month.money.MonthAccounts.TaxRate;
import gambrel.insight.month.money.OwnStock;
import gambrel.insight.month.money.SupplierLine;
import gambrel.pages.views.PartView;
import gambrel.trade.measure.Groups;
import gambrel.trade.measure.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the work earned, what the shop bought and may bid, and the accounts. */
record MoneyPart(MonthPart.Page page) implements MonthPart {
  /** The most rows of the tables, so that all stand on one page. */
  private static final int MOST_KINDS = 10;

  private static final int MOST_BIDS = 5;
  private static final int MOST_CUTS = 6;
  private static final int MOST_SUPPLIERS = 4;

  private static final Comparator<OwnStock> LEAST_MARGIN_FIRST =
      Comparator.comparing((OwnStock s) -> s.margin().map(Money::minor).orElse(Long.MAX_VALUE))
          .thenComparing(s -> s.account().id());

  /** The first rows in an order; how many more there are is added to the remarks. */
  private <T> List<T> first(int most, List<T> all, Comparator<T> order, List<String> remarks) {
    int more = all.size() - most;
    if (more > 0) {
      remarks.add(wording().counted("month.more", more));
    }
    return all.stream().sorted(order).limit(most).toList();
  }

  /** What the month's statements charge, by description. */
  PartView earned() {
    var kinds = report().figures(FigureName.CHARGED).toList();
    var remarks = new ArrayList<>(List.of(say("month.earned.read")));
    Comparator<MonthFigure> least = Comparator.comparing(kind -> kind.value().orElseThrow().abs());
    // The total is the dearest.
    var dearest = first(MOST_KINDS + 1, kinds, least.reversed(), remarks);
    var table =
        new TableBuilder<MonthFigure>("earned figures even short")
            .first(say("charge"), this::kind, "kinds")
            .number(say("number"), kind -> count(kind.bodies()), "few")
            .number(currency(), kind -> major(kind.value()))
            .number(say("of_boning", rateUnit()), kind -> other(FigureName.CHARGED_OF_BONING, kind))
            .number(
                currency() + ' ' + say("an_hour"), kind -> other(FigureName.CHARGED_AN_HOUR, kind));
    kinds.stream()
        .filter(dearest::contains)
        .forEach(kind -> table.row(kind.group() == BodyGroup.ALL ? "total" : "", kind));
    return PartView.of(say("income"), table.table(remarks), List.of());
  }

  private String kind(MonthFigure kind) {
    return kind.group() == BodyGroup.ALL ? say("total") : kind.group().id();
  }

  private String other(FigureName name, MonthFigure same) {
    return major(report().value(name, same));
  }

  /** The most that may be bid for a unit of hot weight, by class. */
  PartView bids() {
    var remarks = new ArrayList<>(List.of(say("month.bid.read")));
    var bids = report().figures(FigureName.BID_OF_HOT).toList();
    String rate = say("of_hot", rateUnit());
    var table =
        new TableBuilder<MonthFigure>("bids figures even short")
            .first(say("class"), this::category, "kinds")
            .number(say("number"), bid -> count(bid.bodies()), "few")
            .number(
                say("take_home_of_hot"),
                bid -> tenths(report().value(FigureName.BID_TAKE_HOME_PCT, bid)))
            .number(label("take_home_worth", rate), bid -> other(FigureName.BID_WORTH_OF_HOT, bid))
            .number(label("work", rate), bid -> other(FigureName.BID_WORK_OF_HOT, bid))
            .number(label("bid", rate), bid -> major(bid.value()), "strong")
            .rows(first(MOST_BIDS, bids, Comparator.comparing(bid -> -bid.bodies()), remarks));
    return PartView.of(say("bids"), table.table(remarks), List.of());
  }

  private String category(MonthFigure bid) {
    String name = ((MonthFigure.Like) bid.group()).name();
    return name.isEmpty()
        ? species(bid)
        : say("month.pace.piece", species(bid), wording().category(name));
  }

  /** What to leave on which cut, and whether a day more on the rail pays. */
  PartView advice() {
    var sentences = new ArrayList<>(new ValuePart(page).more(MOST_CUTS));
    sentences.addAll(new HangingPart(page).answers());
    return PartView.of(say("advice"), List.of(), sentences).with("wide chapter said");
  }

  /** The shop's own bodies by supplier. */
  PartView suppliers() {
    var lines = report().suppliers();
    var remarks = remarks();
    var table =
        new TableBuilder<SupplierLine>("suppliers figures even short")
            .first(say("supplier"), this::supplier)
            .number(say("number"), line -> count(line.bodies().size()), "few")
            .number(say("take_home_of_cold"), line -> tenths(line.takeHome().map(Spread::median)))
            .number(
                label("cost", currency()), line -> money(line.sum(own -> Optional.of(own.cost()))))
            .number(label("take_home_worth", currency()), line -> money(line.sum(OwnStock::value)))
            .number(label("margin", currency()), line -> money(line.sum(OwnStock::margin)))
            .number(
                label("margin", say("of_cold", rateUnit())), line -> major(line.figure().value()))
            .rows(
                first(
                    MOST_SUPPLIERS,
                    lines,
                    Comparator.comparing(line -> -line.bodies().size()),
                    remarks));
    var said = remarks.isEmpty() ? remarks : List.of(String.join(" ", remarks));
    var tables = table.table(said);
    return PartView.of(say("stock"), tables, tables.isEmpty() ? said : List.of());
  }

  private String supplier(SupplierLine line) {
    String name = line.supplier().isEmpty() ? say("month.stock.nobody") : line.supplier();
    return say("month.pace.piece", name, wording().kind(line.species()));
  }

  /** The shop's own bodies of the month, those with the least margin first. */
  PartView stock() {
    var table =
        new TableBuilder<OwnStock>("stock figures even")
            .first(say("body"), own -> own.account().id())
            .words(say("kind"), own -> page.names().kind(own.account().body()), "wider")
            .words(say("supplier"), own -> own.account().body().supplier(), "wider")
            .number(
                say("take_home_of_cold"),
                own -> tenths(own.account().percent(BodyFigure.TAKE_HOME)))
            .number(label("cost", currency()), own -> money(Optional.of(own.cost())))
            .number(label("take_home_worth", currency()), own -> money(own.value()))
            .number(label("margin", currency()), own -> money(own.margin()))
            .rows(report().stock().stream().sorted(LEAST_MARGIN_FIRST).toList());
    return PartView.withRoom(say("stock_bodies"), table.table(), List.of());
  }

  /** How to read the tables, and what is missing. */
  private List<String> remarks() {
    var lines = report().suppliers();
    var remarks = new ArrayList<String>();
    if (lines.isEmpty()) {
      if (!Ownership.OWN.of(month().cut()).isEmpty()) {
        remarks.add(say("month.stock.none"));
      }
      return remarks;
    }
    remarks.add(say("month.stock.read"));
    if (lines.stream().allMatch(line -> line.toOthers().isEmpty())) {
      remarks.add(say("month.stock.few", count(GroupComparison.FEWEST)));
    }
    return remarks;
  }

  /** What the month's statements charge, by rate of tax, what is received, and the debts by age. */
  PartView accounts() {
    var statements =
        new TableBuilder<MonthFigure>("accounts figures even short")
            .first(say("accounts.statements"), this::rate, "kinds")
            .number(label("accounts.net", currency()), line -> major(line.value()))
            .number(
                label("accounts.tax", currency()), line -> other(FigureName.STATEMENTS_TAX, line))
            .number(
                label("accounts.received", currency()),
                line -> other(FigureName.STATEMENTS_RECEIVED, line))
            .number(
                label("accounts.owed", currency()),
                line -> other(FigureName.STATEMENTS_OWED, line));
    report()
        .figures(FigureName.STATEMENTS_NET)
        .forEach(line -> statements.row(line.group() == BodyGroup.ALL ? "total" : "", line));
    var owed = report().figures(FigureName.OWED).toList();
    var ages = new TableBuilder<String>("ages figures even short below").first("", row -> row);
    owed.forEach(age -> ages.number(age(age), row -> major(age.value())));
    var tables =
        Stream.concat(
                statements.table().stream(),
                (owed.isEmpty() ? ages : ages.rows(List.of(say("accounts.ages", currency()))))
                    .table(say("payments_known")).stream())
            .toList();
    return PartView.of(say("accounts"), tables, List.of());
  }

  private String rate(MonthFigure line) {
    if (line.group() == BodyGroup.ALL) {
      return wording().counted("accounts.number", line.bodies());
    }
    return line.group() instanceof TaxRate tax
        ? say("accounts.rate", formats().percent(tax.percent()))
        : say("accounts.rate.unknown");
  }

  private String age(MonthFigure owed) {
    if (!(owed.group() instanceof Age age)) {
      return say("total");
    }
    return age.isOpen()
        ? say("accounts.age.over", count(age.from() - 1L))
        : say("accounts.age", count(age.from()), count(age.to()));
  }

  /** What customers owe for statements of this month and before, the oldest debt first. */
  PartView unpaid() {
    var table =
        new TableBuilder<List<Debt>>("unpaid figures")
            .first(say("customer"), of -> page.names().customer(of.get(0).statement().customer()))
            .column(say("oldest"), "day", of -> formats().date(of.get(0).since()))
            .words(
                say("bodies_owed"),
                of -> of.stream().map(d -> d.statement().body()).collect(Collectors.joining(", ")))
            .number(
                label("accounts.owed", currency()),
                of -> formats().bareMoney(Debt.sum(of, Debt::due)));
    var unpaid = Debt.unpaid(records()).stream();
    table.rows(Groups.inOrder(unpaid, debt -> debt.statement().customer()).values());
    return PartView.withRoom(say("unpaid"), table.table(), List.of());
  }
}
