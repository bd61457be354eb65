package gambrel.month.yields;

import gambrel.balance.Drawn;
import gambrel.cuts.Species;
import gambrel.month.MonthRecords;
import gambrel.month.Settled;
import gambrel.month.yields.YieldLine.Split;
import gambrel.reckoning.BodyAccount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** What the settled bodies of a month gave, beside those of the twelve months before. */
public final class Yields {
  private static final Drawn<MonthRecords, Yields> DRAWN = new Drawn<>(Yields::new);

  private final List<BodyAccount> month;
  private final List<BodyAccount> before;
  private final List<YieldLine> lines;
  private final List<PrimalShare> primals;

  private Yields(MonthRecords records) {
    this.month = Settled.of(records.bodies().cut());
    this.before = Settled.of(records.baseline().cut());
    this.lines = readLines();
    this.primals = readPrimals();
  }

  /** Those of a month. */
  public static Yields of(MonthRecords records) {
    return DRAWN.of(records);
  }

  /** Every species; then its classes, where the month has several, and its boners. */
  public List<YieldLine> lines() {
    return lines;
  }

  /** The share of every primal in the weight into the boning room, by species in tree order. */
  public List<PrimalShare> primals() {
    return primals;
  }

  private List<YieldLine> readLines() {
    var lines = new ArrayList<YieldLine>();
    for (var species : Species.values()) {
      var own = of(month, species);
      if (own.isEmpty()) {
        continue;
      }
      lines.add(line(species, Split.ALL, "", own, of(before, species)));
      split(lines, species, Split.CLASS, Yields::category);
      split(lines, species, Split.BONER, account -> Boners.of(account.balance()));
    }
    return lines.stream().filter(YieldLine::isKnown).toList();
  }

  private void split(
      List<YieldLine> lines,
      Species species,
      Split split,
      Function<BodyAccount, Optional<String>> by) {
    var names = names(of(month, species), by);
    if (split == Split.CLASS && names.size() < 2) {
      return;
    }
    for (String name : names) {
      lines.add(
          line(
              species,
              split,
              name,
              named(of(month, species), by, name),
              named(of(before, species), by, name)));
    }
  }

  private List<PrimalShare> readPrimals() {
    return Stream.of(Species.values())
        .flatMap(s -> PrimalShare.of(s, of(month, s), of(before, s)).stream())
        .toList();
  }

  private static YieldLine line(
      Species species,
      Split split,
      String name,
      List<BodyAccount> month,
      List<BodyAccount> before) {
    var cells =
        Stream.of(YieldFigure.values())
            .map(f -> new YieldLine.Cell(f, f.figure().of(month), f.figure().spread(before)))
            .toList();
    return new YieldLine(species, split, name, cells);
  }

  private static List<BodyAccount> of(List<BodyAccount> accounts, Species species) {
    return accounts.stream().filter(a -> a.body().species() == species).toList();
  }

  private static List<String> names(
      List<BodyAccount> accounts, Function<BodyAccount, Optional<String>> by) {
    return accounts.stream().flatMap(a -> by.apply(a).stream()).distinct().sorted().toList();
  }

  private static List<BodyAccount> named(
      List<BodyAccount> accounts, Function<BodyAccount, Optional<String>> by, String name) {
    return accounts.stream().filter(a -> by.apply(a).filter(name::equals).isPresent()).toList();
  }

  private static Optional<String> category(BodyAccount account) {
    return Optional.of(account.body().category()).filter(category -> !category.isEmpty());
  }
}
