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
            .cut("Ground beef", 154, "153.60");
    var sample =
        new SampleStatement(
            w, "1187", w.say("animal.heading.beef", "cow"), "Zdzisław & Thảo Grzęda-Nguyễn");
    sample.letter = true;
    sample.known("Brand bar over J", "Tuesday, March 10, 2026").issued("March 24, 2026", 1);
    sample
        .answer(
            "packs",
            w.count("packs.lead.all", cuts.packs(), "" + cuts.packs(), cuts.weight() + " lb"))
        .answer("owe", w.say("owe.paid.lead"), w.say("owe.payments", "$612.40"))
        .answer("why", w.say("why.lead", "1012 lb", cuts.weight() + " lb"))
        .answer(
            "normal",
            w.say("normal.lead.outside", "8", "cow"),
            w.say("normal.take_home", "62.6%", w.say("normal.ours", "63.0%", "66.1%"))
                + " "
                + w.say("normal.below"),
            w.say("normal.like"))
        .answer("mine", w.say("mine.lead"), w.say("mine.alone"));
    sample.flow =
        new SampleFlow("lb", "1012")
            .stage(w.say("flow.live"), "1012")
            .off(w.say("flow.dressing"), "526.2", "485.8")
            .stage(w.say("flow.hot"), "526.2")
            .off(w.say("flow.chill"), "513.8", "12.4")
            .stage(w.say("flow.boning"), "513.8")
            .part(HOME, w.say("flow.home"), "321.60")
            .part(LOST, w.say("flow.unweighed"), "192.20")
            .view();
    String packed = "Rib steaks; Porterhouse steaks; T-bone steaks";
    sample.cautions.add(
        String.join(
            " ",
            w.say("caution.vertebra", packed),
            w.say("caution.cattle.age", "41"),
            w.say("caution.cattle.us")));
    sample.boxes = cuts.view("lb", null);
    sample.keeping("40 °F", "0 °F", "steaks", "roasts", "mince");
    return sample.caution("caution.sale.us", "caution.label.us", "caution.raw").view();
  }
}
