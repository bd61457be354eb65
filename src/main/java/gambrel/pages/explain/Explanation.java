package gambrel.pages.explain;

import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.cause.Suggestion;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.RailWeights;
import gambrel.trade.decision.Reason;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.rows.CorrectedRows.AppliedCorrection;
import gambrel.trade.rows.Field;
import gambrel.trade.shop.Release;
import gambrel.trade.weighing.SetAside;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Traces every figure of a body to file, line and ticket. */
public final class Explanation {
  private final Night night;
  private final BodyAccount account;
  private final BodyBalance balance;
  private final Lines lines;

  private Explanation(Night night, BodyAccount account) {
    this.night = night;
    this.account = account;
    this.balance = account.balance();
    this.lines = new Lines(night.ledger().corrections());
  }

  /**
   * The explanation of a body; empty if the shop has no such body.
   *
   * @param causes what probably went wrong
   */
  public static Optional<List<String>> of(Night night, LikelyCauses causes, String body) {
    return Optional.ofNullable(night.bodies().get(body))
        .map(account -> new Explanation(night, account).lines(causes.of(body)));
  }

  private List<String> lines(List<Suggestion> suggestions) {
    body();
    suggestions.forEach(this::likely);
    rail();
    shrink();
    new OutputsExplanation(account, night.shop().settings(), lines).add();
    pieces();
    balance.batches().forEach(this::batch);
    account.customers().forEach(c -> new CustomerExplanation(night, account, lines, c).add());
    papers();
    return lines.all();
  }

  private void body() {
    var body = account.body();
    var category = body.category().isEmpty() ? "" : ", " + body.category();
    var state = account.decision().state().id();
    lines.heading("Body %s (%s%s), %s".formatted(body.id(), body.species().id(), category, state));
    lines.text("unit of all weights: " + night.shop().settings().unit().id());
    body.killed().ifPresent(day -> lines.text("killed " + day + "  bodies.csv"));
    account.decision().reasons().forEach(r -> lines.text("waits: " + words(r)));
    account.decision().released().forEach(r -> lines.text("released: " + words(r)));
  }

  private static String words(Reason reason) {
    return (reason.code().id() + " " + reason.name()).strip()
        + ": "
        + NoticeWords.ENGLISH.of(reason.saying());
  }

  private void likely(Suggestion suggestion) {
    lines.text("likely cause: " + NoticeWords.ENGLISH.of(suggestion.evidence()));
    if (suggestion.lines().isEmpty()) {
      lines.text("  " + NoticeWords.ENGLISH.advice(suggestion.evidence()));
    } else {
      lines.text("  for corrections.csv, with who and when:");
      suggestion.lines().forEach(line -> lines.text("  " + NoticeWords.ENGLISH.of(line)));
    }
  }

  private void rail() {
    lines.heading("On the rail");
    lines.figure("live", account.body().liveWeight(), "bodies.csv, live_weight");
    step("hot", balance.hot(), balance.rail().hot());
    step("cold", balance.cold(), balance.rail().cold());
    step("aged", balance.rail().aged().weight(), balance.rail().aged());
    lines.figure(
        "boning",
        balance.boning(),
        balance.fromBlock()
            ? "no rail weights: sum of the topmost block weights"
            : "each part's latest standing rail weight",
        balance.boningWeighings());
  }

  private void step(String name, Optional<Weight> weight, RailWeights weights) {
    String formula = "sum of the standing " + name + " weights";
    lines.figure(name, weight, formula, weights.weighings());
  }

  private void shrink() {
    var shares = balance.shares();
    lines.figure("dressing_pct", shares.dressing(), "hot / live");
    lines.figure(
        "chill_shrink_pct",
        shares.chillShrink(),
        "(hot - cold - rail trim before cold) / hot",
        balance.trim().beforeCold());
    lines.figure(
        "ageing_shrink_pct",
        shares.ageingShrink(),
        "(cold - aged - rail trim after cold) / cold, over the parts that were aged",
        balance.trim().afterCold());
    boolean cut = account.body().isCut();
    var rail = balance.weighings().rail();
    lines.figure(
        "days_hung",
        balance.daysHung(),
        cut ? "killed to the first cut" : "killed to the last rail weighing",
        cut
            ? balance.cuts().stream().limit(1).toList()
            : rail.subList(Math.max(0, rail.size() - 1), rail.size()));
    lines.figure("hours_chilled", balance.hoursChilled(), "last hot to last cold weighing");
  }

  private void pieces() {
    if (!balance.pieces().isEmpty()) {
      lines.heading("Pieces weighed on the block");
    }
    for (var piece : balance.pieces()) {
      lines.figure(piece.item(), piece.block(), "on the block", piece.weighings());
      lines.figure("  came of it", piece.out(), "packs, tubs and bins of it and all under it");
      lines.figure("  loss", piece.loss(), "block - what came of it");
    }
  }

  private void batch(BatchBalance batch) {
    lines.heading("Batch " + batch.batch().id() + ", " + batch.state().id());
    lines.figure("meat in", batch.meatIn(), "tubs of all bodies");
    lines.figure("added", batch.added(), "added, with gain the surplus too");
    lines.figure("out", batch.out(), "packs of the batch");
    lines.figure("loss", batch.loss(), "meat in + added - out");
    lines.figure(
        "part of this body",
        batch.isOpen() ? Optional.empty() : batch.partOf(account.body().id()),
        "out * meat in / (meat in + added), divided by the meat put in",
        batch.weighings());
  }

  /** Releases of the body, and rows that name it and do not count for it. */
  private void papers() {
    lines.section(
        "Releases",
        night.shop().releases().stream()
            .filter(r -> r.body().equals(account.body().id()) && !r.on().isAfter(night.asOf()))
            .map(Explanation::words));
    lines.section(
        "Rows that a correction took away from it",
        night.ledger().corrections().stream()
            .filter(applied -> applied.takesFrom(account.body()))
            .map(Explanation::words));
    lines.section(
        "Rows set aside that name it",
        night.ledger().setAside().stream()
            .filter(row -> row.bodies().contains(account.body().id()))
            .map(Explanation::words));
  }

  private static String words(Release release) {
    return "%s by %s on %s: %s  %s"
        .formatted(
            release.action().name().toLowerCase(Locale.ROOT),
            release.by(),
            release.on().toLocalDateTime(),
            release.reason(),
            release.place());
  }

  private static String words(AppliedCorrection applied) {
    var row = applied.row();
    return "%s  %s ticket %s  %s"
        .formatted(row.place(), row.get(Field.SCALE), row.get(Field.TICKET), Lines.words(applied));
  }

  private static String words(SetAside aside) {
    var notice = aside.notice();
    return "%s  %s ticket %s  %s  %s"
        .formatted(
            notice.place(),
            notice.scale(),
            notice.ticket(),
            notice.code().id(),
            NoticeWords.ENGLISH.message(notice));
  }
}
