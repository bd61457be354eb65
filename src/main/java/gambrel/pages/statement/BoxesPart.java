package gambrel.pages.statement;

import gambrel.pages.views.CutsView;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.account.Entitlement;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The list of what the customer gets, cut by cut: for a customer with a share, by weight. */
final class BoxesPart extends StatementPart {
  /** Up to this many cuts are listed without group heads. */
  private static final int SHORT_LIST = 12;

  /** From this many lines on, a list stands in two columns. */
  private static final int TWO_COLUMNS = 8;

  /** The most lines of a column: two of them fit a sheet. */
  private static final int LONGEST_COLUMN = 36;

  private final int decimals = homeDecimals();
  private final List<Line> lines = new ArrayList<>();

  BoxesPart(StatementPart statement) {
    super(statement);
  }

  /**
   * One line of the list.
   *
   * @param group the head above it, such as the quarter that the cut comes from; may be empty
   * @param packs the number of packs, for a divided cut that of the whole body; may be empty
   * @param row as printed
   */
  private record Line(String group, Optional<Integer> packs, CutsView.Row row) {}

  /** The list; empty if the customer has no packs or may not have them. */
  Optional<CutsView> boxes() {
    addLines();
    boolean none = lines.isEmpty() || is(Outcome.CONDEMNED);
    return none ? Optional.empty() : Optional.of(view());
  }

  /**
   * Adds the lines in the order of the cut tree, then batches and offal. If the body is divided,
   * the packs that name the customer come first.
   */
  private void addLines() {
    boolean apart = isSharer() && own.lines().stream().anyMatch(l -> !l.outright().isZero());
    String divided = apart ? formats.opening(yours()) : "";
    if (apart) {
      String outright = say("boxes.group.outright");
      own.lines()
          .forEach(line -> add(outright, line, packs(line, own.customer()), line.outright()));
    }
    boolean grouped =
        !apart && own.lines().stream().filter(line -> !line.isOffal()).count() > SHORT_LIST;
    for (var line : own.lines()) {
      if (!line.isOffal()) {
        addDivided(line, grouped ? quarter(line.item()) : divided);
      }
    }
    for (var batch : batchMeat()) {
      var part = batch.part();
      if (!part.packed().isZero()) {
        String note =
            part.added().isZero()
                ? ""
                : say("packs.part.meat", home(part.weight()))
                    + ", "
                    + say("packs.part.added", home(part.added()));
        var packs =
            batch.isAlone() ? Optional.of(batch.packings().size()) : Optional.<Integer>empty();
        String group = grouped ? say("boxes.group.batches") : divided;
        add(group, batch.name(), note, packs, formats.bareWeight(part.packed(), decimals));
      }
    }
    own.lines().stream()
        .filter(Entitlement.Line::isOffal)
        .forEach(line -> addDivided(line, say("boxes.offal")));
  }

  /** The number of packs of an item that name a customer, or nobody; empty if there are none. */
  private Optional<Integer> packs(Entitlement.Line line, String customer) {
    var packs =
        weighings.of(Step.PACK, w -> w.customer().equals(customer) && w.item().equals(line.item()));
    return Optional.of(packs.size()).filter(count -> count > 0);
  }

  /** Adds a line without the packs that name a customer who also has a share. */
  private void addDivided(Entitlement.Line line, String group) {
    boolean part = isSharer();
    var packs = part ? packs(line, "") : line.packs();
    add(group, line, packs, part ? line.shared() : line.weight());
  }

  private void add(String group, Entitlement.Line line, Optional<Integer> packs, Weight weight) {
    if (!weight.isZero()) {
      boolean whole = line.item().equals(CutTree.ROOT) && is(Outcome.WHOLE);
      int least = whole ? hungDecimals() : decimals;
      String text = formats.bareWeight(weight, WeightDecimals.fitting(least, List.of(weight)));
      add(group, whole ? say("boxes.whole") : itemName(line.item()), "", packs, text);
    }
  }

  private void add(String group, String name, String note, Optional<Integer> packs, String text) {
    String count = packs.map(formats::count).orElse("");
    lines.add(new Line(group, packs, new CutsView.Row(name, note, count, text)));
  }

  /** The quarter above an item in the cut tree; "other" if there is none. */
  private String quarter(String item) {
    return tree.path(item).stream()
        .filter(above -> above.kind() == Kind.CARCASE)
        .filter(above -> !above.parent().isEmpty() && !above.parent().equals(CutTree.ROOT))
        .reduce((above, below) -> below)
        .map(this::name)
        .orElseGet(() -> say("boxes.group.other"));
  }

  private CutsView view() {
    boolean divided = isSharer() && is(Outcome.CUT);
    boolean counted = lines.stream().anyMatch(line -> line.packs().isPresent());
    String packs = divided ? say("boxes.packs.whole") : say("boxes.packs");
    return new CutsView(
        title(),
        counted ? packs : "",
        formats.unit(),
        blocks(),
        lines.size() > 1 ? Optional.of(total()) : Optional.empty(),
        divided ? List.of(say("boxes.divided")) : List.of());
  }

  /** The lines in blocks, each in two columns of about the same height; a short list in one. */
  private List<List<CutsView.Column>> blocks() {
    if (lines.size() < TWO_COLUMNS) {
      return List.of(List.of(column(lines)));
    }
    var blocks = new ArrayList<List<CutsView.Column>>();
    int count = (lines.size() - 1) / (2 * LONGEST_COLUMN) + 1;
    for (int i = 0; i < count; i++) {
      var some = lines.subList(lines.size() * i / count, lines.size() * (i + 1) / count);
      int middle = 1;
      while (height(some.subList(0, middle)) < height(some.subList(middle, some.size()))) {
        middle++;
      }
      blocks.add(
          List.of(column(some.subList(0, middle)), column(some.subList(middle, some.size()))));
    }
    return blocks;
  }

  /** The height of a column in lines: a head stands above each group, a note below its cut. */
  private static long height(List<Line> some) {
    var groups = some.stream().map(Line::group).filter(group -> !group.isEmpty()).distinct();
    var notes = some.stream().filter(line -> !line.row().note().isEmpty());
    return groups.count() + some.size() + notes.count();
  }

  private static CutsView.Column column(List<Line> some) {
    var groups =
        some.stream()
            .collect(
                Collectors.groupingBy(
                    Line::group,
                    LinkedHashMap::new,
                    Collectors.mapping(Line::row, Collectors.toList())));
    return new CutsView.Column(
        groups.entrySet().stream().map(g -> new CutsView.Group(g.getKey(), g.getValue())).toList());
  }

  private String title() {
    if (isSharer()) {
      return formats.opening(yours());
    }
    return say(is(Outcome.WHOLE) ? "boxes.title.whole" : "boxes.title");
  }

  private CutsView.Row total() {
    boolean counted = !isSharer() && lines.stream().allMatch(line -> line.packs().isPresent());
    int packs = lines.stream().mapToInt(line -> line.packs().orElse(0)).sum();
    return new CutsView.Row(
        say("boxes.total", title()),
        "",
        counted ? formats.count(packs) : "",
        formats.bareWeight(own.boxes(), decimals));
  }
}
