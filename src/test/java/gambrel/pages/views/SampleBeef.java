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
        new SampleStatement(W, "B-0341", W.say("animal.heading.beef", "steer"), "Aroha Ngātuere");
    sample.known("GB 0417, left ear", "Tuesday 10 March 2026").issued("28 March 2026", revision);
    sample.animal.add(new Fact(W.say("animal.hung"), W.count("animal.hung.days", 14, "14")));
    steerAnswers(sample, cuts);
    sample.flow = steerFlow();
    sample.boxes = cuts.view("kg", steerOffal());
    sample.charges = steerCharges();
    return sample
        .keeping("4 °C", "−18 °C", "steaks", "roasts", "mince", "sausage", "offal")
        .caution("caution.sale.au", "caution.label.au", "caution.raw");
  }

  private static void steerAnswers(SampleStatement sample, SampleCuts cuts) {
    sample
        .answer(
            "packs",
            W.count("packs.lead.all", cuts.packs() + 5, "" + (cuts.packs() + 5), "243.3 kg"),
            W.say(
                "packs.parts",
                W.say("packs.part.bone", "231.44 kg")
                    + ", "
                    + W.say("packs.part.offal", "9.86 kg")
                    + ", "
                    + W.say("packs.part.added", "2.00 kg")))
        .answer(
            "owe",
            W.say("owe.by.lead", "$399.04", "11 April 2026"),
            W.say("pay.reference", "Bank transfer to 000-000, account 12 345", "17"),
            W.say("owe.payments", "$200.00"),
            W.say("owe.all", W.count("owe.others", 2, "2", "$120.00"), "$519.04"))
        .answer(
            "why",
            W.say("why.lead.guessed", "612 kg", "231.4 kg"),
            W.say("why.of_cold", "68.4%", "338.4 kg"),
            W.say(
                "why.on_top",
                W.say("packs.part.offal", "9.86 kg") + ", " + W.say("packs.part.added", "2.00 kg")))
        .answer(
            "normal",
            W.say(
                "normal.lead.usual",
                W.say("normal.name.bench") + ", " + W.say("normal.name.take_home"),
                "20",
                "steer"),
            W.say("normal.bench", "0.9%", W.say("normal.ours", "0.4%", "1.7%")),
            W.say("normal.take_home", "68.4%", W.say("normal.ours", "64.9%", "71.2%")),
            W.say("normal.like"))
        .answer(
            "mine",
            W.say("mine.lead.mixed"),
            W.say("mine.batch", "Beef sausages", W.count("mine.batch.others", 2, "2")),
            W.say("mine.added", "Beef sausages", "rice flour, salt, pepper, water"));
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
        .cut("Mince", 72, "67.96")
        .cut(
            "Beef sausages",
            W.say("packs.part.meat", "24.36 kg") + ", " + W.say("packs.part.added", "2.00 kg"),
            26,
            "26.36")
        .cut("Bones for the dog", 8, "12.20");
  }

  private static CutsView.Group steerOffal() {
    return new CutsView.Group(
        W.say("boxes.offal"),
        List.of(
            new CutsView.Row("Liver", "", "3", "6.14"),
            new CutsView.Row("Heart", "", "1", "2.08"),
            new CutsView.Row("Tongue", "", "1", "1.64")));
  }

  private static FlowView steerFlow() {
    return new SampleFlow("kg", "612")
        .stage(W.say("flow.live.guessed"), "612")
        .off(W.say("flow.dressing"), "345.5", "266.5")
        .stage(W.say("flow.hot"), "345.5")
        .off(W.say("flow.chill"), "338.4", "7.1")
        .stage(W.say("flow.cold"), "338.4")
        .off(W.say("flow.ageing"), "331.2", "7.2")
        .stage(W.say("flow.boning"), "331.2")
        .part(HOME, W.say("flow.home"), "231.44")
        .part(LEFT, W.say("flow.bone"), "61.84")
        .part(LEFT, W.say("flow.fat"), "27.36")
        .part(LEFT, W.say("flow.waste"), "6.20")
        .part(LOST, W.say("flow.bench"), "3.94")
        .part(LOST, W.say("flow.batch"), "0.42")
        .view(
            W.say("rest.known", W.say("rest.offal.packed", "9.86 kg"))
                + " "
                + W.say("rest.unknown", "head and feet, blood and the rest"));
  }

  private static ChargesView steerCharges() {
    return new ChargesView(
        "AUD",
        "",
        List.of(
            new ChargesView.Section(
                "",
                List.of(
                    new ChargesView.Row("Killing and dressing", "1 head", "120.00", "", "120.00"),
                    new ChargesView.Row("Cutting and packing", "331.2 kg", "1.10", "", "364.32"),
                    new ChargesView.Row("Making sausages", "24.36 kg", "3.50", "", "85.26")),
                List.of(
                    new ChargesView.Sum(W.say("charges.net"), "569.58", false),
                    new ChargesView.Sum(
                        W.say("charges.tax", "GST", "10%", "569.58"), "56.96", false),
                    new ChargesView.Sum(W.say("charges.total"), "626.54", false))),
            new ChargesView.Section(
                W.say("charges.bought"),
                List.of(new ChargesView.Row("Hide", "1 head", "−27.50", "", "−27.50")),
                List.of()),
            new ChargesView.Section(
                "",
                List.of(),
                List.of(
                    new ChargesView.Sum(W.say("charges.paid", "12 March 2026"), "−200.00", false),
                    new ChargesView.Sum(W.say("charges.due.left"), "399.04", true)))),
        List.of(W.say("charges.packs.batches", "Beef sausages")));
  }
}
