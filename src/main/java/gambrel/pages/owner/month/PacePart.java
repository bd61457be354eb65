package gambrel.pages.owner.month;

import gambrel.insight.month.pace.Pace;
import gambrel.insight.month.pace.PaceLine;
import gambrel.pages.views.PartView;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How fast pieces were boned, read from the times of weighings on the block. */
record PacePart(MonthPage page) {

  PartView part() {
    String anHour = page.unit() + ' ' + page.say("an_hour");
    var table =
        new TableBuilder<PaceLine>("pace figures even short")
            .first(page.say("piece"), line -> page.cut(line.species(), line.item()))
            .head("wider")
            .words(
                page.say("boner"), line -> line.boner().orElseGet(() -> page.say("month.pace.all")))
            .number(page.say("pieces"), line -> page.count(line.month().pieces()))
            .number(page.say("minutes_each"), line -> page.tenths(line.month().each().median()))
            .number(page.say("middle"), line -> page.middle(line.month().each()))
            .number(anHour, line -> anHour(Optional.of(line.month())))
            .number(
                page.label("before", page.say("minutes_each")),
                line -> page.tenths(line.before().map(pace -> pace.each().median())))
            .number(page.label("before", anHour), line -> anHour(line.before()))
            .rows(page.parts().paceLines());
    return PartView.of(page.say("pace"), table.table(), remarks());
  }

  private String anHour(Optional<Pace> pace) {
    return pace.flatMap(Pace::weightAnHour).map(weight -> page.number(weight, 0)).orElse("");
  }

  private List<String> remarks() {
    var lines = page.parts().paceLines();
    if (lines.isEmpty()) {
      return page.month().cut().isEmpty() ? List.of() : List.of(page.say("month.pace.none"));
    }
    var remarks = new ArrayList<>(List.of(page.say("month.pace.read")));
    int breaks = page.parts().pace().month().breaks();
    if (breaks > 0) {
      remarks.add(page.wording().counted("month.pace.breaks", breaks));
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
