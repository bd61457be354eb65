package gambrel.wording;

import gambrel.measure.Weight;
import gambrel.shop.Outcome;
import gambrel.statement.CutsView;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is in the boxes, cut by cut. */
final class BoxesPart {
  private final Subject subject;
  private final Wording wording;
  private final int decimals;
  private final List<BoxLine> lines;

  private BoxesPart(Subject subject) {
    this.subject = subject;
    this.wording = subject.wording();
    this.decimals = subject.homeDecimals();
    this.lines = BoxLine.all(subject);
  }

  /** Empty where nothing is packed. */
  static Optional<CutsView> of(Subject subject) {
    var part = new BoxesPart(subject);
    return part.lines.isEmpty() ? Optional.empty() : Optional.of(part.view());
  }

  private CutsView view() {
    var cuts = lines.stream().filter(line -> !line.offal()).toList();
    var offal = lines.stream().filter(BoxLine::offal).toList();
    boolean packs = lines.stream().anyMatch(line -> line.packs().isPresent());
    return new CutsView(
        subject.formats().unit(),
        packs,
        cuts.size() > 1,
        groups(cuts),
        cuts.size() > 1 ? Optional.of(total(cuts)) : Optional.empty(),
        offal.isEmpty()
            ? Optional.empty()
            : Optional.of(new CutsView.Group(wording.say("boxes.offal"), offalRows(offal))),
        notes(cuts, offal));
  }

  private List<CutsView.Group> groups(List<BoxLine> cuts) {
    var shares = Shares100.tenths(cuts.stream().map(BoxLine::weight).toList());
    var groups = new ArrayList<CutsView.Group>();
    var rows = new ArrayList<CutsView.Row>();
    for (int i = 0; i < cuts.size(); i++) {
      String share = cuts.size() > 1 ? subject.formats().percentTenths(shares.get(i)) : "";
      rows.add(row(cuts.get(i), share));
      boolean last = i + 1 == cuts.size();
      if (last || !cuts.get(i + 1).group().equals(cuts.get(i).group())) {
        groups.add(new CutsView.Group(cuts.get(i).group(), rows));
        rows.clear();
      }
    }
    return groups;
  }

  private List<CutsView.Row> offalRows(List<BoxLine> offal) {
    return offal.stream().map(line -> row(line, "")).toList();
  }

  private CutsView.Row row(BoxLine line, String share) {
    return new CutsView.Row(
        line.name(),
        line.note(),
        line.packs().map(n -> subject.formats().count(n)).orElse(""),
        subject.formats().bareWeight(line.weight(), decimals(line)),
        share);
  }

  /** A body left as it hung was weighed on the rail. */
  private int decimals(BoxLine line) {
    return subject.is(Outcome.WHOLE) && !line.offal()
        ? subject.hungDecimals(line.weight())
        : decimals;
  }

  private CutsView.Row total(List<BoxLine> cuts) {
    boolean counted = cuts.stream().allMatch(line -> line.packs().isPresent());
    int packs = cuts.stream().mapToInt(line -> line.packs().orElse(0)).sum();
    return new CutsView.Row(
        "",
        "",
        counted ? subject.formats().count(packs) : "",
        subject.formats().bareWeight(Weight.sum(cuts.stream().map(BoxLine::weight).toList()), decimals),
        subject.formats().percentTenths(1000));
  }

  private List<String> notes(List<BoxLine> cuts, List<BoxLine> offal) {
    var notes = new ArrayList<String>();
    boolean divided =
        subject.isSharer()
            && subject.is(Outcome.CUT)
            && lines.stream().anyMatch(line -> line.packs().isEmpty());
    if (divided) {
      notes.add(wording.say("boxes.divided"));
    }
    boolean added = subject.batchMeat().stream().anyMatch(BatchMeat::hasMoreThanMeat);
    if (added) {
      notes.add(wording.say("boxes.added"));
    }
    if (!offal.isEmpty() && cuts.size() > 1) {
      notes.add(wording.say("boxes.offal.outside"));
    }
    return notes;
  }
}
