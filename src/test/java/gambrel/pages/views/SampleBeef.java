package gambrel.pages.views;

import static gambrel.pages.views.FlowView.Kind.HOME;
import static gambrel.pages.views.FlowView.Kind.LEFT;
import static gambrel.pages.views.FlowView.Kind.LOST;

import java.util.List;

/** Statements of a steer of which everything is known: the first, and a revision of it. */
final class SampleBeef {

  private static final Words W = SampleWords.ENGLISH;

  private SampleBeef() {}

  static StatementView full() {
    return steer(1).view();
  }

  static StatementView revision() {
    var sample = steer(2);
    sample.changes =
        new TextTable(
            W.say("changes.sentence", "2", "1", "27 March 2026"),
            List.of(W.say("changes.item"), W.say("changes.was"), W.say("changes.now")),
            List.of(
                List.of("Rump steaks", "11 packs, 9.42 kg", "12 packs, 10.24 kg"),
                List.of("Take-home", "230.62 kg", "231.44 kg"),
                List.of("Bench loss (drip, evaporation, not weighed)", "4.76 kg", "3.94 kg")),
            "");
    return sample.view();
  }

  private static SampleStatement steer(int revision) {
    var cuts = steerCuts();
    var sample =
        new SampleStatement(
            W, "B-0341", W.say("animal.heading", W.say("species.beef"), "steer"), "Aroha Ngātuere");
    sample.known("GB 0417, left ear", "Tuesday 10 March 2026").issued("28 March 2026", revision);
    sample.animal.add(new Fact(W.say("animal.hung"), W.count("animal.hung.days", 14, "14")));
    steerAnswers(sample, cuts);
    sample.flow = steerFlow();
    sample.boxes = cuts.view("kg", steerOffal(), W.say("boxes.offal.outside"));
    sample.charges = steerCharges();
    return sample
        .keeping("4 °C", "−18 °C", "steaks", "roasts", "mince", "sausage", "offal")
        .caution("caution.sale.au", "caution.label", "caution.raw", "caution.local");
  }

  private static void steerAnswers(SampleStatement sample, SampleCuts cuts) {
    sample
        .answer(
            "packs",
            W.count("packs.lead", cuts.packs(), "" + cuts.packs(), "231.44 kg"),
            W.say("packs.meat", "219.24 kg", "12.20 kg"),
            W.count("packs.offal", 5, "5", "9.86 kg"))
        .answer(
            "owe",
            W.say("owe.due.lead", "$399.04"),
            W.say("owe.charges.tax", "$544.58", "GST", "$54.46"),
            W.say("owe.payments", "$200.00"))
        .answer(
            "why",
            W.say("why.lead.guessed", "612 kg", "231.44 kg"),
            W.say("why.dressing.guessed", "56.5%"),
            W.say("why.water"))
        .answer(
            "normal",
            W.say(
                "normal.lead.usual",
                W.say("normal.name.bench") + ", " + W.say("normal.name.take_home"),
                "20",
                "steer"),
            W.say("normal.bench", "0.9%", W.say("normal.ours", "0.4%", "1.7%")),
            W.say("normal.take_home", "68.4%", W.say("normal.ours", "64.9%", "71.2%")),
            W.say("normal.one_in_twenty"),
            W.say("normal.depends"))
        .answer(
            "mine",
            W.say("mine.lead.mixed"),
            W.count("mine.batch.mixed", 2, "Beef sausages", "2", "24.36 kg"),
            W.say("mine.added", "Beef sausages", "rice flour, salt, pepper, water"))
        .rest(
            "rest.lead",
            new Fact(W.say("rest.offal"), W.say("rest.packed", "9.86 kg")),
            new Fact(W.say("rest.bone"), W.say("rest.packed.left", "12.20 kg", "61.84 kg")),
            new Fact(W.say("rest.fat"), W.say("rest.left", "27.36 kg")),
            new Fact(W.say("rest.waste"), W.say("rest.left", "6.20 kg")),
            new Fact(W.say("rest.hide"), W.say("rest.kept")),
            new Fact(W.say("rest.head"), W.say("rest.slaughter")));
  }

