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
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a statement is about: one customer's part of one body, and how the customer is spoken to.
 *
 * @param night all that is known
 * @param account the body
 * @param customer the customer's id
 * @param own what the customer gets of it
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
    return own().isOutrightOnly();
  }

  /** Whether the body is divided and the customer has a part of it. */
  boolean isSharer() {
    return !own().isOutrightOnly() && !own().isSoleOwner();
  }

  boolean isMob() {
    return body().head() > 1;
  }

  boolean is(Outcome outcome) {
    return body().outcome() == outcome;
  }

  /** The customer's share as a fraction, such as {@code 1/2}. */
  String share() {
    return fraction(own().share());
  }

  static String fraction(BigFraction share) {
    return share.toString().replace(" ", "");
  }

  /** {@code key} for one animal, {@code key.mob} for several boned together. */
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

  /** Whether the species has offal of that line of the page, as its cut table says. */
  boolean has(Offal line) {
    return tree().items().stream().anyMatch(item -> is(line, item.id()));
  }

  /** Whether an item is offal of that line of the page. */
  boolean is(Offal line, String item) {
    return kind(item) == Kind.OFFAL && tree().facts(item).offalLine() == line;
  }

  /** Whether bodies of the species are skinned when they are dressed. */
  boolean isSkinned() {
    return has(Offal.HIDE) || has(Offal.SKIN);
  }

  /** The packs that were put up for the customer by name, without offal. */
  List<Weighing> outright() {
    var weighings = balance().weighings();
    return weighings.of(Step.PACK).stream()
        .filter(pack -> pack.customer().equals(customer))
        .filter(pack -> !weighings.isOffal(pack))
        .toList();
  }

  /** What the customer gets of the body's finished batches. */
  List<BatchMeat> batchMeat() {
    var meat = new ArrayList<BatchMeat>();
    for (var part : own().batchParts()) {
      meat.add(new BatchMeat(this, night.batches().get(part.batch()), part.weight()));
    }
    return meat;
  }

  /** The batches of the body that are not packed yet; none for who owns no share. */
  List<BatchMeat> openBatches() {
    return isOutrightOnly()
        ? List.of()
        : balance().batches().stream()
            .filter(batch -> batch.isOpen())
            .map(batch -> new BatchMeat(this, batch, Weight.ZERO))
            .toList();
  }

  /** WeightDecimals of everything that goes home, so that the page agrees with itself. */
  int homeDecimals() {
    var weights = new ArrayList<Weight>();
    own().lines().forEach(line -> weights.add(line.weight()));
    own().lines().forEach(line -> weights.add(line.outright()));
    own().batchParts().forEach(part -> weights.add(part.weight()));
    outputs().map(Outputs::takeHome).ifPresent(weights::add);
    return WeightDecimals.fitting(
        WeightDecimals.of(balance().weighings().of(Step.PACK), settings().unit()), weights);
  }

  /** A weight that goes home. */
  String home(Weight weight) {
    return formats().weight(weight, homeDecimals());
  }

  /** A weight on the rail or, for a body that was never there, on the block. */
  String hung(Weight weight) {
    return formats().weight(weight, hungDecimals(weight));
  }

  int hungDecimals(Weight... weights) {
    var into = new ArrayList<>(balance().boningWeighings());
    into.addAll(balance().weighings().rail());
    return WeightDecimals.fitting(WeightDecimals.of(into, settings().unit()), List.of(weights));
  }

  /** A weight alive, as it was written down. */
  String live(Weight weight) {
    return formats().weight(weight, WeightDecimals.fitting(0, List.of(weight)));
  }

  /** The sum of weighings. */
  String total(Collection<Weighing> weighings) {
    var sum = Weighing.total(weighings);
    var decimals =
        WeightDecimals.fitting(WeightDecimals.of(weighings, settings().unit()), List.of(sum));
    return formats().weight(sum, decimals);
  }
}
