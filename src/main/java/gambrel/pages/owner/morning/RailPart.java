package gambrel.pages.owner.morning;

import gambrel.pages.owner.Names;
import gambrel.pages.views.MorningView.Hanging;
import gambrel.pages.views.MorningView.OnBlock;
import gambrel.pages.views.MorningView.Rail;
import gambrel.pages.views.MorningView.Unpacked;
import gambrel.pages.words.Formats;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.decision.ReasonCode;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Unfinished;
import gambrel.trade.reckoning.Unfinished.CutBy;
import gambrel.trade.shop.Settings.Bins;
import gambrel.trade.weighing.Weighing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What hangs, is on the block, and is in batches that are not packed yet. */
final class RailPart {
  private static final int MOST_NAMES = 4;

  /** The most hanging bodies with a row, so that a normal week fits one page. */
  static final int MOST_HANGING = 16;

  private static final Comparator<Unfinished> DUE_FIRST =
      Comparator.comparing((Unfinished body) -> day(body).orElse(LocalDate.MAX))
          .thenComparing(body -> body.account().body().killed().orElse(LocalDate.MAX))
          .thenComparing(body -> body.account().body().id(), ByteOrder.IDS);
  private static final Comparator<BatchBalance> PACKED_FIRST =
      Comparator.comparing((BatchBalance batch) -> batch.batch().due().orElse(LocalDate.MAX))
          .thenComparing(batch -> batch.batch().id(), ByteOrder.IDS);

  private final Night night;
  private final Wording wording;
  private final Formats formats;
  private final Names names;
  private final LocalDate today;
  private final List<Unfinished> hanging;
  private final List<Unfinished> onBlock;

  RailPart(Night night, Wording wording) {
    this.night = night;
    this.wording = wording;
    this.formats = wording.formats();
    this.names = new Names(night, wording);
    this.today = night.asOf().toLocalDate();
    var unfinished = Unfinished.of(night);
    this.hanging = unfinished.stream().filter(Unfinished::isHanging).sorted(DUE_FIRST).toList();
    this.onBlock = unfinished.stream().filter(Unfinished::isBeingCut).toList();
  }

  private static Optional<LocalDate> day(Unfinished body) {
    return body.cutBy().map(CutBy::day);
  }

  private boolean isDue(Unfinished body) {
    return day(body).filter(day -> !day.isAfter(today)).isPresent();
  }

  /** The part. */
  Rail rail() {
    int hung = decimals(hanging, BodyBalance::boningWeighings, Unfinished::standing);
    int boning = decimals(onBlock, BodyBalance::boningWeighings, Unfinished::standing);
    int cut = decimals(onBlock, BodyBalance::outOfBoning, body -> Optional.of(body.cut()));
    return new Rail(
        hanging.stream().limit(MOST_HANGING).map(body -> hanging(body, hung)).toList(),
        hanging.stream().anyMatch(body -> !body.account().body().chiller().isEmpty()),
        hangingNote(),
        onBlock.stream().map(body -> onBlock(body, boning, cut)).toList(),
        restNote(),
        night.batches().values().stream()
            .filter(BatchBalance::isOpen)
            .sorted(PACKED_FIRST)
            .map(this::unpacked)
            .toList());
  }

  /** The bodies to finish, those to cut today or, if none is due, the one to cut next. */
  List<String> first() {
    var first = new ArrayList<String>();
    sentence("morning.cut.finish", onBlock.stream().filter(RailPart::isPartCut))
        .ifPresent(first::add);
    var due = sentence("morning.cut.now", hanging.stream().filter(this::isDue));
    due.or(this::next).ifPresent(first::add);
    return first;
  }

  private Optional<String> sentence(String key, Stream<Unfinished> bodies) {
    var named = bodies.map(this::named).toList();
    return named.isEmpty()
        ? Optional.empty()
        : Optional.of(wording.counted(key, named.size(), wording.names(named, MOST_NAMES)));
  }

  private Optional<String> next() {
    return hanging.stream()
        .findFirst()
        .flatMap(
            body ->
                day(body)
                    .map(day -> wording.say("morning.cut.next", named(body), formats.day(day))));
  }

  private static boolean isPartCut(Unfinished body) {
    return body.account().decision().reasons().stream()
        .anyMatch(reason -> reason.code() == ReasonCode.PART_CUT);
  }

  private String named(Unfinished body) {
    return names.ofBody(body.account().body().id());
  }

