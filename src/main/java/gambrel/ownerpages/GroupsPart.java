package gambrel.ownerpages;

import gambrel.month.BodyFigures;
import gambrel.month.Ratio;
import gambrel.month.Ownership;
import gambrel.month.MonthBodies;
import gambrel.cuts.Species;
import gambrel.reckoning.BodyAccount;
import gambrel.statement.SummaryView.Counted;
import gambrel.statement.SummaryView.ShrinkGroup;
import gambrel.statement.SummaryView.ShrinkRow;
import gambrel.statement.YieldsChapter.YieldGroup;
import gambrel.statement.YieldsChapter.YieldRow;
import gambrel.measure.Weight;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What was lost and what bodies gave, by owner and species. */
final class GroupsPart {
  private final MonthBodies month;
  private final Wording wording;
  private final Places places;

  GroupsPart(MonthBodies month, Wording wording, Places places) {
    this.month = month;
    this.wording = wording;
    this.places = places;
  }

  /** Weight lost. */
  List<ShrinkGroup> shrink() {
    var groups = new ArrayList<ShrinkGroup>();
    for (var ownership : Ownership.values()) {
      var rows =
          Stream.of(Species.values()).flatMap(s -> shrink(ownership, s).stream()).toList();
      if (!rows.isEmpty()) {
        groups.add(new ShrinkGroup(wording.say("summary." + ownership.id()), rows));
      }
    }
    return groups;
  }

  private Optional<ShrinkRow> shrink(Ownership ownership, Species species) {
    var killed = of(month.killed(), ownership, species);
    var chill = BodyFigures.CHILL.of(killed);
    var ageing = BodyFigures.AGEING.of(killed);
    var bench = BodyFigures.BENCH.of(of(month.cut(), ownership, species));
    if (Stream.of(chill, ageing, bench).noneMatch(Ratio::isKnown)) {
      return Optional.empty();
    }
    return Optional.of(
        new ShrinkRow(
            wording.say("species." + species.id()),
            counted(chill),
            places.hung(part(chill)),
            counted(ageing),
            places.hung(part(ageing)),
            counted(bench),
            places.cut(part(bench))));
  }

  /** Yields. */
  List<YieldGroup> yields() {
    var groups = new ArrayList<YieldGroup>();
    for (var ownership : Ownership.values()) {
      var rows =
          Stream.of(Species.values()).flatMap(s -> yields(ownership, s).stream()).toList();
      if (!rows.isEmpty()) {
        groups.add(new YieldGroup(wording.say("summary." + ownership.id()), rows));
      }
    }
    return groups;
  }

  private Optional<YieldRow> yields(Ownership ownership, Species species) {
    var cut = of(month.cut(), ownership, species);
    var dressing = BodyFigures.DRESSING.of(of(month.killed(), ownership, species));
    var takeHome = BodyFigures.TAKE_HOME.of(cut);
    var meat = BodyFigures.MEAT.of(cut);
    var bone = BodyFigures.BONE.of(cut);
    var fat = BodyFigures.FAT.of(cut);
    if (Stream.of(dressing, takeHome, meat, bone, fat).noneMatch(Ratio::isKnown)) {
      return Optional.empty();
    }
    return Optional.of(
        new YieldRow(
            wording.say("species." + species.id()),
            counted(dressing),
            counted(takeHome),
            counted(meat),
            counted(bone),
            counted(fat)));
  }

  private static List<BodyAccount> of(
      Collection<BodyAccount> accounts, Ownership ownership, Species species) {
    return accounts.stream()
        .filter(a -> a.body().species() == species && Ownership.of(a) == ownership)
        .toList();
  }

  private Counted counted(Ratio ratio) {
    return ratio
        .percent()
        .map(p -> new Counted(Percents.bare(p, wording), wording.formats().count(ratio.bodies())))
        .orElseGet(() -> new Counted("", ""));
  }

  private static Optional<Weight> part(Ratio ratio) {
    return Optional.of(ratio).filter(Ratio::isKnown).map(Ratio::part);
  }
}
