package gambrel.ownerpages;

import gambrel.register.MorningReport;
import gambrel.statement.MorningView;
import gambrel.wording.Wording;

/** Puts together the morning sheet from its parts. */
public final class MorningComposer {
  private MorningComposer() {}

  /** The morning sheet of a night. */
  public static MorningView compose(MorningReport report, Wording wording) {
    var night = report.night();
    var settings = night.shop().settings();
    var shop = new ShopPart(settings, wording);
    var date = night.asOf().toLocalDate();
    String day = wording.formats().date(date);
    var held = new HeldPart(night, report.causes(), wording).of(night.bodies().values());
    var todo = new TodoPart(report.notices(), wording);
    var files = new FilesPart(night, wording);
    var story = new NightStory(report, wording);
    return new MorningView(
        shop.page(
            wording.say("morning.title", day),
            wording.say("morning.running", settings.name(), day)),
        wording.words().labels(),
        shop.shop(),
        wording.formats().opening(wording.formats().day(date)),
        story.sentences(held.size(), todo),
        held,
        todo.todo(),
        new IssuedPart(report, wording).issued(),
        files.rows(),
        files.total(),
        story.notes());
  }
}
