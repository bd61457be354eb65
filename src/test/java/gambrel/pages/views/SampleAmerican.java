package gambrel.pages.views;

import static gambrel.pages.views.FlowView.Kind.HOME;
import static gambrel.pages.views.FlowView.Kind.LOST;

/** A statement in pounds on letter paper, of a shop that weighs no bins. */
final class SampleAmerican {

  private SampleAmerican() {}

  static StatementView american() {
    var w = SampleWords.AMERICAN;
    var cuts =
        new SampleCuts()
            .group("Forequarter")
            .cut("Blade roasts and steaks", 14, "33.90")
            .cut("Arm pot roasts", 12, "35.50")
            .cut("Rib steaks", 9, "9.20")
            .cut("Short ribs", 5, "8.60")
            .group("Hindquarter")
            .cut("Porterhouse steaks", 14, "19.60")
            .cut("T-bone steaks", 8, "9.80")
            .cut("Top round", 12, "34.60")
            .cut("Sirloin tip", 6, "16.80")
            .group("Ground beef")
            .cut("Ground beef", w.say("boxes.batch.alone"), 154, "153.60");
    var sample =
        new SampleStatement(
            w,
            "1187",
            w.say("animal.heading", w.say("species.beef"), "cow"),
            "Zdzisław & Thảo Grzęda-Nguyễn");
    sample.letter = true;
    sample.known("Brand bar over J", "Tuesday, March 10, 2026").issued("March 24, 2026", 1);
    sample
        .answer(
            "packs", w.count("packs.lead", cuts.packs(), "" + cuts.packs(), cuts.weight() + " lb"))
        .answer("owe", w.say("owe.paid.lead"), w.say("owe.charges", "$612.40"))
        .answer(
            "why",
            w.say("why.lead", "1012 lb", cuts.weight() + " lb"),
            w.say("why.dressing", "52.0%"),
            w.say("why.water"))
        .answer(
            "normal",
            w.say("normal.lead.outside", "8", "cow"),
            w.say("normal.take_home", "62.6%", w.say("normal.ours", "63.0%", "66.1%"))
                + " "
                + w.say("normal.below"),
            w.say("normal.one_in_twenty"),
            w.say("normal.depends"))
        .answer("mine", w.say("mine.lead"), w.say("mine.alone"))
        .rest(
            "rest.lead",
            new Fact(w.say("rest.offal"), w.say("rest.none")),
            new Fact(w.say("rest.bone"), w.say("rest.none")),
            new Fact(w.say("rest.fat"), w.say("rest.none")));
    sample.flow =
        new SampleFlow("lb", "1012")
            .stage(w.say("flow.live"), "1012", "")
            .off(w.say("flow.dressing"), "526.2", "485.8", w.say("flow.of.live", "48.0%"))
            .stage(w.say("flow.hot"), "526.2", w.say("flow.of.live", "52.0%"))
            .off(w.say("flow.chill"), "513.8", "12.4", w.say("flow.of.hot", "2.4%"))
            .stage(w.say("flow.boning"), "513.8", "100.0%")
            .part(HOME, w.say("flow.home"), "321.60", "62.6%")
            .part(LOST, w.say("flow.unweighed"), "192.20", "37.4%")
            .view(w.say("flow.base"));
    String rule = w.say("caution.cattle.age", "41") + " " + w.say("caution.cattle.us");
    String packed = "Rib steaks; Porterhouse steaks; T-bone steaks";
    cuts.rule(w.say("boxes.vertebra", packed) + " " + rule);
    sample.boxes = cuts.view("lb", null);
    sample.keeping("40 °F", "0 °F", "steaks", "roasts", "mince");
    return sample
        .caution("caution.sale.us", "caution.label", "caution.raw", "caution.local")
        .view();
  }
}
