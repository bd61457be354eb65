package gambrel.pages.statement;

import gambrel.pages.words.Formats;
import gambrel.pages.words.WeightDecimals;
import gambrel.pages.words.Wording;
import gambrel.trade.account.CustomerMoney;
import gambrel.trade.account.Entitlement;
import gambrel.trade.balance.BodyBalance;
import gambrel.trade.balance.Outputs;
import gambrel.trade.cuts.CutTree;
import gambrel.trade.cuts.Facts.Offal;
import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Kind;
import gambrel.trade.measure.Weight;
import gambrel.trade.reckoning.BodyAccount;
import gambrel.trade.reckoning.Night;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.Outcome;
import gambrel.trade.shop.Settings;
import gambrel.trade.shop.Step;
import gambrel.trade.weighing.Weighing;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The subject of a statement: one customer's part of one body, with the words of that customer.
 *
 * @param night the night's results
 * @param account the body's account
 * @param customer the customer's id
 * @param own the customer's part of the body
 * @param wording the customer's words
 */
record StatementContext(
    Night night, BodyAccount account, String customer, Entitlement own, Wording wording) {

  Settings settings() {
    return night.shop().settings();
  }

  Formats formats() {
    return wording.formats();
  }

  BodyBalance balance() {
    return account.balance();
  }

  CustomerMoney money() {
    return night.money(account, customer);
  }

  Body body() {
    return account.body();
  }

  Optional<Outputs> outputs() {
    return balance().outputs();
  }

  boolean isOutrightOnly() {
    return own.isOutrightOnly();
  }

  /** Whether the body is divided and the customer has a part of it. */
  boolean isSharer() {
    return !own.isOutrightOnly() && !own.isSoleOwner();
  }

  boolean isMob() {
    return body().head() > 1;
  }

  boolean is(Outcome outcome) {
    return body().outcome() == outcome;
  }

  /** The customer's share as a fraction, such as {@code 1/2}. */
  String share() {
    return own.share().toString().replace(" ", "");
  }

  /** The sentence {@code key} for one animal, {@code key.mob} for several boned together. */
  String sayForHead(String key, String... figures) {
    return wording.say(isMob() ? key + ".mob" : key, figures);
  }

  CutTree tree() {
    return balance().weighings().tree();
  }

  String itemName(String item) {
    return tree().find(item).map(this::name).orElse(item);
  }

  String name(Item item) {
    return wording.cut(body().species(), item);
  }

  Kind kind(String item) {
    return tree().find(item).map(Item::kind).orElse(Kind.WASTE);
  }

  /** Whether the cut table of the species has offal that the page lists in {@code line}. */
  boolean has(Offal line) {
    return tree().items().stream().anyMatch(item -> is(line, item.id()));
  }

  /** Whether an item is offal that the page lists in {@code line}. */
  boolean is(Offal line, String item) {
    return kind(item) == Kind.OFFAL && tree().facts(item).offalLine() == line;
  }

  /** Whether dressing takes the skin off bodies of the species. */
  boolean isSkinned() {
    return has(Offal.HIDE) || has(Offal.SKIN);
  }

  /** The take-home weight of all other owners, the shop included. */
  Weight takeHomeOfOthers() {
    return Weight.sum(
        account.entitlements().values().stream()
            .filter(other -> !other.customer().equals(customer))
            .map(Entitlement::takeHome)
            .toList());
  }

  /** The packs that name the customer, without offal. */
  List<Weighing> outright() {
    var weighings = balance().weighings();
    return weighings.of(Step.PACK).stream()
        .filter(pack -> pack.customer().equals(customer))
        .filter(pack -> !weighings.isOffal(pack))
        .toList();
  }

  /** The customer's parts of the body's finished batches. */
  List<BatchMeat> batchMeat() {
    return own.batchParts().stream()
        .map(part -> new BatchMeat(this, night.batches().get(part.batch()), part.weight()))
        .toList();
  }

  /** The name of a batch of any body; made of its id if the shop has no such batch. */
  String batchName(String id) {
    var batch = night.batches().get(id);
    return batch == null
        ? wording.say("batch.unnamed", id)
        : new BatchMeat(this, batch, Weight.ZERO).name();
  }

  /** The batches of the body that are still open; none if the customer has no share. */
  List<BatchMeat> openBatches() {
    return isOutrightOnly()
        ? List.of()
        : balance().batches().stream()
            .filter(batch -> batch.isOpen())
            .map(batch -> new BatchMeat(this, batch, Weight.ZERO))
            .toList();
  }

  /** The decimals of every weight that goes home, so that printed parts add up. */
  int homeDecimals() {
    var weights = new ArrayList<Weight>();
    own.lines().forEach(line -> weights.add(line.weight()));
    own.lines().forEach(line -> weights.add(line.outright()));
    own.batchParts().forEach(part -> weights.add(part.weight()));
    outputs().map(Outputs::takeHome).ifPresent(weights::add);
    return WeightDecimals.fitting(
        WeightDecimals.of(balance().weighings().of(Step.PACK), settings().unit()), weights);
  }

  /** Prints a weight that goes home. */
  String home(Weight weight) {
    return formats().weight(weight, homeDecimals());
  }

  /** Prints a weight from the rail or, if the body has none, from the block. */
  String hung(Weight weight) {
    return formats().weight(weight, hungDecimals(weight));
  }

  int hungDecimals(Weight weight) {
    var into = new ArrayList<>(balance().boningWeighings());
    into.addAll(balance().weighings().rail());
    return WeightDecimals.fitting(WeightDecimals.of(into, settings().unit()), List.of(weight));
  }

  /** Prints a live weight with the decimals that it was written down with. */
  String live(Weight weight) {
    return formats().weight(weight, WeightDecimals.fitting(0, List.of(weight)));
  }

  /** Prints the sum of weighings, with the decimals of their scales. */
  String total(Collection<Weighing> weighings) {
    var sum = Weighing.total(weighings);
    var decimals =
        WeightDecimals.fitting(WeightDecimals.of(weighings, settings().unit()), List.of(sum));
    return formats().weight(sum, decimals);
  }
}
