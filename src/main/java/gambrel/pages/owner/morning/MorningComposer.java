package gambrel.pages.owner.morning;

import gambrel.pages.owner.ShopPart;
import gambrel.pages.views.MorningView;
import gambrel.pages.views.ShopView;
import gambrel.pages.words.Wording;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.Night;
import gambrel.trade.weighing.RowCount;
import java.util.ArrayList;
import java.util.List;

/** Puts together the morning sheet from its parts. */
public final class MorningComposer {
  private final MorningReport report;
  private final Night night;
  private final Wording wording;

  private MorningComposer(MorningReport report, Wording wording) {
    this.report = report;
    this.night = report.night();
    this.wording = wording;
  }

  /** The morning sheet of a night. */
  public static MorningView compose(MorningReport report, Wording wording) {
    return new MorningComposer(report, wording).view();
  }

  private MorningView view() {
    var settings = night.shop().settings();
    var shop = new ShopPart(settings, wording);
    var date = night.asOf().toLocalDate();
    String day = wording.formats().date(date);
    var waiting = new WaitingPart(report, wording);
    var rail = new RailPart(night, wording);
    return new MorningView(
        shop.page(
            wording.say("morning.title", day),
            wording.say("morning.running", settings.name(), day)),
        wording.words().labels(),
        new ShopView(settings.name(), List.of(), List.of()),
        wording.say("morning.title", wording.formats().day(date)),
        story(waiting, rail),
        waiting.groups(),
        rail.rail(),
        new RingPart(report, wording).ring(),
        notes());
  }

  /** What has to be done, what to cut first, and what was issued. */
  private List<String> story(WaitingPart waiting, RailPart rail) {
    var lead = new ArrayList<String>();
    if (waiting.held() > 0) {
      lead.add(wording.counted("morning.held", waiting.held()));
    }
    if (waiting.urgent() > 0) {
      lead.add(wording.counted("morning.todo", waiting.urgent()));
    }
    if (lead.isEmpty()) {
      boolean isWell = waiting.toLookAt() == 0;
      lead.add(wording.say(isWell ? "morning.well" : "morning.waits.none"));
    }
    if (waiting.toLookAt() > 0) {
      lead.add(wording.counted("morning.look", waiting.toLookAt()));
    }
    var more = rail.first();
    int issued = report.issued().size();
    more.add(
        issued == 0
            ? wording.say("morning.issued.none")
            : wording.counted("morning.issued", issued));
    return List.of(String.join(" ", lead), String.join(" ", more));
  }

  /** What was read, the number of notices for the record, and that the register is new. */
  private List<String> notes() {
    var notes = new ArrayList<>(List.of(read()));
    long noted =
        report.notices().stream()
            .filter(n -> n.severity() == Severity.NOTE && !isShownElsewhere(n.code()))
            .count();
    if (noted > 0) {
      notes.add(wording.counted("morning.notes", noted));
    }
    if (report.newRegister()) {
      notes.add(wording.say("morning.register.new"));
    }
    return notes;
  }

  private String read() {
    var formats = wording.formats();
    var files = night.ledger().rows();
    var rows = RowCount.sum(files);
    return rows.read() == 0
        ? wording.say("morning.read.none")
        : wording.counted(
            "morning.read",
            rows.read(),
            wording.counted("morning.files", files.size()),
            formats.count(rows.used()),
            formats.count(rows.repeat()),
            formats.count(rows.voided()),
            formats.count(rows.setAside()));
  }

  private static boolean isShownElsewhere(NoticeCode code) {
    return code == NoticeCode.REGISTER_NEW || code == NoticeCode.LIKELY_CAUSE;
  }
}
