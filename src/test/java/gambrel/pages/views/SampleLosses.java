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
        List.of(
            SampleParts.table(
                "five",
                "|#March 2026|#|#March 2025|#|#Twelve months before|#",
                false,
                List.of(
                    SampleParts.row("", W.say("first.killed") + "|#14|#|#12|#|#163|#"),
                    SampleParts.row(
                        "", W.say("first.chill", "Beef") + "|#2.7%|#of 9|#|#|#2.1%|#of 143")))));
  }

  static FirstPage quiet() {
    return new FirstPage(
        W.say("first.counted", "0", "0", "0", "0"), List.of(), W.say("first.none"), "", List.of());
  }
}
