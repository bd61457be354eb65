package gambrel.pages.statement;

import gambrel.pages.views.Fact;
import java.util.ArrayList;
import java.util.List;

/** Answers "Is this my animal?": the heading and the facts below it. */
final class AnimalPart {

  private AnimalPart() {}

  static String heading(StatementContext subject) {
    var body = subject.body();
    var wording = subject.wording();
    String species = wording.say("species." + body.species().id());
    String category = wording.category(body);
    boolean named = !category.isEmpty() && !category.equalsIgnoreCase(species);
    String kind = named ? wording.say("animal.heading", species, category) : species;
    return subject.isMob()
        ? wording.say("animal.mob", kind, subject.formats().count(body.head()))
        : kind;
  }

  /**
   * Facts about the animal. Only owners of a share see its mark, since a mark may name its owner.
   */
  static List<Fact> facts(StatementContext subject) {
    var body = subject.body();
    var wording = subject.wording();
    var facts = new ArrayList<Fact>();
    if (!body.mark().isEmpty() && !subject.isOutrightOnly()) {
      facts.add(new Fact(wording.say("animal.mark"), body.mark()));
    }
    body.killed()
        .ifPresent(
            day -> facts.add(new Fact(wording.say("animal.killed"), subject.formats().day(day))));
    facts.add(new Fact(wording.say("animal.number"), body.id()));
    if (!subject.isOutrightOnly()) {
      subject
          .balance()
          .daysHung()
          .filter(days -> days > 0)
          .ifPresent(days -> facts.add(new Fact(wording.say("animal.hung"), days(subject, days))));
    }
    if (subject.isSharer()) {
      facts.add(new Fact(wording.say("animal.share"), subject.share()));
    }
    return facts;
  }

  private static String days(StatementContext subject, int days) {
    return subject.wording().count("animal.hung.days", days, subject.formats().count(days));
  }
}
