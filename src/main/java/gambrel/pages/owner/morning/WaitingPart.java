package gambrel.pages.owner.morning;

import gambrel.pages.views.MorningView.Item;
import gambrel.pages.views.MorningView.Waits;
import gambrel.pages.words.Wording;
import gambrel.trade.decision.State;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.measure.Groups;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Severity;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What waits for the owner, each thing once, with the bodies and customers that it concerns. */
final class WaitingPart {
  /** The most things of one group. */
  private static final int MOST = 300;

  private final Night night;
  private final Wording wording;
  private final ThingWords words;
  private final NoticedReasons noticed;
  private final List<BodyAccount> held;
  private final List<Thing> things;

  /**
   * A thing to do.
   *
   * @param group what it belongs to
   * @param bodies the bodies that it concerns, those that wait for it first
   * @param item the thing in words
   */
  private record Thing(Group group, List<String> bodies, Item item) {
    String first() {
      return bodies.isEmpty() ? "" : bodies.get(0);
    }
  }

  /** The groups of things, in their order. */
  private enum Group {
    /** Part of the night's work was not done. */
    STOP,
    /** A statement waits. */
    HOLD,
    /** Rows were left out, and no statement waits for them yet. */
    ROWS,
    /** It only needs a look. */
    MARK
  }

  WaitingPart(MorningReport report, Wording wording) {
    this.night = report.night();
    this.wording = wording;
    this.words = new ThingWords(report, wording);
    this.noticed = new NoticedReasons(night);
    this.held =
        night.bodies().values().stream()
            .filter(account -> account.decision().state() == State.HELD)
            .toList();
    this.things = things(report.notices().stream().filter(WaitingPart::asks).toList());
  }

  /** Notes ask for nothing; held bodies are told with their reasons. */
  private static boolean asks(Notice notice) {
    return notice.severity() != Severity.NOTE && notice.code() != NoticeCode.HELD;
  }

  /** How many bodies are held. */
  int held() {
    return held.size();
  }

  /** How many other things are worse than a mark. */
  long urgent() {
    return number(Group.STOP) + number(Group.ROWS);
  }

  /** How many things are only marks. */
  long toLookAt() {
    return number(Group.MARK);
  }

  private long number(Group group) {
    return things.stream().filter(thing -> thing.group() == group).count();
  }

  /** The groups that have things, the worst first. */
  List<Waits> groups() {
    return Stream.of(Group.values())
        .map(group -> things.stream().filter(thing -> thing.group() == group).toList())
        .filter(those -> !those.isEmpty())
        .map(this::waits)
        .toList();
  }

  private Waits waits(List<Thing> those) {
    int more = those.size() - MOST;
    return new Waits(
        wording.say("morning.group." + those.get(0).group().name().toLowerCase(Locale.ROOT)),
        once(those.stream().limit(MOST).map(Thing::item).toList()),
        more > 0 ? wording.counted("morning.more", more) : "");
  }

  /** What to do stands with the first of several things for which it is the same. */
  private static List<Item> once(List<Item> items) {
    var said = new HashSet<String>();
    return items.stream()
        .map(
            of ->
                said.add(of.advice())
                    ? of
                    : new Item(of.who(), of.message(), "", of.rows(), of.likely()))
        .toList();
  }

  private List<Thing> things(List<Notice> notices) {
    var things = new ArrayList<Thing>();
    var waiting = waitingByReason();
    var told = new TreeSet<String>(ByteOrder.IDS);
    // The rows of a conflict are one thing.
    var halves = Groups.inOrder(notices.stream(), WaitingPart::conflict);
    for (var alike : NoticeGroups.of(halves.values().stream().map(h -> h.get(0)).toList())) {
      var all = alike.stream().flatMap(n -> halves.get(conflict(n)).stream()).toList();
      var reasons = all.stream().flatMap(n -> noticed.names(n).stream()).distinct().toList();
      told.addAll(reasons);
      var bodies = new LinkedHashSet<String>();
      reasons.forEach(reason -> bodies.addAll(waiting.getOrDefault(reason, List.of())));
      boolean holds = !bodies.isEmpty();
      all.forEach(notice -> noticed.bodies(notice).sorted(ByteOrder.IDS).forEach(bodies::add));
      things.add(
          new Thing(
              group(alike.get(0).severity(), holds),
              List.copyOf(bodies),
              words.of(alike, halves.get(conflict(alike.get(0))), List.copyOf(bodies))));
    }
    for (var account : held) {
      String id = account.body().id();
      var own =
          account.decision().reasons().stream()
              .filter(reason -> !told.contains(NoticedReasons.name(id, reason)))
              .toList();
      if (!own.isEmpty()) {
        things.add(new Thing(Group.HOLD, List.of(id), words.of(account, own)));
      }
    }
    things.sort(
        Comparator.comparing(Thing::group)
            .thenComparing(
                thing -> thing.group() == Group.HOLD ? thing.first() : "", ByteOrder.IDS));
    return things;
  }

  private static Object conflict(Notice notice) {
    var first = notice.saying().values().get("first");
    return notice.code() == NoticeCode.TICKET_CONFLICT && first != null ? first : notice;
  }

  private static Group group(Severity severity, boolean holds) {
    if (severity == Severity.STOP) {
      return Group.STOP;
    }
    return holds ? Group.HOLD : severity == Severity.HOLD ? Group.ROWS : Group.MARK;
  }

  /** The held bodies by the names of what holds them. */
  private Map<String, List<String>> waitingByReason() {
    var waiting = new TreeMap<String, List<String>>(ByteOrder.IDS);
    for (var account : held) {
      String id = account.body().id();
      for (var reason : account.decision().reasons()) {
        waiting.computeIfAbsent(NoticedReasons.name(id, reason), r -> new ArrayList<>()).add(id);
      }
    }
    return waiting;
  }
}
