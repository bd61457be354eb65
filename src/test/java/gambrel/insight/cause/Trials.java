package gambrel.insight.cause;

import gambrel.files.folder.ShopReader;
import gambrel.trade.cuts.Species;
import gambrel.trade.decision.State;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.RowCells;
import gambrel.trade.shop.Correction;
import gambrel.trade.shop.Shop;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/** Makes one mistake in each of some clean shops and compares the suggestions with the truth. */
final class Trials {
  static final OffsetDateTime AS_OF = OffsetDateTime.parse("2026-06-30T02:00:00Z");

  private final Path folder;

  Trials(Path folder) {
    this.folder = folder;
  }

  /** Counts of what was suggested first for the body that fails. */
  static final class Score {
    int passing;
    int failing;
    int first;
    int exact;
    int silent;

    /** Suggestions, of any body, that put another body further from the usual. */
    int harming;

    void add(Score other) {
      passing += other.passing;
      failing += other.failing;
      first += other.first;
      exact += other.exact;
      silent += other.silent;
      harming += other.harming;
    }

    int suggested() {
      return failing - silent;
    }

    String line(String name) {
      return String.format(
          "| %s | %d | %d | %d | %d | %d | %d |",
          name, passing, failing, suggested(), first, exact, harming);
    }
  }

  /** A shop's night and its exports. */
  record Found(Night night, List<ExportFile> exports) {
    LikelyCauses causes() {
      return LikelyCauses.of(night, exports);
    }

    /** The night with corrections. */
    Night corrected(List<Correction> corrections) {
      var shop = night.shop();
      var then =
          new Shop(
              shop.settings(),
              shop.cuts(),
              shop.ranges(),
              shop.foods(),
              shop.customers(),
              shop.bodies(),
              shop.codes(),
              shop.scales(),
              shop.bench(),
              shop.charges(),
              shop.values(),
              shop.batches(),
              shop.payments(),
              corrections,
              shop.releases(),
              shop.unread());
      return new Reckoner(then, exports).at(night.asOf());
    }
  }

  Found look(CleanShop shop) {
    return look(shop, null);
  }

  private Found look(CleanShop shop, Set<String> only) {
    var read = shop(shop);
    var exports =
        shop.exports(
            r ->
                only == null
                    || only.contains(r.body)
                    || !r.batch.isEmpty() && only.contains(r.batch));
    return new Found(new Reckoner(read, exports).at(AS_OF), exports);
  }

  private Shop shop(CleanShop shop) {
    return ShopReader.read(shop.write(folder), new ArrayList<>());
  }

  /**
   * Damages a shop until a body fails, {@code tries} times at most; counts what is suggested then.
   */
  void damage(Damage damage, long seed, int tries, Score score) {
    for (int attempt = 0; attempt < tries; attempt++) {
      var shop = new CleanShop(seed);
      var truth =
          damage.happen(shop, new SplittableRandom(seed * 1000 + damage.ordinal() * 50L + attempt));
      if (truth.isEmpty()) {
        continue;
      }
      shop.number();
      boolean hook = damage == Damage.UNKNOWN_HOOK;
      if (!hook && failing(look(shop, touched(truth.get())).night()).isEmpty()) {
        score.passing++;
        continue;
      }
      score.failing++;
      var found = look(shop);
      String body =
          hook
              ? truth.get().owner()
              : failing(found.night()).orElseThrow(() -> new AssertionError(damage + " " + seed));
      score(truth.get(), found, body, score, damage + " seed " + seed);
      return;
    }
  }

  private static Set<String> touched(Damage.Truth truth) {
    var touched = new HashSet<String>(Set.of(truth.owner()));
    for (var row : truth.rows()) {
      touched.add(row.body);
      touched.add(row.batch);
    }
    // A body and its batch share their number.
    List.copyOf(touched).stream()
        .filter(id -> !id.isEmpty())
        .forEach(id -> List.of("M", "B", "P").forEach(l -> touched.add(l + id.substring(1))));
    touched.remove("");
    return touched;
  }