  private Hanging hanging(Unfinished body, int decimals) {
    var of = body.account().body();
    return new Hanging(
        of.id() + ", " + names.kind(of),
        names.owners(of),
        of.chiller(),
        of.killed().map(formats::brief).orElse(""),
        body.days().map(formats::count).orElse(""),
        body.standing().map(weight -> formats.weight(weight, decimals)).orElse(""),
        body.cutBy().map(this::cutBy).orElse(""),
        isDue(body));
  }

  /** Which more hang, and what the usual days are. */
  private String hangingNote() {
    var notes = new ArrayList<String>();
    if (hanging.size() > MOST_HANGING) {
      var later = hanging.stream().skip(MOST_HANGING).map(body -> body.account().body().id());
      notes.add(wording.say("morning.hanging.more", later.collect(Collectors.joining(", "))));
    }
    if (hanging.stream().anyMatch(body -> usualDays(body).isPresent())) {
      notes.add(wording.say("morning.usual.note"));
    }
    return String.join(" ", notes);
  }

  private static Optional<Integer> usualDays(Unfinished body) {
    return body.cutBy().flatMap(CutBy::usualDays);
  }

  private String cutBy(CutBy due) {
    String brief = formats.brief(due.day());
    String day = due.day().isBefore(today) ? wording.say("morning.due.late", brief) : brief;
    return due.usualDays()
        .map(days -> wording.counted("morning.due.usual", days, day))
        .orElseGet(() -> wording.say("morning.due.asked", day));
  }

  private OnBlock onBlock(Unfinished body, int boning, int cut) {
    var of = body.account().body();
    return new OnBlock(
        of.id() + ", " + names.kind(of),
        names.owners(of),
        body.account()
            .balance()
            .lastCut()
            .map(time -> formats.brief(time.toLocalDate()))
            .orElse(""),
        body.standing().map(weight -> formats.weight(weight, boning)).orElse(""),
        formats.weight(body.cut(), cut),
        rest(body, cut));
  }

  /** What an open body waits for: the rest of it, its batches, or quiet hours. */
  private String rest(Unfinished body, int decimals) {
    var waits = new ArrayList<String>();
    for (var reason : body.account().decision().reasons()) {
      waits.add(
          reason.code() == ReasonCode.PART_CUT
              ? rest(body.rest(), decimals)
              : wording.say("morning.rest.batch", reason.name()));
    }
    return waits.isEmpty()
        ? wording.counted("morning.rest.quiet", night.shop().settings().quietHours())
        : formats.opening(String.join(", ", waits));
  }

  private String rest(Optional<Weight> rest, int decimals) {
    String key = isWeighed() ? "morning.rest.least" : "morning.rest.usual";
    return rest.map(weight -> wording.say(key, formats.weight(weight, decimals)))
        .orElseGet(() -> wording.say("morning.rest"));
  }

  private boolean isWeighed() {
    return night.shop().settings().bins() == Bins.WEIGHED;
  }

  private String restNote() {
    return onBlock.stream().noneMatch(body -> body.rest().isPresent())
        ? ""
        : wording.say(isWeighed() ? "morning.rest.least.note" : "morning.rest.usual.note");
  }

  private Unpacked unpacked(BatchBalance batch) {
    var of = batch.batch();
    var unit = night.shop().settings().unit();
    int decimals = WeightDecimals.of(batch.weighings(), unit);
    var whose = batch.meatInByBody().keySet().stream().map(names::ofBody).toList();
    return new Unpacked(
        of.product().isEmpty() ? of.id() : of.id() + ", " + of.product(),
        wording.names(whose, MOST_NAMES),
        batch.weighings().stream().findFirst().map(w -> formats.brief(w.date())).orElse(""),
        formats.fitting(batch.meatIn(), decimals),
        of.due().map(formats::brief).orElse(""));
  }

  /** The decimals of all weights of a column, so that they stand under each other. */
  private int decimals(
      List<Unfinished> bodies,
      Function<BodyBalance, List<Weighing>> weighings,
      Function<Unfinished, Optional<Weight>> weight) {
    var all =
        bodies.stream().flatMap(b -> weighings.apply(b.account().balance()).stream()).toList();
    int least = WeightDecimals.of(all, night.shop().settings().unit());
    return WeightDecimals.fitting(
        least, bodies.stream().flatMap(body -> weight.apply(body).stream()).toList());
  }
}
