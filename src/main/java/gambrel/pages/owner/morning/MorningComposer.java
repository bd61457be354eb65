package gambrel.pages.owner.morning;

import gambrel.pages.owner.HeldPart;
import gambrel.pages.owner.ShopPart;
import gambrel.pages.views.MorningView;
import gambrel.pages.words.Wording;
import java.util.List;

/** Puts together the morning sheet from its parts. */
public final class MorningComposer {
  /** Nobody works through more in a morning; a night that rebuilds ten years has thousands. */
  public static final int MOST_ROWS = 300;

  private MorningComposer() {}

  /** The morning sheet of a night. */
  public static MorningView compose(MorningReport report, Wording wording) {
    var night = report.night();
    var settings = night.shop().settings();
    var shop = new ShopPart(settings, wording);
    var date = night.asOf().toLocalDate();
    String day = wording.formats().date(date);
    var waiting = HeldPart.among(night.bodies().values());
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
        story.sentences(waiting.size(), todo),
        new HeldPart(night, report.causes(), wording).of(first(waiting)),
        more("morning.held.more", waiting, wording),
        todo.todo(),
        new IssuedPart(report, wording).of(first(report.issued())),
        more("morning.issued.more", report.issued(), wording),
        files.rows(),
        files.total(),
        story.notes());
  }

  private static <T> List<T> first(List<T> all) {
    return all.subList(0, Math.min(all.size(), MOST_ROWS));
  }

  private static String more(String key, List<?> all, Wording wording) {
    int more = all.size() - MOST_ROWS;
    return more > 0 ? wording.count(key, more, wording.formats().count(more)) : "";
  }
}
