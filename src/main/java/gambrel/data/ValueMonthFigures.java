package gambrel.data;

import gambrel.cuts.Item;
import gambrel.cuts.Species;
import gambrel.measure.Exact;
import gambrel.measure.Money;
import gambrel.month.LikeWithLike.Difference;
import gambrel.month.MonthRecords;
import gambrel.month.Settled;
import gambrel.month.money.Income;
import gambrel.month.money.OwnStock;
import gambrel.month.money.SupplierLine;
import gambrel.month.value.BodyWorth;
import gambrel.month.value.CutChoice;
import gambrel.month.value.CutChoices;
import gambrel.reckoning.BodyAccount;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a month's cuts were worth and what its money came to, as figures. */
final class ValueMonthFigures {
  private static final int DECIMALS = 3;
  private static final String INTERVAL = "99 % of the difference, shared among comparisons";

  private final MonthRecords records;
  private final String perUnit;
  private final List<MonthFigure> figures = new ArrayList<>();

  private ValueMonthFigures(MonthRecords records) {
    this.records = records;
    var settings = records.night().shop().settings();
    this.perUnit = settings.currency().getCurrencyCode() + "/" + settings.unit().id();
  }

  static List<MonthFigure> of(MonthRecords records) {
    var all = new ValueMonthFigures(records);
    all.bodies();
    all.choices();
    all.income();
    all.suppliers();
    return all.figures;
  }

  private void bodies() {
    for (var species : Species.values()) {
      var now = worth(records.bodies().cut(), species);
      var before = worth(records.baseline().cut(), species);
      BodyWorth.rateOf(now)
          .ifPresent(
              rate ->
                  figures.add(
                      MonthFigure.plain(
                          "worth_of_cold",
                          "",
                          species.id(),
                          "",
                          now.size(),
                          rounded(rate),
                          perUnit,
                          before.size(),
                          BodyWorth.rateOf(before).flatMap(ValueMonthFigures::rounded),
                          BodyWorth.spreadOf(before))));
      now.forEach(
          body ->
              plain("worth_of_cold", species, "body " + body.account().body().id(), 1, body.rate()));
    }
  }

  private List<BodyWorth> worth(List<BodyAccount> accounts, Species species) {
    return BodyWorth.of(
        Settled.of(accounts).stream().filter(a -> a.body().species() == species).toList(),
        records.rail().items());
  }

  /** Each way beside the best; the interval is of the difference to it. */
  private void choices() {
    for (var choice : CutChoices.lately(records)) {
      for (var way : choice.ways()) {
        String items = way.items().stream().map(Item::id).collect(Collectors.joining("+"));
        String group = choice.piece().id() + " as " + items;
        var species = choice.species();
        add(name(choice), species, group, way.bodies(), rounded(way.value()), way.toBest(), 1);
      }
    }
  }

  private static String name(CutChoice choice) {
    return choice.perPiece() ? "cut_worth_of_piece" : "cut_worth_of_body";
  }

  private void income() {
    var now = Settled.of(records.bodies().cut());
    var before = Settled.of(records.baseline().cut());
    for (var species : Income.species(now)) {
      var income = Income.of(species, now);
      var then = Income.of(species, before);
      figures.add(
          MonthFigure.plain(
              "charges_of_boning",
              "",
              species.id(),
              "",
              income.bodies(),
              income.minorAUnit().flatMap(this::major),
              perUnit,
              then.bodies(),
              then.minorAUnit().flatMap(this::major),
              Optional.empty()));
    }
  }

  private void suppliers() {
    for (var line : SupplierLine.of(OwnStock.lately(records))) {
      add(
          "margin_of_cold",
          line.species(),
          line.supplier(),
          line.counted(),
          line.marginAUnit().flatMap(this::major),
          line.toOthers(),
          minors());
    }
  }

  private void plain(String name, Species species, String group, int bodies, BigFraction value) {
    add(name, species, group, bodies, rounded(value), Optional.empty(), 1);
  }

  private void add(
      String name,
      Species species,
      String group,
      int bodies,
      Optional<BigDecimal> value,
      Optional<Difference> difference,
      double minors) {
    figures.add(
        new MonthFigure(
            name,
            "",
            species.id(),
            group,
            bodies,
            value,
            perUnit,
            0,
            Optional.empty(),
            Optional.empty(),
            difference.isPresent() ? INTERVAL : "",
            difference.flatMap(d -> rounded(Exact.ofStatistic(d.low() / minors))),
            difference.flatMap(d -> rounded(Exact.ofStatistic(d.high() / minors)))));
  }

  private static Optional<BigDecimal> rounded(BigFraction value) {
    return Optional.of(Exact.round(value, DECIMALS));
  }

  private Optional<BigDecimal> major(BigFraction minor) {
    return rounded(minor.divide(BigFraction.of((long) minors())));
  }

  /** Minor units of the currency in its major unit. */
  private double minors() {
    return Math.pow(10, Money.digits(records.night().shop().settings().currency()));
  }
}
