package gambrel.ownerpages;

import gambrel.measure.Exact;
import gambrel.measure.Money;
import gambrel.month.LikeWithLike;
import gambrel.month.MonthRecords;
import gambrel.month.Ownership;
import gambrel.month.Spread;
import gambrel.month.money.OwnStock;
import gambrel.month.money.SupplierLine;
import gambrel.statement.MoneyChapter;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the shop bought for itself: by supplier, and body by body. */
final class StockPart {
  private static final int MOST_BODIES = 12;
  private static final Comparator<OwnStock> LEAST_MARGIN_FIRST =
      Comparator.comparing((OwnStock s) -> s.margin().map(Money::minor).orElse(Long.MAX_VALUE))
          .thenComparing(s -> s.account().body().id());

  private final MonthRecords records;
  private final Wording wording;
  private final Rates rates;
  private final Named named;

  StockPart(MonthRecords records, Wording wording) {
    this.records = records;
    this.wording = wording;
    this.rates = new Rates(wording, records.night().shop().settings().currency());
    this.named = new Named(records.night(), wording);
  }

  /** The month's bodies, least margin first; the rest are in the data file. */
  List<MoneyChapter.Stock> bodies() {
    return OwnStock.ofMonth(records).stream()
        .sorted(LEAST_MARGIN_FIRST)
        .limit(MOST_BODIES)
        .map(this::body)
        .toList();
  }

  private MoneyChapter.Stock body(OwnStock stock) {
    var body = stock.account().body();
    return new MoneyChapter.Stock(
        body.id(),
        named.kind(body),
        body.supplier(),
        stock.takeHomePercent().map(rates::tenths).orElse(""),
        wording.formats().bareMoney(stock.cost()),
        money(stock.value()),
        money(stock.margin()));
  }

  /** Suppliers of the month and the twelve before. */
  List<MoneyChapter.Supplier> suppliers() {
    return lines().stream().map(this::supplier).toList();
  }

  private List<SupplierLine> lines() {
    return SupplierLine.of(OwnStock.lately(records));
  }

  private MoneyChapter.Supplier supplier(SupplierLine line) {
    var known = Optional.of(line).filter(l -> l.counted() > 0);
    String name =
        line.supplier().isEmpty() ? wording.say("month.stock.nobody") : line.supplier();
    return new MoneyChapter.Supplier(
        wording.say(
            "month.pace.piece", name, wording.say("summary.kind." + line.species().id())),
        wording.formats().count(line.bodies()),
        line.takeHome().map(Spread::median).map(rates::tenths).orElse(""),
        line.takeHome().map(rates::middle).orElse(""),
        money(known.map(SupplierLine::cost)),
        money(known.map(SupplierLine::value)),
        money(known.map(SupplierLine::margin)),
        rates.minor(line.marginAUnit()));
  }

  private String money(Optional<Money> amount) {
    return amount.map(wording.formats()::bareMoney).orElse("");
  }

  /** How to read the tables; which supplier's bodies gave less beyond chance; what to write down. */
  List<String> remarks() {
    var remarks = new ArrayList<String>();
    var lines = lines();
    if (lines.isEmpty()) {
      boolean bought =
          records.bodies().cut().stream().anyMatch(a -> Ownership.of(a) == Ownership.OWN);
      if (bought) {
        remarks.add(wording.say("month.stock.none"));
      }
      return remarks;
    }
    remarks.add(wording.say("month.stock.read"));
    lines.stream().flatMap(line -> less(line).stream()).forEach(remarks::add);
    if (lines.stream().allMatch(line -> line.toOthers().isEmpty())) {
      remarks.add(
          wording.say(
              "month.stock.few", wording.formats().count(LikeWithLike.FEWEST)));
    }
    int more = OwnStock.ofMonth(records).size() - MOST_BODIES;
    if (more > 0) {
      remarks.add(wording.count("month.stock.more", more, wording.formats().count(more)));
    }
    return remarks;
  }

  private Optional<String> less(SupplierLine line) {
    return line.toOthers()
        .filter(difference -> difference.high() < 0)
        .map(
            difference ->
                wording.say(
                    "month.stock.less",
                    line.supplier(),
                    wording.say("summary.kind." + line.species().id()),
                    rates.minor(Exact.ofStatistic(-difference.mean())),
                    rates.minor(Exact.ofStatistic(-difference.high())),
                    rates.minor(Exact.ofStatistic(-difference.low())),
                    records.night().shop().settings().unit().id()));
  }
}
