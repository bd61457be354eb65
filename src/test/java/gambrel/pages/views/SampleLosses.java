package gambrel.pages.views;

import java.util.List;
import java.util.Map;

/** A first page, full and quiet, for samples. */
final class SampleLosses {
  private static final Words W = SampleWords.ENGLISH;

  private SampleLosses() {}

  static FirstPage firstPage() {
    return new FirstPage(
        W.say("first.counted", "14", "13", "163", "158"),
        List.of(
            new FirstPage.Row(
                W.say(
                    "finding.chiller",
                    Map.of(
                        "since", "18 March 2026",
                        "bodies", "6",
                        "species", "beef",
                        "loss", "3.41%",
                        "usual", "2.10%",
                        "bodies_before", "143",
                        "weight", "24.1 kg")),
                W.say("sure.likely"),
                W.say("step.chiller"),
                List.of(W.say("worth.customers", "$310.40"), W.say("worth.own", "$88.20"))),
            new FirstPage.Row(
                W.say(
                    "finding.paperwork.cold",
                    Map.of("lacking", "1", "bodies", "14", "which", "B-0360")),
                W.say("sure.certain"),
                W.say("step.paperwork"),
                List.of())),
        "",
        W.count("first.more", 1, "1"),
        List.of(W.say("left_out.held", "B-0360, P-0077")),
        List.of(
            new FlowView(
                List.of(
                    bar(FlowView.Kind.STAGE, "room_first", 0, 1000, "3,120.4 kg", "100.0%"),
                    bar(FlowView.Kind.LOST, "room_chill", 978, 22, "68.6 kg", "2.2%"),
                    bar(FlowView.Kind.STAGE, "room_boning", 0, 978, "3,051.8 kg", "97.8%"),
                    bar(FlowView.Kind.HOME, "room_home", 0, 690, "2,153.0 kg", "69.0%"),
                    bar(FlowView.Kind.LEFT, "room_bone", 690, 270, "842.5 kg", "27.0%"),
                    bar(FlowView.Kind.LOST, "room_bench", 960, 18, "56.3 kg", "1.8%")),
                List.of(W.count("kilos.note", 12, "12")))),
        List.of(
            new FirstPage.Five(
                List.of(
                    "March 2026", "February 2026", "March 2025", W.labels().get("thirteen_months")),
                List.of(
                    five(W.say("first.killed"), "14", "12", "", ""),
                    five(W.say("first.chill", "Beef"), "2.7%", "2.1%", "of 9", "of 11")))),
        List.of(
            SampleParts.table(
                "sums",
                "|#Bodies killed|#Bodies cut",
                List.of(
                    SampleParts.row("", W.say("summary.customers") + "|#9|#8"),
                    SampleParts.row("", W.say("summary.own") + "|#5|#5")))));
  }

  private static FlowView.Row bar(
      FlowView.Kind kind, String name, int x, int width, String weight, String share) {
    return new FlowView.Row(kind, W.say("kilos." + name), x, width, weight, share);
  }

  private static FirstPage.FiveRow five(
      String label, String now, String last, String ofNow, String ofLast) {
    return new FirstPage.FiveRow(
        label,
        List.of(
            new FirstPage.FiveCell(now, ofNow),
            new FirstPage.FiveCell(last, ofLast),
            new FirstPage.FiveCell("", "")),
        new FirstPage.Spark(
            140,
            22,
            List.of("4,18 70,9 136,4"),
            List.of(new FirstPage.Dot(4, 18, false), new FirstPage.Dot(136, 4, true))));
  }

  static FirstPage quiet() {
    return new FirstPage(
        W.say("first.counted", "0", "0", "0", "0"),
        List.of(),
        W.say("first.none"),
        "",
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }
}