  private static SampleCuts steerCuts() {
    return new SampleCuts()
        .group("Forequarter")
        .cut("Chuck steaks", 12, "11.86")
        .cut("Blade roasts", 6, "9.42")
        .cut("Blade steaks", 8, "7.64")
        .cut("Brisket, rolled", 4, "8.96")
        .cut("Short ribs", 6, "7.22")
        .cut("Cube roll steaks", 12, "7.88")
        .cut("Shin, diced", 8, "8.14")
        .group("Hindquarter")
        .cut("Porterhouse steaks", 14, "9.36")
        .cut("Eye fillet", 4, "4.42")
        .cut("Rump steaks", 12, "10.24")
        .cut("Topside roasts", 6, "13.18")
        .cut("Silverside, corned", 4, "11.02")
        .cut("Knuckle steaks", 8, "8.46")
        .cut("Flank and skirt", 3, "2.74")
        .cut("Shank, sliced on the bone", 6, "6.38")
        .group("Mince, sausages, bones")
        .cut("Mince", W.say("boxes.batch.alone"), 72, "67.96")
        .cut("Beef sausages", W.count("boxes.batch.mixed", 2, "2"), 26, "24.36")
        .cut("Bones for the dog", 8, "12.20");
  }

  private static CutsView.Group steerOffal() {
    return new CutsView.Group(
        W.say("boxes.offal"),
        List.of(
            new CutsView.Row("Liver", "", "3", "6.14", ""),
            new CutsView.Row("Heart", "", "1", "2.08", ""),
            new CutsView.Row("Tongue", "", "1", "1.64", "")));
  }

  private static FlowView steerFlow() {
    return new SampleFlow("kg", "612")
        .stage(W.say("flow.live.guessed"), "612", "")
        .off(W.say("flow.dressing"), "345.5", "266.5", W.say("flow.of.live.guessed", "43.5%"))
        .stage(W.say("flow.hot"), "345.5", W.say("flow.of.live.guessed", "56.5%"))
        .off(W.say("flow.chill"), "338.4", "7.1", W.say("flow.of.hot", "2.1%"))
        .stage(W.say("flow.cold"), "338.4", W.say("flow.of.hot", "97.9%"))
        .off(W.say("flow.ageing"), "331.2", "7.2", W.say("flow.of.cold", "2.1%"))
        .stage(W.say("flow.boning"), "331.2", "100.0%")
        .part(HOME, W.say("flow.home"), "231.44", "69.9%")
        .part(LEFT, W.say("flow.bone"), "61.84", "18.7%")
        .part(LEFT, W.say("flow.fat"), "27.36", "8.2%")
        .part(LEFT, W.say("flow.waste"), "6.20", "1.9%")
        .part(LOST, W.say("flow.bench"), "3.94", "1.2%")
        .part(LOST, W.say("flow.batch"), "0.42", "0.1%")
        .view(W.say("flow.base"), W.say("flow.offal", "9.86 kg"));
  }

  private static ChargesView steerCharges() {
    return new ChargesView(
        "AUD",
        "",
        List.of(
            new ChargesView.Row("Killing and dressing", "1 head", "120.00", "", "120.00"),
            new ChargesView.Row("Cutting and packing", "331.2 kg", "1.10", "", "364.32"),
            new ChargesView.Row("Making sausages", "24.36 kg", "3.50", "", "85.26"),
            new ChargesView.Row("Hide, taken in payment", "1 head", "−25.00", "", "−25.00")),
        List.of(
            new ChargesView.Sum(W.say("charges.net"), "544.58", false),
            new ChargesView.Sum(W.say("charges.tax", "GST", "10%"), "54.46", false),
            new ChargesView.Sum(W.say("charges.total"), "599.04", false),
            new ChargesView.Sum(W.say("charges.paid", "12 March 2026"), "−200.00", false),
            new ChargesView.Sum(W.say("charges.due"), "399.04", true)),
        List.of(),
        List.of());
  }
}
