package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.ArrayList;
import java.util.List;

/** Months of few and of many bodies. */
final class SampleMonth {

  private static final Words W = SampleWords.ENGLISH;
  private static final Counted NONE = new Counted("", "");

  private SampleMonth() {}

  static SummaryView month(int bodies) {
    var rows = new ArrayList<SummaryView.BodyRow>();
    var shrink = new int[bodies];
    for (var i = 0; i < bodies; i++) {
      shrink[i] = 190 + i * 53 % 70 + (i == 7 ? 150 : 0);
      rows.add(bodyRow(i, shrink[i]));
    }
    return new SummaryView(
        page(W.say("summary.title", "March 2026"), "March 2026"),
        W.labels(),
        SampleStatement.SHOP,
        "March 2026",
        W.say("summary.known", "2 April 2026, 02:00"),
        SampleLosses.firstPage(),
        List.of(
            W.count("summary.killed", bodies, "" + bodies, "beef 9, lamb 2, pork 3"),
            W.count("summary.cut", 13, "13", "2,914.6 kg", "1,994.32 kg", "68.4%"),
            W.say(
                "summary.lost",
                W.say("summary.customers"),
                W.say("summary.lost.chill", "62.4 kg") + ", " + W.say("summary.lost.bench", "35.18 kg")),
            W.say("summary.left", "885.10 kg")),
        held(),
        shrinkGroups(),
        SampleLosses.chapter(),
        List.of(SampleChart.of("beef", shrink)),
        SampleChapters.yields(yieldGroups()),
        SampleChapters.pace(),
        SampleChapters.value(),
        List.of(
            new SummaryView.BatchRow(
                "S-12", "Beef sausages", "61.40", "6.90", "67.12", "1.18", "1.7", "balances"),
            new SummaryView.BatchRow(
                "H-3", "Ham, in cure", "15.60", "1.20", "", "", "", "open, due 10 April")),
        SampleChapters.money(
        SampleChapters.weights(bodies),
        List.of(
            new Fact(W.say("summary.total.charges"), "$4,310.20"),
            new Fact(W.say("summary.total.tax"), "$431.02"),
            new Fact(W.say("summary.total.paid"), "$4,200.28"),
            new Fact(W.say("summary.total.due"), "$540.94"))),
        SampleLosses.year(),
        rows,
        "",
        "kg",
        "AUD");
  }

  /** A month in which little happened and less is known. */
  static SummaryView emptyMonth() {
    return new SummaryView(
        page(W.say("summary.title", "April 2026"), "April 2026"),
        W.labels(),
        SampleStatement.SHOP,
        "April 2026",
        W.say("summary.known", "2 May 2026, 02:00"),
        SampleLosses.quiet(),
        List.of(W.say("summary.killed.none"), W.say("summary.held.none")),
        List.of(),
        List.of(),
        new ShrinkChapter(
            List.of(),
            List.of(),
            List.of(),
            new ShrinkChapter.Chiller(List.of(), List.of()),
            List.of(),
            List.of()),
        List.of(),
        SampleChapters.noYields(),
        SampleChapters.noPace(),
        SampleChapters.noValue(),
        List.of(),
        SampleChapters.noMoney(),
        new YearChapter("", List.of()),
        List.of(),
        "",
        "",
        "");
  }

  static List<Held> held() {
    return List.of(
        new Held(
            "P-0077, pork",
            "Horatio Quillfeather",
            "4.12 kg is missing in the boning room, 6.0% of the weight into it; the limit is 3.0%.",
            "Look for a tub or a pack that was not weighed; or release it in releases.csv."),
        new Held(
            "B-0360, beef",
            "Windrow Lane Boning Room",
            "The cold weight is missing.",
            "Add the weighing in an export, or release it in releases.csv."));
  }

  private static List<SummaryView.ShrinkGroup> shrinkGroups() {
    return List.of(
        new SummaryView.ShrinkGroup(
            W.say("summary.customers"),
            List.of(
                new SummaryView.ShrinkRow(
                    "Beef",
                    new Counted("2.1", "9"),
                    "58.3",
                    new Counted("2.0", "6"),
                    "38.0",
                    new Counted("1.2", "8"),
                    "29.88"),
                new SummaryView.ShrinkRow(
                    "Lamb",
                    new Counted("1.9", "2"),
                    "2.7",
                    NONE,
                    "",
                    new Counted("0.9", "2"),
                    "1.18"))),
        new SummaryView.ShrinkGroup(
            W.say("summary.own"),
            List.of(
                new SummaryView.ShrinkRow(
                    "Pork",
                    new Counted("2.0", "2"),
                    "1.4",
                    NONE,
                    "",
                    new Counted("6.0", "1"),
                    "4.12"))));
  }

  private static List<YieldsChapter.YieldGroup> yieldGroups() {
    return List.of(
        new YieldsChapter.YieldGroup(
            W.say("summary.customers"),
            List.of(
                new YieldsChapter.YieldRow(
                    "Beef",
                    new Counted("56.2", "5"),
                    new Counted("68.4", "8"),
                    new Counted("65.0", "8"),
                    new Counted("18.7", "8"),
                    new Counted("8.2", "8")),
                new YieldsChapter.YieldRow(
                    "Lamb",
                    new Counted("51.5", "2"),
                    new Counted("86.9", "2"),
                    new Counted("86.9", "2"),
                    new Counted("9.3", "2"),
                    new Counted("2.9", "2")))),
        new YieldsChapter.YieldGroup(
            W.say("summary.own"),
            List.of(
                new YieldsChapter.YieldRow(
                    "Pork",
                    NONE,
                    new Counted("62.2", "1"),
                    new Counted("62.2", "1"),
                    NONE,
                    NONE))));
  }

  private static SummaryView.BodyRow bodyRow(int i, int shrink) {
    var owners =
        List.of(
            "Aroha Ngātuere",
            "Zdzisław Grzęda",
            "Trustees of the Estate of W. Featherstonehaugh-Ravenscroft",
            "Ines Plover");
    var waits = i % 11 == 5;
    return new SummaryView.BodyRow(
        "B-0" + (300 + i),
        owners.get(i % owners.size()),
        "beef, steer",
        1 + i % 30 + " Mar",
        "345.5",
        "338.4",
        "331.2",
        waits ? "" : "231.44",
        waits ? "" : "3.94",
        SampleCuts.text(shrink, 2),
        waits ? "" : "1.2",
        waits ? "" : "68.4",
        W.say(waits ? "summary.state.held" : "summary.state.issued"),
        waits);
  }

  static PageView page(String title, String when) {
    return new PageView(
        "en-AU",
        false,
        title,
        W.say("summary.running", SampleStatement.SHOP.name(), when),
        SampleStatement.SHOP.name());
  }
}
