package gambrel.pages.views;

import static gambrel.pages.views.FlowView.Kind.HOME;
import static gambrel.pages.views.FlowView.Kind.LEFT;
import static gambrel.pages.views.FlowView.Kind.LOST;

import java.util.List;

/** A statement that is held while a ham is still in cure. */
final class SamplePork {

  private static final Words W = SampleWords.ENGLISH;

  private SamplePork() {}

  static StatementView heldPork() {
    var cuts =
        new SampleCuts()
            .cut("Shoulder roasts", 6, "11.20")
            .cut("Loin chops", 14, "10.86")
            .cut("Belly, sliced", 8, "7.44")
            .cut("Spare ribs", 4, "3.12")
            .cut("Leg steaks", 5, "4.02")
            .cut("Mince", 7, "6.38");
    var sample =
        new SampleStatement(
            W, "P-0077", W.say("animal.heading.pork", "baconer"), "Horatio Quillfeather");
    sample.known("Slap mark HQ 12", "Wednesday 4 March 2026");
    sample.issue.add(W.say("statement.draft.issue"));
    sample.draft =
        new StatementView.Draft(
            W.say("draft.sentence"),
            List.of(
                W.say("draft.reason.loss-high", "4.12 kg", "2.70 kg", "0.29 kg"),
                W.say("draft.reason.row-set-aside")));
    sample.note = "Trotters kept back for you in the freezer, top shelf.";
    sample
        .answer(
            "packs",
            W.count("packs.lead.all", cuts.packs(), "" + cuts.packs(), cuts.weight() + " kg"),
            W.say("packs.pending"))
        .answer("owe", W.say("owe.held.lead"))
        .answerTo(
            "why.question.hot",
            "why",
            W.say("why.lead.hot", "70.6 kg", cuts.weight() + " kg"),
            W.say("why.live.unknown"))
        .answer("mine", W.say("mine.lead"), W.say("mine.alone"))
        .answer(
            "rest",
            W.say("rest.lead"),
            W.say("rest.bins", "bone " + W.say("rest.left", "6.46 kg")),
            W.say("rest.unknown", "liver, skin, other offal, blood and the rest"));
    sample.flow =
        new SampleFlow("kg", "70.6")
            .stage(W.say("flow.hot"), "70.6")
            .off(W.say("flow.chill"), "69.2", "1.4")
            .stage(W.say("flow.boning"), "69.2")
            .part(HOME, W.say("flow.home"), "43.02")
            .part(HOME, W.say("flow.pending"), "15.60")
            .part(LEFT, W.say("flow.bone"), "6.46")
            .part(LOST, W.say("flow.bench"), "4.12")
            .view();
    sample.boxes = cuts.view("kg", null);
    sample.pending.add(
        new Fact(
            "Ham, in cure",
            W.say("pending.batch", "15.60 kg")
                + " "
                + W.say("pending.due", "10 April 2026")
                + " "
                + W.say("pending.revision")));
    sample.charges =
        new ChargesView(
            "AUD",
            "",
            List.of(
                new ChargesView.Section(
                    "",
                    List.of(
                        new ChargesView.Row("Cutting and packing", "1 head", "96.00", "", "96.00")),
                    List.of(
                        new ChargesView.Sum(
                            W.say(
                                "charges.tax.included",
                                W.say("charges.tax", "GST", "10%", "87.27")),
                            "8.73",
                            false),
                        new ChargesView.Sum(W.say("charges.due.held"), "96.00", true)))),
            List.of());
    return sample
        .keeping("4 °C", "−18 °C", "chops", "roasts", "mince")
        .caution("caution.sale.au", "caution.label.au", "caution.raw")
        .view();
  }
}
