package gambrel.pages.owner.month;

import gambrel.insight.month.bodies.BodyFigure;
import gambrel.insight.month.bodies.FigureGroup;
import gambrel.insight.month.bodies.MonthBodies;
import gambrel.insight.month.bodies.MonthBody;
import gambrel.insight.month.bodies.Ownership;
import gambrel.insight.month.findings.FigureName;
import gambrel.insight.month.findings.GroupComparison;
import gambrel.insight.month.findings.MonthFigure;
import gambrel.pages.owner.month.TableBuilder.Counted;
import gambrel.pages.views.PartView;
import gambrel.pages.views.TableView.Cell;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What bodies gave: by owner, beside the twelve months before, and by primal. */
final class YieldsPart {
  private static final List<BodyFigure> OF_OWNERS =
      List.of(
          BodyFigure.DRESSING,
          BodyFigure.TAKE_HOME,
          BodyFigure.MEAT,
          BodyFigure.BINNED_BONE,
          BodyFigure.FAT);

  private final MonthPage page;

  YieldsPart(MonthPage page) {
    this.page = page;
  }

  /** Yields by owner and species. */
  PartView byOwner() {
    var table =
        new TableBuilder("yields", "even short")
            .first("", "kinds")
            .counted(page.say("dressing"))
            .counted(page.say("take_home_of_cold"))
            .counted(page.say("meat_of_cold"))
            .counted(page.say("bone_of_boning"))
            .counted(page.say("fat_of_boning"));
    for (var whose : Ownership.values()) {
      var rows = Stream.of(Species.values()).flatMap(s -> row(whose, s).stream()).toList();
      if (!rows.isEmpty()) {
        table.group(page.owner(whose));
        rows.forEach(table::row);
      }
    }
    var tables = table.table(page.say("yields_explained"));
    return PartView.of(page.say("yields"), tables, List.of());
  }

  private Optional<Object[]> row(Ownership whose, Species species) {
    MonthBodies month = page.records().bodies();
    var cells = new ArrayList<Object>(List.of(page.species(species)));
    boolean known = false;
    for (var figure : OF_OWNERS) {
      List<MonthBody> bodies = figure == BodyFigure.DRESSING ? month.killed() : month.cut();
      var like = bodies.stream().filter(b -> b.body().species() == species).toList();
      var ratio = figure.of(whose.of(like));
      known |= ratio.isKnown();
      cells.add(page.counted(ratio));
    }
    return known ? Optional.of(cells.toArray()) : Optional.empty();
  }

  /** What like bodies gave. */
  PartView beforeAndNow() {
    var table =
        new TableBuilder("like", "even")
            .first("", "kinds")
            .counted(page.say("take_home_of_cold"))
            .counted(page.say("bone_of_boning"))
            .counted(page.say("fat_of_boning"))
            .counted(page.say("trim_of_boning"));
    var lines = page.report().figures().of(FigureName.of(BodyFigure.YIELDS.get(0))).toList();
    lines.forEach(line -> line(table, line.species().orElseThrow(), line.group()));
    var remarks = new ArrayList<>(List.of(page.say("yields_before_explained")));
    remarks.addAll(remarks(lines));
    return PartView.withRoom(
        page.say("yields_before"), table.keptByRow("under", remarks), List.of());
  }

  private void line(TableBuilder table, Species species, FigureGroup group) {
    var like = (FigureGroup.Like) group;
    boolean whole = like.by() == FigureGroup.By.ALL;
    var month = new ArrayList<Object>(List.of(whole ? page.species(species) : name(like)));
    var before = new ArrayList<>(List.of(new Cell(page.say("before"), TableBuilder.FIRST)));
    for (var figure : BodyFigure.YIELDS) {
      var found = page.report().figures().find(FigureName.of(figure), species, group);
      month.add(page.counted(found));
      before.add(new Cell(found.map(this::medianAndMiddle).orElse(""), TableBuilder.NUMBER, 2));
    }
    table.styled(whole ? "strong" : "", month.toArray());
    if (before.stream().skip(1).anyMatch(cell -> !cell.text().isEmpty())) {
      table.add("under", before);
    }
  }

