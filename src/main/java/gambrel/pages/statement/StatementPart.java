package gambrel.pages.statement;

import gambrel.pages.views.Answer;
import gambrel.pages.views.Fact;
import gambrel.pages.words.Formats;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.BodyWeighings;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Item;
import gambrel.trade.decision.State;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.register.Planned;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Body.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** A part of a statement: the customer's part of one body, and how its figures are printed. */
abstract class StatementPart {
  final Night night;
  final Planned planned;
  final Wording wording;
  final Formats formats;
  final Settings settings;
  final BodyAccount account;
  final Body body;
  final BodyBalance balance;
  final BodyWeighings weighings;
  final CutTree tree;

  /** What the customer gets of the body. */
  final Entitlement own;

  /** Whether the statement is held: it says what was weighed, and not what that means. */
  final boolean held;

  /**
   * The first part of a statement.
   *
   * @param night the night's results
   * @param planned the customer, the body and the revision
   * @param wording the customer's words
   */
  StatementPart(Night night, Planned planned, Wording wording) {
    this.night = night;
    this.planned = planned;
    this.wording = wording;
    this.formats = wording.formats();
    this.settings = night.shop().settings();
    this.account = planned.account();
    this.body = account.body();
    this.balance = account.balance();
    this.weighings = balance.weighings();
    this.tree = weighings.tree();
    this.own = account.entitlements().get(planned.customer());
    this.held = account.decision().state() == State.HELD;
  }

  /** Another part of the same statement. */
  StatementPart(StatementPart other) {
    this(other.night, other.planned, other.wording);
  }

  /** Whether the body is divided and the customer has a part of it. */
  final boolean isSharer() {
    return !own.isOutrightOnly() && !own.isSoleOwner();
  }

  final boolean isMob() {
    return body.head() > 1;
  }

  final boolean is(Outcome outcome) {
    return body.outcome() == outcome;
  }

  /** The lines of a setting as one line. */
  static String oneLine(String lines) {
    return lines.replaceAll("\\s*[;\\n]\\s*", ", ");
  }

  /** A sentence with its figures. */
  final String say(String key, String... figures) {
    return wording.say(key, figures);
  }

  /** The sentence {@code key} for one animal, {@code key.mob} for several boned together. */
  final String sayForHead(String key, String... figures) {
    return say(isMob() ? key + ".mob" : key, figures);
  }

  final Fact fact(String label, String text) {
    return new Fact(say(label), text);
  }

  /** The answer to a question; its key is the first word of the question's key. */
  final Answer answer(String question, String lead, List<String> lines) {
    String key = question.substring(0, question.indexOf('.'));
    return new Answer(key, say(question), lead, lines);
  }

  /** The customer's share as a fraction, such as {@code 1/2}; words if the shares do not add up. */
  final String share() {
    return body.sharesAddUp() ? fraction() : say("share.open");
  }

  /** The customer's share in words, such as {@code your half}. */
  final String yours() {
    if (!body.sharesAddUp()) {
      return say("yours.open");
    }
    String key = "yours." + fraction();
    return wording.words().has(key) ? say(key) : say("yours.other", fraction());
  }

  private String fraction() {
    return own.share().toString().replace(" ", "");
  }

  final String itemName(String item) {
    return tree.find(item).map(this::name).orElse(item);
  }

  final String name(Item item) {
    return wording.cut(body.species(), item);
  }

  /** The packs that name the customer, without offal. */
  final List<Weighing> outright() {
    return weighings.of(
        Step.PACK, pack -> pack.customer().equals(own.customer()) && !weighings.isOffal(pack));
  }

  /** What the boxes hold on top of the take-home: offal, and what was added to batches. */
  final List<String> onTop() {
    var parts = new ArrayList<String>();
    if (!own.offal().isZero()) {
      parts.add(say("packs.part.offal", home(own.offal())));
    }
    if (!own.added().isZero()) {
      parts.add(say("packs.part.added", home(own.added())));
    }
    return parts;
  }

  /** The customer's parts of the body's finished batches. */
  final List<BatchMeat> batchMeat() {
    return own.batchParts().stream()
        .map(part -> new BatchMeat(this, night.batches().get(part.batch()), part))
        .toList();
  }

  /** The batches of the body that are still open; none if the customer has no share. */
  final List<BatchMeat> openBatches() {
    return balance.batches().stream()
        .filter(batch -> batch.isOpen() && !own.isOutrightOnly())
        .map(batch -> BatchMeat.open(this, batch))
        .toList();
  }

  /** The name of a batch of any body; made of its id if the shop has no such batch. */
  final String batchName(String id) {
    var batch = night.batches().get(id);
    return batch == null ? say("batch.unnamed", id) : BatchMeat.open(this, batch).name();
  }

  /** The decimals of every weight that goes home, so that printed parts add up. */
  final int homeDecimals() {
    var weights = new ArrayList<Weight>();
    own.lines().forEach(line -> weights.addAll(List.of(line.weight(), line.outright())));
    own.batchParts().forEach(part -> weights.addAll(List.of(part.weight(), part.packed())));
    weights.add(account.sum(Entitlement::takeHome));
    return WeightDecimals.fitting(decimals(weighings.of(Step.PACK)), weights);
  }

  /** Prints a weight that goes home. */
  final String home(Weight weight) {
    return formats.weight(weight, homeDecimals());
  }

  /** Prints a weight in a headline: with one decimal, and with none if the scales show none. */
  final String headline(Weight weight) {
    return formats.weight(weight, Math.min(1, homeDecimals()));
  }

  /** The decimals of the scales of the rail and of the weight into the boning room. */
  final int hungDecimals() {
    return Math.max(decimals(balance.boningWeighings()), decimals(weighings.rail()));
  }

  /** Prints a weight from the rail or, if the body has none, from the block. */
  final String hung(Weight weight) {
    return formats.fitting(weight, hungDecimals());
  }

  /** Prints a live weight with the decimals that it was written down with. */
  final String live(Weight weight) {
    return formats.fitting(weight, 0);
  }

  /** Prints the sum of weighings, with the decimals of their scales. */
  final String total(Collection<Weighing> some) {
    return formats.fitting(Weighing.total(some), decimals(some));
  }

  /** The decimals of the finest of the weighings' scales. */
  final int decimals(Collection<Weighing> some) {
    return WeightDecimals.of(some, settings.unit());
  }
}
