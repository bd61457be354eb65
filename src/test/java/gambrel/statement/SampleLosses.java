package gambrel.statement;

import gambrel.statement.SummaryView.Counted;
import java.util.List;

/** A first page, a chapter on losses and a year, for samples. */
final class SampleLosses {
  private static final Words W = SampleWords.ENGLISH;
  private static final Counted NONE = new Counted("", "");

  private SampleLosses() {}

  static FirstPage firstPage() {
    return new FirstPage(
        W.say("first.counted", "14", "13", "163", "158"),
        List.of(
            new FirstPage.Row(
                W.say(
                    "finding.chiller",
                    "18 March 2026",
                    "6",
                    "beef",
                    "3.41%",
                    "2.10%",
                    "143",
                    "24.1 kg"),
                W.say("sure.likely"),
                W.say("step.chiller"),
                List.of(W.say("worth.customers", "$310.40"), W.say("worth.own", "$88.20"))),
            new FirstPage.Row(
                W.say("finding.paperwork.cold", "1", "14", "B-0360"),
                W.say("sure.certain"),
                W.say("step.paperwork"),
                List.of())),
        "",
        W.count("first.more", 1, "1"),
        "March 2026",
        "March 2025",
        List.of(
            new FirstPage.Figure(
                W.say("first.killed"),
                new Counted("14", ""),
                new Counted("12", ""),
                new Counted("163", "")),
            new FirstPage.Figure(
                W.say("first.chill", "Beef"),
                new Counted("2.7%", "9"),
                NONE,
                new Counted("2.1%", "143"))));
  }

  static FirstPage quiet() {
    return new FirstPage(
        W.say("first.counted", "0", "0", "0", "0"),
        List.of(),
        W.say("first.none"),
        "",
        "",
        "",
        List.of());
  }

  static ShrinkChapter chapter() {
    return new ShrinkChapter(
        List.of(
            new ShrinkChapter.Group(
                W.say("shrink.group", W.say("summary.customers"), W.say("shrink.loss.chill")),
                List.of(
                    new ShrinkChapter.Row(
                        "Beef",
                        "58.3",
                        "752.07",
                        new Counted("2.1", "9"),
                        new Counted("2.0", "143"),
                        "1.8 to 2.3"),
                    new ShrinkChapter.Row(
                        "Lamb", "2.7", "", new Counted("1.9", "2"), NONE, "")))),
        List.of(
            new ShrinkChapter.Hanging(
                "Beef", "10 to 16", new Counted("0.14", "61"), "0.11 to 0.17", "0.41", "5.29")),
        List.of(further()),
        new ShrinkChapter.Chiller(
            List.of(
                new ShrinkChapter.Kind(
                    "Beef", W.say("summary.chart.centre", W.say("number.percent", "2.10")))),
            List.of(
                new ShrinkChapter.Day(
                    "4 Mar",
                    List.of(
                        new ShrinkChapter.Cell(new Counted("2.05", "4"), false))),
                new ShrinkChapter.Day(
                    "18 Mar",
                    List.of(new ShrinkChapter.Cell(new Counted("3.41", "5"), true))))),
        List.of(W.say("shrink.hours", "Beef", "18", "30")),
        List.of(new Fact(W.say("weights.live"), W.say("weights.of", "11", "14"))));
  }

  private static ShrinkChapter.Further further() {
    String between = W.say("surely_between");
    var none = new ShrinkChapter.Ranged("", "");
    return new ShrinkChapter.Further(
        W.say("summary.customers"),
        List.of(
            new ShrinkChapter.Ranged(W.say("further.lost", "kg"), between),
            new ShrinkChapter.Ranged(W.say("further.worth", "EUR"), between),
            new ShrinkChapter.Ranged(W.say("further.charged", "EUR"), W.say("further.middle"))),
        List.of(
            new ShrinkChapter.FurtherRow(
                "Beef",
                "48",
                "12",
                List.of(
                    new ShrinkChapter.Ranged("0.41", "0.32 to 0.50"),
                    new ShrinkChapter.Ranged("5.29", "4.13 to 6.45"),
                    new ShrinkChapter.Ranged("3.00", ""))),
            new ShrinkChapter.FurtherRow(
                "Lamb", "3", "6", List.of(none, none, new ShrinkChapter.Ranged("0.50", "")))),
        List.of(W.say("further.few", "8", "3")));
  }

  static YearChapter year() {
    return new YearChapter(
        W.say("year.title", "2026"),
        List.of(
            new YearChapter.Group(
                "Beef",
                List.of(
                    new YearChapter.Row(
                        "March 2026", "9", "2,780.0", "2.1", "2.0", "8", "1.2", "68.4"),
                    new YearChapter.Row(
                        W.say("total"), "9", "2,780.0", "2.1", "2.0", "8", "1.2", "68.4")))));
  }
}
