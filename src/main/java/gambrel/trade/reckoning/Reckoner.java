package gambrel.trade.reckoning;

import gambrel.trade.account.Sharing;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.decision.Decider;
import gambrel.trade.decision.Reason;
import gambrel.trade.decision.Releases;
import gambrel.trade.measure.ByteOrder;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.shop.Payment;
import gambrel.trade.shop.Release;
import gambrel.trade.shop.Shop;
import gambrel.trade.weighing.Ledger;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Computes a shop's night. A release covers the reasons that hold a body when today's folder is
 * computed at the release's own moment, so the moment of each release is computed too, and that of
 * a close where it may cover something.
 */
public final class Reckoner {
  private final Shop shop;
  private final List<ExportFile> files;
  private final Progress progress;
  private final Map<OffsetDateTime, Reckoning> reckonings = new HashMap<>();

  /** For a shop folder and its exports, in path order. */
  public Reckoner(Shop shop, List<ExportFile> files) {
    this(shop, files, Progress.NONE);
  }

  /** As above, and reports to {@code progress}. */
  public Reckoner(Shop shop, List<ExportFile> files, Progress progress) {
    this.shop = shop;
    this.files = files;
    this.progress = progress;
  }

  /** The night at {@code asOf}. */
  public Night at(OffsetDateTime asOf) {
    var moment = local(asOf);
    var reckoning = reckoning(moment, progress);
    var releases = new Releases(shop.releases(), moment);
    var decider = new Decider(reckoning.judge(), releases);
    computeReleases(reckoning, releases);
    var notices = new FigureNotices(reckoning);
    var released = new HashMap<String, Set<Reason>>();
    for (String id : reckoning.balances().keySet()) {
      released.put(id, released(id, releases, notices));
      released.get(id).addAll(closed(reckoning.balances().get(id), decider));
      if (!reckoning.balances().get(id).isPacked()) {
        releases.of(id, Release.Action.CLOSE).forEach(notices::unused);
      }
    }
    var bodies = new TreeMap<String, BodyAccount>(ByteOrder.IDS);
    reckoning.balances().values().parallelStream()
        .map(balance -> account(balance, reckoning, decider, released))
        .toList()
        .forEach(account -> bodies.put(account.body().id(), account));
    bodies.values().forEach(notices::about);
    return new Night(
        shop,
        moment,
        reckoning.ledger(),
        reckoning.batches(),
        bodies,
        notices.all(),
        shop.payments().stream().collect(Collectors.groupingBy(Payment::body)));
  }

  private OffsetDateTime local(OffsetDateTime moment) {
    return moment.atZoneSameInstant(shop.settings().zone()).toOffsetDateTime();
  }

  private static BodyAccount account(
      BodyBalance balance,
      Reckoning reckoning,
      Decider decider,
      Map<String, Set<Reason>> released) {
    String id = balance.body().id();
    var entitlements = Sharing.of(balance);
    var bill = reckoning.bills().get(id);
    var decision = decider.decide(balance, bill, entitlements, released.get(id));
    return new BodyAccount(balance, entitlements, bill, decision);
  }

  /** Computes the moments of the releases of all bodies, each once. */
  private void computeReleases(Reckoning reckoning, Releases releases) {
    var moments =
        reckoning.balances().keySet().stream()
            .flatMap(body -> releases.of(body, Release.Action.RELEASE).stream())
            .map(release -> local(release.on()))
            .filter(on -> !reckonings.containsKey(on))
            .distinct()
            .toList();
    if (!moments.isEmpty()) {
      var computed = progress.begin(Progress.Stage.RELEASES, moments.size());
      for (var moment : moments) {
        reckoning(moment, Progress.NONE);
        computed.accept(1);
      }
    }
  }

  private Set<Reason> released(String body, Releases releases, FigureNotices notices) {
    var released = new HashSet<Reason>();
    for (var release : releases.of(body, Release.Action.RELEASE)) {
      var on = local(release.on());
      var then = reckoning(on, Progress.NONE);
      var decider = new Decider(then.judge(), new Releases(shop.releases(), on));
      var covered = decider.releasable(then.balances().get(body), then.bills().get(body));
      if (covered.isEmpty()) {
        notices.unused(release);
      }
      released.addAll(covered);
    }
    return released;
  }

  /**
   * What the closes of a body cover: that it gave too little, if it was below its usual share and
   * open for that. Whoever closes it says that this is all.
   */
  private Set<Reason> closed(BodyBalance balance, Decider decider) {
    return decider.closes(balance).stream()
        .map(close -> reckoning(local(close.on()), Progress.NONE))
        .flatMap(t -> t.judge().homeLow(t.balances().get(balance.body().id()), true).stream())
        .collect(Collectors.toSet());
  }

  private Reckoning reckoning(OffsetDateTime moment, Progress reported) {
    return reckonings.computeIfAbsent(
        moment,
        m -> {
          long rows = files.stream().mapToLong(file -> file.rows().size()).sum();
          var done = reported.begin(Progress.Stage.ROWS, rows);
          return Reckoning.of(shop, Ledger.of(files, shop, m, done), m, reported);
        });
  }
}
