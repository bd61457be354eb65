package gambrel.pages.explain;

import gambrel.insight.cause.LikelyCauses;
import gambrel.insight.cause.Suggestion;
import gambrel.trade.balance.BatchBalance;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.RailWeights;
import gambrel.trade.decision.Reason;
import gambrel.trade.measure.Exact;
import gambrel.trade.measure.Weight;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Outcome;
import java.math.BigDecimal;
import java.util.List;
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

  /** The explanation of a body; empty if the shop has no such body. */
  public static Optional<List<String>> of(Night night, String body) {
    return of(night, LikelyCauses.NONE, body);
  }

  /** As above, with what probably went wrong. */
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
    new PaperExplanation(night, account.body(), lines).add();
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
    lines.weight("live", account.body().liveWeight(), "bodies.csv, live_weight");
    step("hot", balance.hot(), balance.rail().hot());
    step("cold", balance.cold(), balance.rail().cold());
    step("aged", balance.rail().aged().weight(), balance.rail().aged());
    lines.weight(
        "boning",
        balance.boning(),
        balance.fromBlock()
            ? "no rail weights: sum of the topmost block weights"
            : "each part's latest standing rail weight",
        balance.boningWeighings());
  }

  private void step(String name, Optional<Weight> weight, RailWeights weights) {
    String formula = "sum of the standing " + name + " weights";
    lines.weight(name, weight, formula, weights.weighings());
  }

  private void shrink() {
    var shares = balance.shares();
    lines.share("dressing_pct", shares.dressing(), "hot / live");
    lines.share(
        "chill_shrink_pct", shares.chillShrink(), "(hot - cold - rail trim before cold) / hot");
    lines.weighings(balance.trim().beforeCold().stream());
    lines.share(
        "ageing_shrink_pct",
        shares.ageingShrink(),
        "(cold - aged - rail trim after cold) / cold, over the parts that were aged");
    lines.weighings(balance.trim().afterCold().stream());
    boolean cut = account.body().outcome() == Outcome.CUT;
    var rail = balance.weighings().rail();
    lines.figure(
        "days_hung",
        balance.daysHung().map(BigDecimal::valueOf),
        cut ? "killed to the first cut" : "killed to the last rail weighing");
    lines.weighings(
        cut ? balance.cuts().stream().limit(1) : rail.stream().skip(Math.max(0, rail.size() - 1)));
    lines.figure(
        "hours_chilled",
        balance.hoursChilled().map(hours -> Exact.round(hours, 3)),
        "last hot to last cold weighing");
  }

  private void pieces() {
    if (!balance.pieces().isEmpty()) {
      lines.heading("Pieces weighed on the block");
    }
    for (var piece : balance.pieces()) {
      lines.weight(piece.item(), Optional.of(piece.block()), "on the block", piece.weighings());
      lines.weight("  came of it", piece.out(), "packs, tubs and bins of it and all under it");
      lines.weight("  loss", piece.loss(), "block - what came of it");
    }
  }

  private void batch(BatchBalance batch) {
    lines.heading("Batch " + batch.batch().id() + ", " + batch.state().id());
    lines.weight("meat in", Optional.of(batch.meatIn()), "tubs of all bodies");
    lines.weight("added", Optional.of(batch.added()), "added, with gain the surplus too");
    lines.weight("out", Optional.of(batch.out()), "packs of the batch");
    lines.weight("loss", batch.loss(), "meat in + added - out");
    lines.weight(
        "part of this body",
        batch.isOpen() ? Optional.empty() : Optional.of(batch.partOf(account.body().id())),
        "out * meat in / (meat in + added), divided by the meat put in",
        batch.weighings());
  }
}