  private String name(FigureGroup.Like like) {
    String name =
        like.by() == FigureGroup.By.CLASS ? page.wording().category(like.name()) : like.name();
    return page.say("month.split." + like.by().id(), name);
  }

  private String medianAndMiddle(MonthFigure figure) {
    return figure
        .before()
        .spread()
        .filter(spread -> !page.middle(spread).isEmpty())
        .map(s -> page.say("month.median.middle", page.tenths(s.median()), page.middle(s)))
        .orElse("");
  }

  /** What came of each primal. */
  PartView primals() {
    String percent = page.say("percent");
    var table =
        new TableBuilder("primals", "even short")
            .first("", "kinds")
            .counted(page.label("this_month", percent))
            .counted(page.label("before", percent))
            .number(page.label("middle", percent));
    Optional<Species> group = Optional.empty();
    for (var figure : page.report().figures().of(FigureName.PRIMAL_PCT).toList()) {
      var species = figure.species().orElseThrow();
      if (!figure.species().equals(group)) {
        table.group(page.species(species));
        group = figure.species();
      }
      var spread = figure.before().spread();
      table.row(
          page.wording().cut(species, ((FigureGroup.Part) figure.group()).item()),
          page.counted(Optional.of(figure)),
          spread
              .map(s -> new Counted(page.tenths(s.median()), page.ofBodies(s.number())))
              .orElse(Counted.NONE),
          spread.map(page::middle).orElse(""));
    }
    return PartView.of(page.say("primals"), table.table(page.say("primals_explained")), List.of());
  }

  private List<String> remarks(List<MonthFigure> lines) {
    var remarks = new ArrayList<String>();
    for (var line : lines) {
      if (by(line) == FigureGroup.By.ALL) {
        BodyFigure.YIELDS.forEach(
            figure -> published(line.species().orElseThrow(), figure).ifPresent(remarks::add));
      }
    }
    if (lines.stream().anyMatch(line -> by(line) == FigureGroup.By.BONER)) {
      remarks.addAll(boners());
    }
    return remarks;
  }

  private static FigureGroup.By by(MonthFigure line) {
    return ((FigureGroup.Like) line.group()).by();
  }

  private Optional<String> published(Species species, BodyFigure figure) {
    var ranges = page.records().night().shop().ranges();
    return ranges
        .of(species, figure.id())
        .map(
            range ->
                page.say(
                    range.low().compareTo(range.high()) == 0
                        ? "month.published.single"
                        : "month.published",
                    page.species(species),
                    page.say("month.figure." + figure.id()),
                    page.formats().percent(range.low()),
                    page.formats().percent(range.high()),
                    page.wording().source(range)));
  }

  /** Only a difference beyond chance is printed; names are not ranked. */
  private List<String> boners() {
    var compared = page.report().figures().of(FigureName.BONE_TO_OTHERS_POINTS).toList();
    if (compared.isEmpty()) {
      return List.of(page.say("month.boners.few", page.count(GroupComparison.FEWEST)));
    }
    var more =
        compared.stream()
            .filter(f -> f.interval().orElseThrow().lower().signum() > 0)
            .map(this::boner)
            .toList();
    return more.isEmpty() ? List.of(page.say("month.boners.alike")) : more;
  }

  private String boner(MonthFigure figure) {
    var interval = figure.interval().orElseThrow();
    return page.say(
        "month.boners.more",
        figure.group().id(),
        page.species(figure.species().orElseThrow()),
        page.tenths(figure.value()),
        page.tenths(interval.lower()),
        page.tenths(interval.upper()),
        page.count(figure.bodies()),
        page.count(figure.before().bodies()));
  }
}
