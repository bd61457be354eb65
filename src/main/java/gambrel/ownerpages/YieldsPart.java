package gambrel.ownerpages;

import gambrel.cuts.Species;
import gambrel.month.LikeWithLike;
import gambrel.month.MonthRecords;
import gambrel.month.Ratio;
import gambrel.month.Spread;
import gambrel.month.yields.BonerComparison;
import gambrel.month.yields.PrimalShare;
import gambrel.month.yields.YieldFigure;
import gambrel.month.yields.YieldLine;
import gambrel.month.yields.Yields;
import gambrel.statement.SummaryView.Counted;
import gambrel.statement.YieldsChapter;
import gambrel.wording.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** What like bodies gave, beside the twelve months before and what was published. */
final class YieldsPart {
  private final MonthRecords records;
  private final Wording wording;
  private final Rates rates;
  private final Yields yields;

  YieldsPart(MonthRecords records, Wording wording) {
    this.records = records;
    this.wording = wording;
    this.rates = new Rates(wording, records.night().shop().settings().currency());
    this.yields = Yields.of(records);
  }

  YieldsChapter chapter(List<YieldsChapter.YieldGroup> groups) {
    var lines = yields.lines();
    return new YieldsChapter(
        groups, lines.stream().map(this::line).toList(), primals(), remarks(lines));
  }

  private YieldsChapter.Line line(YieldLine line) {
    var cells = line.cells().stream().map(this::cell).toList();
    boolean whole = line.split() == YieldLine.Split.ALL;
    String name =
        whole
            ? species(line.species())
            : wording.say("month.split." + line.split().id(), name(line));
    return new YieldsChapter.Line(
        name, whole, cells, cells.stream().anyMatch(cell -> !cell.before().isEmpty()));
  }

  private String name(YieldLine line) {
    return line.split() == YieldLine.Split.CLASS ? wording.category(line.name()) : line.name();
  }

  private YieldsChapter.Cell cell(YieldLine.Cell cell) {
    return new YieldsChapter.Cell(
        counted(cell.month()), cell.before().map(rates::medianAndMiddle).orElse(""));
  }

  private Counted counted(Ratio ratio) {
    return ratio
        .percent()
        .map(p -> new Counted(Percents.bare(p, wording), wording.formats().count(ratio.bodies())))
        .orElseGet(() -> new Counted("", ""));
  }

  private List<YieldsChapter.PrimalGroup> primals() {
    var groups = new LinkedHashMap<Species, List<YieldsChapter.PrimalRow>>();
    for (var share : yields.primals()) {
      groups.computeIfAbsent(share.species(), s -> new ArrayList<>()).add(primal(share));
    }
    var all = new ArrayList<YieldsChapter.PrimalGroup>();
    groups.forEach(
        (species, rows) -> all.add(new YieldsChapter.PrimalGroup(species(species), rows)));
    return all;
  }

  private YieldsChapter.PrimalRow primal(PrimalShare share) {
    return new YieldsChapter.PrimalRow(
        wording.cut(share.species(), share.primal()),
        counted(share.month()),
        share.before().map(this::median).orElseGet(() -> new Counted("", "")),
        share.before().map(rates::middle).orElse(""));
  }

  private Counted median(Spread spread) {
    return new Counted(rates.tenths(spread.median()), wording.formats().count(spread.number()));
  }

  private List<String> remarks(List<YieldLine> lines) {
    var remarks = new ArrayList<String>();
    lines.stream()
        .filter(line -> line.split() == YieldLine.Split.ALL)
        .forEach(
            line -> {
              for (var figure : YieldFigure.values()) {
                published(line.species(), figure).ifPresent(remarks::add);
              }
            });
    if (lines.stream().anyMatch(line -> line.split() == YieldLine.Split.BONER)) {
      remarks.addAll(boners());
    }
    return remarks;
  }

  private Optional<String> published(Species species, YieldFigure figure) {
    return records
        .night()
        .shop()
        .ranges()
        .of(species, figure.id())
        .map(
            range ->
                wording.say(
                    range.low().compareTo(range.high()) == 0 ? "month.published.single" : "month.published",
                    species(species),
                    wording.say("month.figure." + figure.id()),
                    wording.formats().percent(range.low()),
                    wording.formats().percent(range.high()),
                    wording.source(range)));
  }

  /** Only a difference beyond chance is told; names are not ranked. */
  private List<String> boners() {
    var told = new ArrayList<String>();
    int compared = 0;
    for (var comparison : BonerComparison.of(records)) {
      for (var entry : comparison.differences().entrySet()) {
        compared++;
        if (entry.getValue().low() > 0) {
          told.add(more(comparison.species(), entry.getKey(), entry.getValue()));
        }
      }
    }
    if (compared == 0) {
      told.add(wording.say("month.boners.few", count(LikeWithLike.FEWEST)));
    } else if (told.isEmpty()) {
      told.add(wording.say("month.boners.alike"));
    }
    return told;
  }

  private String more(Species species, String boner, LikeWithLike.Difference difference) {
    return wording.say(
        "month.boners.more",
        boner,
        species(species),
        rates.tenths(difference.mean()),
        rates.tenths(difference.low()),
        rates.tenths(difference.high()),
        count(difference.bodies()),
        count(difference.others()));
  }

  private String species(Species species) {
    return wording.say("species." + species.id());
  }

  private String count(long number) {
    return wording.formats().count(number);
  }
}
