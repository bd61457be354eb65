package gambrel.pages.views;

import static gambrel.pages.views.FlowView.Kind.HOME;
import static gambrel.pages.views.FlowView.Kind.LEFT;
import static gambrel.pages.views.FlowView.Kind.LOST;

import java.util.List;
import java.util.Optional;

/** Statements of a mob whose owners share it, and of a lamb that leaves as it hung. */
final class SampleLamb {

  private static final Words W = SampleWords.ENGLISH;

  private SampleLamb() {}

  static StatementView halfMob() {
    var cuts =
        new SampleCuts()
            .group(W.say("boxes.group.outright"))
            .cut("Leg roasts, boned and rolled", 2, "4.36")
            .group("Your half")
            .cut("Shoulder roasts", -1, "11.42")
            .cut("Forequarter chops", -1, "7.85")
            .cut("Cutlets", -1, "6.20")
            .cut("Loin chops", -1, "9.34")
            .cut("Leg steaks", -1, "12.18")
            .cut("Breast and flap", -1, "5.06")
            .cut("Mince", -1, "3.72")
            .title("Your half");
    var sample =
        new SampleStatement(
            W, "L-0102", W.say("animal.mob", W.say("species.lamb"), "6"), "Muirne Ó Cathasaigh");
    sample.known("Blue notch, tags 31 to 36", "Monday 2 March 2026").issued("6 March 2026", 1);
    sample.animal.add(new Fact(W.say("animal.share"), "1/2"));
    sample
        .answer(
            "packs",
            W.say("packs.share.lead", "62.5 kg", W.say("yours.1/2")),
            W.count("packs.outright", 2, "2", "4.4 kg"),
            W.count("packs.of_whole.all", 98, "98", "120.7 kg"))
        .answer("owe", W.say("owe.due.lead", "$141.90"), W.say("owe.part", W.say("yours.1/2")))
        .answer(
            "why",
            W.say("why.whole.mob", W.say("why.lead", "264 kg", "115.9 kg")),
            W.say("why.yours", "60.15 kg"),
            W.say("why.on_top", W.say("packs.part.offal", "2.38 kg")))
        .answer(
            "normal",
            W.say("normal.lead.published"),
            W.say(
                "normal.dressing",
                "51.5%",
                W.say("normal.published", "50%", "53%", "shorn, Univ. of Kentucky ASC-179")))
        .answer(
            "mine", W.say("mine.lead.mob", "6"), W.say("mine.alone.mob"), W.say("mine.divided"));
    sample.flow = mobFlow();
    sample.boxes =
        cuts.view(
            "kg",
            new CutsView.Group(
                W.say("boxes.offal"),
                List.of(new CutsView.Row("Liver and kidneys", "", "", "2.38"))),
            W.say("boxes.divided"));
    sample.charges =
        new ChargesView(
            W.say("charges.yours", "Your half", "AUD"),
            W.say("charges.in_all"),
            List.of(
                new ChargesView.Section(
                    "",
                    List.of(
                        new ChargesView.Row(
                            "Cutting and packing", "6 head", "43.00", "258.00", "129.00")),
                    List.of(
                        new ChargesView.Sum(
                            W.say("charges.tax", "GST", "10%", "129.00"), "12.90", false),
                        new ChargesView.Sum(W.say("charges.due.left"), "141.90", true)))),
            List.of(W.say("charges.part")));
    return sample
        .keeping("4 °C", "−18 °C", "chops", "roasts", "mince", "offal")
        .caution("caution.sale.au", "caution.label.au", "caution.raw")
        .view();
  }

  private static FlowView mobFlow() {
    return new SampleFlow("kg", "264")
        .stage(W.say("flow.live"), "264")
        .off(W.say("flow.dressing"), "135.9", "128.1")
        .stage(W.say("flow.hot"), "135.9")
        .off(W.say("flow.chill"), "133.3", "2.6")
        .stage(W.say("flow.boning"), "133.3")
        .part(HOME, W.say("flow.home"), "115.90")
        .part(LEFT, W.say("flow.bone"), "12.34")
        .part(LEFT, W.say("flow.fat"), "3.88")
        .part(LOST, W.say("flow.bench"), "1.18")
        .view(W.say("rest.known", W.say("rest.offal.packed", "4.76 kg")));
  }

  static StatementView wholeLamb() {
    var sample =
        new SampleStatement(W, "L-0110", W.say("animal.heading.lamb", "wether"), "Ines Plover");
    sample.known("Red tag 8", "Thursday 12 March 2026").issued("14 March 2026", 1);
    sample
        .answer("packs", W.say("packs.whole.lead", "21.6 kg"), W.say("packs.whole"))
        .answer("owe", W.say("owe.credit.lead", "$4.00"))
        .answer("why", W.say("why.lead.whole", "43 kg", "21.6 kg"))
        .answer("mine", W.say("mine.lead"), W.say("mine.alone"));
    sample.flow =
        new SampleFlow("kg", "43")
            .stage(W.say("flow.live"), "43")
            .off(W.say("flow.dressing"), "22.0", "21.0")
            .stage(W.say("flow.hot"), "22.0")
            .off(W.say("flow.chill"), "21.6", "0.4")
            .fromStart(HOME, W.say("flow.home"), "21.6")
            .view();
    sample.boxes =
        new CutsView(
            W.say("boxes.title"),
            "",
            "kg",
            List.of(
                List.of(
                    new CutsView.Column(
                        List.of(
                            new CutsView.Group(
                                "",
                                List.of(
                                    new CutsView.Row(W.say("boxes.whole"), "", "", "21.6"))))))),
            Optional.empty(),
            List.of());
    return sample.caution("caution.label.au").view();
  }
}
