package gambrel.insight.cause;

import gambrel.files.folder.ShopReader;
import gambrel.trade.decision.State;
import gambrel.trade.notice.NoticeWords;
import gambrel.trade.notice.Place;
import gambrel.trade.reckoning.Night;
import gambrel.trade.reckoning.Reckoner;
import gambrel.trade.rows.ExportFile;
import gambrel.trade.rows.RowCells;
import gambrel.trade.shop.Shop;
import java.lang.management.ManagementFactory;
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

  /** Counts of what was suggested. */
  static final class Score {
    int passing;
    int failing;
    int first;
    int exact;
    int amongThree;
    int silent;
    long nanos;

    void add(Score other) {
      passing += other.passing;
      failing += other.failing;
      first += other.first;
      exact += other.exact;
      amongThree += other.amongThree;
      silent += other.silent;
      nanos += other.nanos;
    }

    String line(String name) {
      return String.format(
          "| %s | %d | %d | %d | %d | %d | %d |",
          name, passing, failing, first, exact, amongThree, silent);
    }
  }

  /** A shop's night and its exports. */
  record Found(Night night, List<ExportFile> exports) {
    LikelyCauses causes() {
      return LikelyCauses.of(night, exports);
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
  static Optional<String> failing(Night night) {
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
    long start = cpu();
    var suggestions = found.causes().of(body);
    score.nanos += cpu() - start;
    boolean first = !suggestions.isEmpty() && isNamed(truth, suggestions.get(0));
    score.silent += suggestions.isEmpty() ? 1 : 0;
    score.first += first ? 1 : 0;
    score.exact += first && suggestions.get(0).rows().size() == truth.touched() ? 1 : 0;
    score.amongThree += suggestions.stream().anyMatch(s -> isNamed(truth, s)) ? 1 : 0;
    if (!first && Boolean.getBoolean("cause.tell")) {
      tell(truth, found, body, suggestions, where);
    }
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  static void tell(
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

  static boolean isNamed(Damage.Truth truth, Suggestion said) {
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
