package gambrel.pages.statement;

import gambrel.pages.views.CutsView;
import gambrel.pages.words.Shares100;
import gambrel.trade.account.Entitlement;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The table of cuts in the customer's boxes. */
final class BoxesPart extends StatementPart {
  /** Up to this many cuts are listed without group heads. */
  private static final int SHORT_LIST = 8;

  private final int decimals;
  private final List<Line> lines = new ArrayList<>();

  /**
   * One line of the table.
   *
   * @param group the quarter that the cut comes from; may be empty
   * @param name name of the cut
   * @param note a remark, such as what a batch was made of; may be empty
   * @param packs the number of packs; empty if the packs are divided
   * @param weight the customer's weight
   * @param offal whether it is outside the take-home weight
   */
  private record Line(
      String group,
      String name,
      String note,
      Optional<Integer> packs,
      Weight weight,
      boolean offal) {}

  private BoxesPart(StatementContext subject) {
    super(subject);
    this.decimals = subject.homeDecimals();
  }

  /** The table; empty if the customer has no packs. */
  static Optional<CutsView> of(StatementContext subject) {
    var part = new BoxesPart(subject);
    part.addLines();
    return part.lines.isEmpty() ? Optional.empty() : Optional.of(part.view());
  }

  /**
   * Adds the lines in the order of the cut tree, then the batches. If the body is divided, the
   * packs that name the customer come first.
   */
  private void addLines() {
    boolean apart = subject.isSharer() && !subject.own().outright().isZero();
    String divided = apart ? say("boxes.group.divided", subject.share()) : "";
    if (apart) {
      addOutright(say("boxes.group.outright"));
    }
    boolean grouped = !apart && isLong();
    for (var line : subject.own().lines()) {
      boolean split = apart && !line.isOffal();
      add(
          grouped ? quarter(line.item()) : divided,
          line,
          split ? Optional.empty() : line.packs(),
          split ? line.shared() : line.weight());
    }
    String last = grouped ? say("boxes.group.other") : divided;
    for (var batch : subject.batchMeat()) {
      if (!batch.part().isZero()) {
        lines.add(new Line(last, batch.name(), note(batch), batch.packs(), batch.part(), false));
      }
    }
  }

  private void addOutright(String group) {
    for (var line : subject.own().lines()) {
      if (!line.isOffal()) {
        var packs = subject.outright().stream().filter(w -> w.item().equals(line.item())).count();
        add(group, line, Optional.of(Math.toIntExact(packs)), line.outright());
      }
    }
  }

  private void add(String group, Entitlement.Line line, Optional<Integer> packs, Weight weight) {
    if (!weight.isZero()) {
      boolean whole = line.item().equals(CutTree.ROOT) && subject.is(Outcome.WHOLE);
      String name = whole ? say("boxes.whole") : subject.itemName(line.item());
      lines.add(new Line(group, name, "", packs, weight, line.isOffal()));
    }
  }

  private boolean isLong() {
    return subject.own().lines().stream().filter(line -> !line.isOffal()).count() > SHORT_LIST;
  }

  /** The quarter above an item in the cut tree; "other" if there is none. */
  private String quarter(String item) {
    String quarter = "";
    for (Item above : subject.tree().path(item)) {
      boolean hangs = above.kind() == Kind.CARCASE && !above.parent().isEmpty();
      if (hangs && !above.parent().equals(CutTree.ROOT)) {
        quarter = subject.name(above);
      }
    }
    return quarter.isEmpty() ? say("boxes.group.other") : quarter;
  }

  private String note(BatchMeat batch) {
    String note;
    if (batch.isAlone()) {
      note = subject.sayForHead("boxes.batch.alone");
    } else if (batch.others() > 0) {
      note = wording.count("boxes.batch.mixed", batch.others(), formats.count(batch.others()));
    } else {
      note = say("boxes.batch.shop");
    }
    return batch.hasMoreThanMeat() && batch.packs().isPresent()
        ? say("boxes.batch.packed", note, batch.packed())
        : note;
  }

  private CutsView view() {
    var cuts = lines.stream().filter(line -> !line.offal()).toList();
    var offal = lines.stream().filter(Line::offal).map(line -> row(line, "")).toList();
    boolean summed = cuts.size() > 1;
    return new CutsView(
        formats.unit(),
        lines.stream().anyMatch(line -> line.packs().isPresent()),
        summed,
        groups(cuts),
        summed ? Optional.of(total(cuts)) : Optional.empty(),
        offal.isEmpty()
            ? Optional.empty()
            : Optional.of(new CutsView.Group(say("boxes.offal"), offal)),
        notes(summed && !offal.isEmpty()));
  }

  private List<CutsView.Group> groups(List<Line> cuts) {
    var shares = Shares100.tenths(cuts.stream().map(Line::weight).toList());
    var groups = new ArrayList<CutsView.Group>();
    var rows = new ArrayList<CutsView.Row>();
    for (int i = 0; i < cuts.size(); i++) {
      rows.add(row(cuts.get(i), cuts.size() > 1 ? formats.percentTenths(shares.get(i)) : ""));
      boolean last = i + 1 == cuts.size();
      if (last || !cuts.get(i + 1).group().equals(cuts.get(i).group())) {
        groups.add(new CutsView.Group(cuts.get(i).group(), rows));
        rows.clear();
      }
    }
    return groups;
  }

  /** A row. The weight of a body left whole has the decimals of the rail scale. */
  private CutsView.Row row(Line line, String share) {
    boolean hung = subject.is(Outcome.WHOLE) && !line.offal();
    return new CutsView.Row(
        line.name(),
        line.note(),
        line.packs().map(formats::count).orElse(""),
        formats.bareWeight(line.weight(), hung ? subject.hungDecimals(line.weight()) : decimals),
        share);
  }

  private CutsView.Row total(List<Line> cuts) {
    boolean counted = cuts.stream().allMatch(line -> line.packs().isPresent());
    int packs = cuts.stream().mapToInt(line -> line.packs().orElse(0)).sum();
    return new CutsView.Row(
        "",
        "",
        counted ? formats.count(packs) : "",
        formats.bareWeight(Weight.sum(cuts.stream().map(Line::weight).toList()), decimals),
        formats.percentTenths(1000));
  }

  private List<String> notes(boolean offalOutside) {
    var notes = new ArrayList<String>();
    boolean divided = subject.isSharer() && subject.is(Outcome.CUT);
    if (divided && lines.stream().anyMatch(line -> line.packs().isEmpty())) {
      notes.add(say("boxes.divided"));
    }
    if (subject.batchMeat().stream().anyMatch(BatchMeat::hasMoreThanMeat)) {
      notes.add(say("boxes.added"));
    }
    if (offalOutside) {
      notes.add(say("boxes.offal.outside"));
    }
    return notes;
  }
}
