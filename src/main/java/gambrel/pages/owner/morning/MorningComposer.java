package gambrel.pages.owner.morning;

import gambrel.pages.owner.HeldPart;
import gambrel.pages.owner.Names;
import gambrel.pages.owner.ShopPart;
import gambrel.pages.views.MorningView;
import gambrel.pages.views.MorningView.FileRow;
import gambrel.pages.views.MorningView.Issued;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.account.Entitlement;
import gambrel.trade.decision.State;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.RegisterRow;
import gambrel.trade.weighing.RowCount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts together the morning sheet from its parts. */
public final class MorningComposer {
  /** The most rows of a list. A night that rebuilds ten years has thousands. */
  public static final int MOST_ROWS = 300;

  private static final int MOST_NAMES = 12;
  private static final int FEW_FILES = 20;
  private static final int RECENT_DAYS = 2;

  private final MorningReport report;
  private final Night night;
  private final Wording wording;
  private final Names names;

  private MorningComposer(MorningReport report, Wording wording) {
    this.report = report;
    this.night = report.night();
    this.wording = wording;
    this.names = new Names(night, wording);
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
    var held = HeldPart.among(night.bodies().values());
    var todo = new TodoPart(report.notices(), wording);
    var counts = night.ledger().rows();
    return new MorningView(
        shop.page(
            wording.say("morning.title", day),
            wording.say("morning.running", settings.name(), day)),
        wording.words().labels(),
        shop.shop(),
        wording.formats().opening(wording.formats().day(date)),
        sentences(held.size(), todo),
        new HeldPart(night, report.causes(), wording).of(first(held)),
        more("morning.held.more", held),
        todo.todo(),
        first(report.issued()).stream().map(this::issued).toList(),
        more("morning.issued.more", report.issued()),
        files(counts),
        file(counts.isEmpty() ? "" : wording.say("total"), sum(counts)),
        notes());
  }

  private static <T> List<T> first(List<T> all) {
    return all.subList(0, Math.min(all.size(), MOST_ROWS));
  }

  private String more(String key, List<?> all) {
    int more = all.size() - MOST_ROWS;
    return more > 0 ? wording.counted(key, more) : "";
  }

  /** A statement that was issued last night. */
  private Issued issued(RegisterRow row) {
    var account = Optional.ofNullable(night.bodies().get(row.body()));
    var unit = night.shop().settings().unit();
    int decimals =
        account.map(a -> WeightDecimals.of(a.balance().weighings().out(), unit)).orElse(0);
    // A customer who only gets packs by name has nothing to pay.
    boolean free =
        account
            .map(a -> a.entitlements().get(row.customer()))
            .filter(Entitlement::isOutrightOnly)
            .isPresent();
    String revision = wording.formats().count(row.revision());
    return new Issued(
        names.customer(row.customer()),
        row.body(),
        row.revision() == 1 ? "" : wording.say("morning.revision", revision),
        wording.formats().fitting(row.takeHome(), decimals),
        free ? "" : wording.formats().money(row.due()));
  }

  /**
   * The export files that were read. If there are many, the old ones without a row set aside are
   * one row together.
   */
  private List<FileRow> files(List<RowCount> counts) {
    var recent = recent();
    var byShown =
        counts.stream()
            .collect(
                Collectors.partitioningBy(
                    count ->
                        counts.size() <= FEW_FILES
                            || count.setAside() > 0
                            || recent.contains(count.file())));
    var rows = new ArrayList<>(byShown.get(true).stream().map(c -> file(c.file(), c)).toList());
    var rest = byShown.get(false);
    if (!rest.isEmpty()) {
      rows.add(file(wording.counted("morning.files.rest", rest.size()), sum(rest)));
    }
    return rows;
  }

  /** Files with a weighing of last night's day or of the days before it that count as recent. */
  private Set<String> recent() {
    var from = night.asOf().toLocalDate().minusDays(RECENT_DAYS);
    return night.ledger().weighings().stream()
        .filter(weighing -> !weighing.date().isBefore(from))
        .map(weighing -> weighing.place().file())
        .collect(Collectors.toSet());
  }

  private FileRow file(String file, RowCount count) {
    var formats = wording.formats();
    return new FileRow(
        file,
        formats.count(count.read()),
        formats.count(count.used()),
        formats.count(count.repeat()),
        formats.count(count.voided()),
        formats.count(count.setAside()));
  }

  /** What has to be done, then what was issued and what was read. */
  private List<String> sentences(int held, TodoPart todo) {
    var lead = new ArrayList<String>();
    if (held > 0) {
      lead.add(wording.counted("morning.held", held));
    }
    if (todo.urgent() > 0) {
      lead.add(wording.counted("morning.todo", todo.urgent()));
    }
    if (lead.isEmpty()) {
      lead.add(wording.say("morning.well"));
    }
    if (todo.toLookAt() > 0) {
      lead.add(wording.counted("morning.look", todo.toLookAt()));
    }
    int issued = report.issued().size();
    return List.of(
        String.join(" ", lead),
        issued == 0
            ? wording.say("morning.issued.none")
            : wording.counted("morning.issued", issued),
        read());
  }

  private String read() {
    var formats = wording.formats();
    var files = night.ledger().rows();
    var rows = sum(files);
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

  /** The rows of some files together. */
  private static RowCount sum(List<RowCount> counts) {
    return new RowCount(
        "",
        counts.stream().mapToInt(RowCount::used).sum(),
        counts.stream().mapToInt(RowCount::repeat).sum(),
        counts.stream().mapToInt(RowCount::voided).sum(),
        counts.stream().mapToInt(RowCount::setAside).sum());
  }

  /** Open bodies, the number of notices for the record, and that the register is new. */
  private List<String> notes() {
    var notes = new ArrayList<String>();
    var open =
        night.bodies().values().stream()
            .filter(account -> account.decision().state() == State.OPEN)
            .map(account -> account.body().id())
            .toList();
    if (!open.isEmpty()) {
      String names = wording.names(open, MOST_NAMES);
      notes.add(
          wording.counted("morning.open", open.size())
              + " "
              + wording.say("morning.open.names", names));
    }
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

  private static boolean isShownElsewhere(NoticeCode code) {
    return code == NoticeCode.REGISTER_NEW || code == NoticeCode.LIKELY_CAUSE;
  }
}
