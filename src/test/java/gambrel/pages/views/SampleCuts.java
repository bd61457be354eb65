package gambrel.pages.views;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Lists of cuts for samples, whose weights and percentages add up. */
final class SampleCuts {

  /** Packs, or -1 where they were divided and have no number; weight in hundredths. */
  private record Cut(String group, String name, String note, int packs, int weight) {}

  private final List<Cut> cuts = new ArrayList<>();
  private String group = "";
  private String rule = "";

  /** A rule on some of the cuts. */
  SampleCuts rule(String text) {
    rule = text;
    return this;
  }

  SampleCuts group(String title) {
    group = title;
    return this;
  }

  SampleCuts cut(String name, int packs, String weight) {
    return cut(name, "", packs, weight);
  }

  SampleCuts cut(String name, String note, int packs, String weight) {
    var hundredths = new BigDecimal(weight).movePointRight(2).intValueExact();
    cuts.add(new Cut(group, name, note, packs, hundredths));
    return this;
  }

  int packs() {
    return cuts.stream().mapToInt(Cut::packs).filter(packs -> packs > 0).sum();
  }

  String weight() {
    return text(cuts.stream().mapToInt(Cut::weight).sum(), 2);
  }

  CutsView view(String unit, CutsView.Group offal, String... notes) {
    var counted = cuts.stream().anyMatch(cut -> cut.packs() >= 0);
    var shares = shares();
    var groups = new ArrayList<CutsView.Group>();
    for (var title : cuts.stream().map(Cut::group).distinct().toList()) {
      groups.add(
          new CutsView.Group(
              title,
              IntStream.range(0, cuts.size())
                  .filter(i -> cuts.get(i).group().equals(title))
                  .mapToObj(i -> row(cuts.get(i), shares[i]))
                  .toList()));
    }
    var allCounted = cuts.stream().allMatch(cut -> cut.packs() >= 0);
    var total =
        new CutsView.Row("", "", allCounted ? "" + packs() : "", weight(), text(1000, 1) + "%");
    return new CutsView(
        rule,
        unit,
        counted,
        true,
        groups,
        Optional.of(total),
        Optional.ofNullable(offal),
        List.of(notes));
  }

  private static CutsView.Row row(Cut cut, int share) {
    return new CutsView.Row(
        cut.name(),
        cut.note(),
        cut.packs() < 0 ? "" : Integer.toString(cut.packs()),
        text(cut.weight(), 2),
        text(share, 1) + "%");
  }

  /** Tenths of a percent that add up to 100.0, by largest remainder. */
  private int[] shares() {
    var sum = cuts.stream().mapToLong(Cut::weight).sum();
    var shares = cuts.stream().mapToInt(cut -> (int) (cut.weight() * 1000L / sum)).toArray();
    var byRest =
        IntStream.range(0, shares.length)
            .boxed()
            .sorted(Comparator.comparing(i -> -(cuts.get(i).weight() * 1000L % sum)))
            .toList();
    var left = 1000 - IntStream.of(shares).sum();
    byRest.stream().limit(left).forEach(i -> shares[i]++);
    return shares;
  }

  static String text(long digits, int scale) {
    return BigDecimal.valueOf(digits, scale).toPlainString();
  }
}
