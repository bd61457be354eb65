package gambrel.wording;

import gambrel.cuts.CutTree;
import gambrel.cuts.Item;
import gambrel.cuts.Kind;
import gambrel.measure.Weight;
import gambrel.shop.Outcome;
import gambrel.shop.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One line of the boxes.
 *
 * @param group the part of the carcase that it comes from, or empty
 * @param name of the cut
 * @param note such as what a batch was made of; may be empty
 * @param packs their number, where known
 * @param weight what is the customer's
 * @param offal whether it is outside take-home
 */
record BoxLine(
    String group, String name, String note, Optional<Integer> packs, Weight weight, boolean offal) {
  /** A list that an eye takes in needs no heads between. */
  private static final int SHORT_LIST = 8;

  /**
   * All lines in the order of the carcase, batches behind; with outright packs first if divided.
   */
  static List<BoxLine> all(Subject subject) {
    var lines = new ArrayList<BoxLine>();
    boolean apart =
        subject.isSharer()
            && subject.own().lines().stream().anyMatch(l -> !l.isOffal() && !l.outright().isZero());
    if (apart) {
      addOutright(subject, lines);
    }
    boolean grouped = !apart && isLong(subject);
    String divided = apart ? subject.wording().say("boxes.group.divided", subject.share()) : "";
    for (var line : subject.own().lines()) {
      var weight = apart && !line.isOffal() ? line.shared() : line.weight();
      if (!weight.isZero()) {
        var packs = apart && !line.isOffal() ? Optional.<Integer>empty() : line.packs();
        String group = grouped ? quarter(subject, line.item()) : divided;
        lines.add(
            new BoxLine(group, name(subject, line.item()), "", packs, weight, line.isOffal()));
      }
    }
    String last = grouped ? subject.wording().say("boxes.group.other") : divided;
    for (var batch : subject.batchMeat()) {
      if (!batch.part().isZero()) {
        lines.add(
            new BoxLine(
                last, batch.name(), note(subject, batch), batch.packs(), batch.part(), false));
      }
    }
    return lines;
  }

  private static void addOutright(Subject subject, List<BoxLine> lines) {
    String group = subject.wording().say("boxes.group.outright");
    for (var line : subject.own().lines()) {
      if (!line.isOffal() && !line.outright().isZero()) {
        long packs =
            subject.balance().weighings().of(Step.PACK).stream()
                .filter(w -> w.item().equals(line.item()))
                .filter(w -> w.customer().equals(subject.customer()))
                .count();
        lines.add(
            new BoxLine(
                group,
                name(subject, line.item()),
                "",
                Optional.of(Math.toIntExact(packs)),
                line.outright(),
                false));
      }
    }
  }

  private static boolean isLong(Subject subject) {
    return subject.own().lines().stream().filter(line -> !line.isOffal()).count() > SHORT_LIST;
  }

  private static String name(Subject subject, String item) {
    return item.equals(CutTree.ROOT) && subject.is(Outcome.WHOLE)
        ? subject.wording().say("boxes.whole")
        : subject.itemName(item);
  }

  /** The quarter that an item comes from, where it is of one. */
  private static String quarter(Subject subject, String item) {
    String quarter = "";
    for (Item above : subject.tree().path(item)) {
      boolean hangs = above.kind() == Kind.CARCASE && !above.parent().isEmpty();
      if (hangs && !above.parent().equals(CutTree.ROOT)) {
        quarter = subject.name(above);
      }
    }
    return quarter.isEmpty() ? subject.wording().say("boxes.group.other") : quarter;
  }

  private static String note(Subject subject, BatchMeat batch) {
    var wording = subject.wording();
    String note;
    if (batch.isAlone()) {
      note = subject.sayForHead("boxes.batch.alone");
    } else if (batch.others() > 0) {
      note =
          wording.count(
              "boxes.batch.mixed", batch.others(), subject.formats().count(batch.others()));
    } else {
      note = wording.say("boxes.batch.shop");
    }
    return batch.hasMoreThanMeat() && batch.packs().isPresent()
        ? wording.say("boxes.batch.packed", note, batch.packed())
        : note;
  }
}