  /** The first body that is held, or whose cold weight is above its hot one. */
  private static Optional<String> failing(Night night) {
    return night.bodies().values().stream()
        .filter(
            a ->
                a.decision().state() == State.HELD
                    || a.balance()
                        .shares()
                        .chillShrink()
                        .filter(shrink -> shrink.part().isNegative())
                        .isPresent())
        .map(a -> a.body().id())
        .findFirst();
  }

  private static void score(
      Damage.Truth truth, Found found, String body, Score score, String where) {
    var causes = found.causes();
    var suggestions = causes.of(body);
    boolean first = !suggestions.isEmpty() && isNamed(truth, suggestions.get(0));
    score.silent += suggestions.isEmpty() ? 1 : 0;
    score.first += first ? 1 : 0;
    score.exact += first && suggestions.get(0).rows().size() == truth.touched() ? 1 : 0;
    score.harming += harming(found, causes);
    if (!first && Boolean.getBoolean("cause.tell")) {
      tell(truth, found, body, suggestions, where);
    }
  }

  /** How many suggestions put a body other than their own further from the median loss. */
  private static int harming(Found found, LikelyCauses causes) {
    return (int)
        causes.byBody().entrySet().stream()
            .flatMap(
                of ->
                    of.getValue().stream()
                        .map(suggestion -> found.corrected(suggestion.corrections()))
                        .filter(then -> harms(found.night(), then, of.getKey())))
            .count();
  }

  private static boolean harms(Night before, Night then, String own) {
    return before.bodies().values().stream()
        .filter(account -> !account.body().id().equals(own))
        .anyMatch(
            account -> {
              double usual = usualLoss(before, account.body().species());
              var now = then.bodies().get(account.body().id());
              return Math.abs(loss(now) - usual) > Math.abs(loss(account) - usual) + 1e-9;
            });
  }

  private static double usualLoss(Night night, Species species) {
    var sorted =
        night.bodies().values().stream()
            .filter(account -> account.decision().state() == State.ISSUED)
            .filter(account -> account.body().species() == species)
            .mapToDouble(Trials::loss)
            .sorted()
            .toArray();
    return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
  }

  private static double loss(BodyAccount account) {
    var loss = account.balance().shares().cuttingLoss();
    return loss.map(share -> share.percent().doubleValue()).orElse(0.0);
  }

  private static void tell(
      Damage.Truth truth, Found found, String body, List<Suggestion> said, String where) {
    var decision = found.night().bodies().get(body).decision();
    System.out.println(where + " " + body + " " + decision.reasons());
    System.out.println("  truth " + truth.cause() + " " + truth.owner());
    truth.rows().stream()
        .limit(4)
        .forEach(
            r -> System.out.println("    " + r.ticket + " " + RowCells.of(r.exported(Place.NONE))));
    said.forEach(
        s ->
            System.out.println(
                "  said " + s.cause() + " " + NoticeWords.ENGLISH.of(s.evidence()) + s.lines()));
  }

  private static boolean isNamed(Damage.Truth truth, Suggestion said) {
    // There is nothing to paste for a hook of unknown weight.
    if (truth.cause() == Cause.HOOK && !truth.owner().isEmpty()) {
      return said.cause() == Cause.HOOK;
    }
    boolean moved = truth.cause() == Cause.WRONG_BODY;
    if (moved) {
      return (said.cause() == Cause.WRONG_BODY || said.cause() == Cause.CHANGEOVER)
          && said.lines().stream()
              .map(NoticeWords.ENGLISH::of)
              .allMatch(l -> l.contains(",body," + truth.owner() + ","))
          && said.rows().stream()
              .map(place -> scaleOf(place.file()) + " " + place.line())
              .anyMatch(truth.tickets()::contains);
    }
    return said.cause() == truth.cause()
        && (truth.touched() == 0
            || truth.tickets().contains(said.notice().scale() + " " + said.notice().ticket()));
  }

  private static String scaleOf(String file) {
    return file.substring(file.lastIndexOf('/') + 1, file.length() - ".csv".length());
  }
}
