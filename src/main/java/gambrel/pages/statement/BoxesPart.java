package gambrel.pages.statement;

import gambrel.pages.views.CutsView;
import gambrel.pages.views.TextTable;
import gambrel.pages.words.Shares100;
import gambrel.pages.words.WeightDecimals;
import gambrel.trade.account.Entitlement;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Weight;
import gambrel.trade.shop.Body.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tables of what the customer gets: the boxes cut by cut, and the part of the whole body. */
final class BoxesPart extends StatementPart {
  /** Up to this many cuts are listed without group heads. */
  private static final int SHORT_LIST = 8;

  private final int decimals = homeDecimals();
  private final List<Line> lines = new ArrayList<>();

  BoxesPart(StatementPart statement) {
    super(statement);
  }

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

  /** The table of cuts; empty if the customer has no packs or may not have them. */
  Optional<CutsView> boxes() {
    addLines();
    boolean none = lines.isEmpty() || is(Outcome.CONDEMNED);
    return none ? Optional.empty() : Optional.of(view());
  }

  /**
   * Adds the lines in the order of the cut tree, then the batches. If the body is divided, the
   * packs that name the customer come first.
   */
  private void addLines() {
    boolean apart = isSharer() && !own.outright().isZero();
    String divided = apart ? say("boxes.group.divided", share()) : "";
    if (apart) {
      addOutright(say("boxes.group.outright"));
    }
    boolean grouped =
        !apart && own.lines().stream().filter(line -> !line.isOffal()).count() > SHORT_LIST;
    for (var line : own.lines()) {
      boolean split = apart && !line.isOffal();
      add(
          grouped ? quarter(line.item()) : divided,
          line,
          split ? Optional.empty() : line.packs(),
          split ? line.shared() : line.weight());
    }
    String last = grouped ? say("boxes.group.other") : divided;
    for (var batch : batchMeat()) {
      if (!batch.part().isZero()) {
        lines.add(new Line(last, batch.name(), note(batch), batch.packs(), batch.part(), false));
      }
    }
  }

  private void addOutright(String group) {
    for (var line : own.lines()) {
      if (!line.isOffal()) {
        var packs = outright().stream().filter(w -> w.item().equals(line.item())).count();
        add(group, line, Optional.of(Math.toIntExact(packs)), line.outright());
      }
    }
  }

  private void add(String group, Entitlement.Line line, Optional<Integer> packs, Weight weight) {
    if (!weight.isZero()) {
      boolean whole = line.item().equals(CutTree.ROOT) && is(Outcome.WHOLE);
      String name = whole ? say("boxes.whole") : itemName(line.item());
      lines.add(new Line(group, name, "", packs, weight, line.isOffal()));
    }
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

  private String note(BatchMeat batch) {
    String note;
    if (batch.isAlone()) {
      note = sayForHead("boxes.batch.alone");
    } else if (batch.others() > 0) {
      note = wording.counted("boxes.batch.mixed", batch.others());
    } else {
      note = say("boxes.batch.shop");
    }
    return batch.hasMoreThanMeat() && batch.packs().isPresent()
        ? say("boxes.batch.packed", note, total(batch.packings()))
        : note;
  }

  private CutsView view() {
    var cuts = lines.stream().filter(line -> !line.offal()).toList();
    var offal = lines.stream().filter(Line::offal).map(line -> row(line, "")).toList();
    boolean summed = cuts.size() > 1;
    return new CutsView(
        new KeepingPart(this).backbone().orElse(""),
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
    for (int i = 0; i < cuts.size(); i++) {
      var line = cuts.get(i);
      if (i == 0 || !line.group().equals(cuts.get(i - 1).group())) {
        groups.add(new CutsView.Group(line.group(), new ArrayList<>()));
      }
      String share = cuts.size() > 1 ? formats.percentTenths(shares.get(i)) : "";
      groups.get(groups.size() - 1).rows().add(row(line, share));
    }
    return groups;
  }

  /** A row. The weight of a body left whole has the decimals of the rail scale. */
  private CutsView.Row row(Line line, String share) {
    boolean hung = is(Outcome.WHOLE) && !line.offal();
    return new CutsView.Row(
        line.name(),
        line.note(),
        line.packs().map(formats::count).orElse(""),
        formats.bareWeight(
            line.weight(),
            hung ? WeightDecimals.fitting(hungDecimals(), List.of(line.weight())) : decimals),
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
    boolean divided = isSharer() && is(Outcome.CUT);
    if (divided && lines.stream().anyMatch(line -> line.packs().isEmpty())) {
      notes.add(say("boxes.divided"));
    }
    if (batchMeat().stream().anyMatch(BatchMeat::hasMoreThanMeat)) {
      notes.add(say("boxes.added"));
    }
    if (offalOutside) {
      notes.add(say("boxes.offal.outside"));
    }
    return notes;
  }

  /**
   * The weights of the whole body beside those of the customer; empty for a customer who has no
   * share, or the whole body, and if the shares do not add up.
   */
  Optional<TextTable> shares() {
    boolean divided = isSharer() && body.sharesAddUp() && !is(Outcome.CONDEMNED);
    if (!divided || balance.outputs().isEmpty()) {
      return Optional.empty();
    }
    var outputs = balance.outputs().get();
    var rows = new ArrayList<List<String>>();
    rows.add(share("shares.take_home", outputs.takeHome(), own.takeHome()));
    var named = account.entitlements().values().stream().map(Entitlement::outright).toList();
    if (!Weight.sum(named).isZero()) {
      rows.add(share("shares.outright", Weight.sum(named), own.outright()));
    }
    if (!outputs.offal().isZero()) {
      rows.add(share("shares.offal", outputs.offal(), own.offal()));
    }
    String key = is(Outcome.WHOLE) ? "shares.sentence.whole" : "shares.sentence";
    var heads = List.of("", say("shares.in_all"), say("shares.yours", share()));
    return Optional.of(new TextTable(say(key, share()), heads, rows, ""));
  }

  private List<String> share(String label, Weight whole, Weight yours) {
    return List.of(say(label), home(whole), home(yours));
  }
}
