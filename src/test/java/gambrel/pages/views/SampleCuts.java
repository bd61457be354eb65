package gambrel.pages.views;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Lists of cuts for samples, whose weights add up. */
final class SampleCuts {

  /** Packs, or -1 where they were divided and have no number; weight in hundredths. */
  private record Cut(String group, String name, String note, int packs, int weight) {}

  private static final Words W = SampleWords.ENGLISH;

  private final List<Cut> cuts = new ArrayList<>();
  private String group = "";
  private String title = W.say("boxes.title");

  /** The heading of the list. */
  SampleCuts title(String text) {
    title = text;
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
    var all = new ArrayList<CutsView.Group>();
    for (var cut : cuts) {
      all.add(new CutsView.Group(cut.group(), List.of(row(cut))));
    }
    if (offal != null) {
      offal.rows().forEach(row -> all.add(new CutsView.Group(offal.title(), List.of(row))));
    }
    var counted = cuts.stream().allMatch(cut -> cut.packs() >= 0);
    var rows = all.stream().flatMap(group -> group.rows().stream()).toList();
    var packs = rows.stream().filter(row -> counted).mapToInt(row -> Integer.parseInt(row.packs()));
    var sum = rows.stream().map(row -> new BigDecimal(row.weight())).reduce(BigDecimal::add);
    var total = new CutsView.Row(title, "", counted ? "" + packs.sum() : "", sum.get() + "");
    return new CutsView(
        title,
        cuts.stream().anyMatch(cut -> cut.packs() >= 0) ? W.say("boxes.packs") : "",
        unit,
        blocks(all),
        Optional.of(total).filter(of -> all.size() > 1),
        List.of(notes));
  }

  /** The lines in blocks that fit a sheet. */
  private static List<List<CutsView.Column>> blocks(List<CutsView.Group> lines) {
    if (lines.size() < 8) {
      return List.of(List.of(part(lines, 0, 1)));
    }
    int count = (lines.size() - 1) / 60 + 1;
    return IntStream.range(0, count)
        .mapToObj(i -> List.of(part(lines, 2 * i, 2 * count), part(lines, 2 * i + 1, 2 * count)))
        .toList();
  }

  private static CutsView.Column part(List<CutsView.Group> lines, int i, int count) {
    return new CutsView.Column(
        joined(lines.subList(lines.size() * i / count, lines.size() * (i + 1) / count)));
  }

  /** Groups of one line each, with those of one title joined. */
  private static List<CutsView.Group> joined(List<CutsView.Group> lines) {
    var rows = new LinkedHashMap<String, List<CutsView.Row>>();
    lines.forEach(
        line -> rows.computeIfAbsent(line.title(), t -> new ArrayList<>()).addAll(line.rows()));
    return rows.entrySet().stream()
        .map(group -> new CutsView.Group(group.getKey(), group.getValue()))
        .toList();
  }

  private static CutsView.Row row(Cut cut) {
    return new CutsView.Row(
        cut.name(),
        cut.note(),
        cut.packs() < 0 ? "" : Integer.toString(cut.packs()),
        text(cut.weight(), 2));
  }

  static String text(long digits, int scale) {
    return BigDecimal.valueOf(digits, scale).toPlainString();
  }
}
