package gambrel.pages.owner.month;

import gambrel.insight.month.pace.Pace;
import gambrel.insight.month.pace.PaceLine;
import gambrel.pages.views.PartView;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;

/** How fast pieces were boned, if the block's weighings tell. */
final class PacePart {
  private final MonthPage page;

  PacePart(MonthPage page) {
    this.page = page;
  }

  PartView part() {
    var table =
        new TableBuilder("pace", "even short")
            .first(page.say("piece"), "wider")
            .words(page.say("boner"), "")
            .number(page.say("pieces"))
            .number(page.say("minutes_each"))
            .number(page.say("middle"))
            .number(page.unit() + ' ' + page.say("an_hour"))
            .number(page.label("before", page.say("minutes_each")))
            .number(page.label("before", page.unit() + ' ' + page.say("an_hour")));
    page.parts().paceLines().forEach(line -> row(table, line));
    return PartView.of(page.say("pace"), table.table(), remarks());
  }

  private void row(TableBuilder table, PaceLine line) {
    var month = line.month();
    table.row(
        page.say(
            "month.pace.piece",
            page.wording().cut(line.species(), line.item()),
            page.kind(line.species())),
        line.boner().orElseGet(() -> page.say("month.pace.all")),
        page.count(month.pieces()),
        page.tenths(month.each().median()),
        page.middle(month.each()),
        anHour(month),
        line.before().map(before -> page.tenths(before.each().median())).orElse(""),
        line.before().map(this::anHour).orElse(""));
  }

  private String anHour(Pace pace) {
    return pace.weightAnHour().map(weight -> page.number(weight, 0)).orElse("");
  }

  private List<String> remarks() {
    var lines = page.parts().paceLines();
    if (lines.isEmpty()) {
      return page.records().bodies().cut().isEmpty()
          ? List.of()
          : List.of(page.say("month.pace.none"));
    }
    var remarks = new ArrayList<>(List.of(page.say("month.pace.read")));
    int breaks = page.parts().pace().month().breaks();
    if (breaks > 0) {
      remarks.add(page.counted("month.pace.breaks", breaks));
    }
    if (lines.stream().anyMatch(PacePart::isHindquarter)) {
      remarks.add(page.say("month.pace.usual"));
    }
    return remarks;
  }

  private static boolean isHindquarter(PaceLine line) {
    return line.species() == Species.BEEF && line.item().id().equals(CutTree.HINDQUARTER);
  }
}
