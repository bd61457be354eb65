package gambrel.trade.weighing;

import gambrel.trade.cuts.Item;
import gambrel.trade.cuts.Species;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Severity;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.IdIndex;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import gambrel.trade.shop.UnreadRow;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/** Makes the weighing of one used row, or refuses the row with the reason. */
record WeighingFactory(Shop shop, ReferenceLookup references, BenchLookup bench) {
  Weighing weighing(ReadRow read) throws Refusal {
    var row = read.row();
    if (row.broken().isPresent()) {
      throw new Refusal(Notice.of(NoticeCode.ROW_BROKEN).with("fault", row.broken().get()));
    }
    for (var field : Field.values()) {
      if (field.isId() && IdIndex.isLost(row.get(field))) {
        throw new Refusal(lostId(row, field));
      }
    }
    if (read.status().unknown().isPresent()) {
      throw new Refusal(NoticeCode.STATUS_BAD, "status", read.status().unknown().get());
    }
    if (read.status().isRepeat()) {
      throw new Refusal(Notice.of(NoticeCode.STATUS_BAD, "REPEAT"));
    }
    var time =
        read.time()
            .orElseThrow(
                () ->
                    new Refusal(
                        Notice.of(NoticeCode.TIME_BAD).with("time", row.quoted(Field.TIME))));
    var scale = references.scale(row.get(Field.SCALE));
    var filled = bench.fill(row, scale.id(), time);
    var body = references.body(filled.row().get(Field.BODY), time.toLocalDate());
    var code = ofSpecies(references.code(row.get(Field.CODE)), body);
    String customer = references.customer(filled.row().get(Field.CUSTOMER));
    String batch = references.batch(filled.row().get(Field.BATCH));
    checkOwner(code.step(), body.isPresent(), !batch.isEmpty());
    var pieces = pieces(row);
    var unit =
        read.unit()
            .orElseThrow(() -> new Refusal(NoticeCode.UNIT_BAD, "unit", row.get(Field.UNIT)));
    var net = NetWeight.of(row, unit, scale, code, pieces, shop.settings().unit());
    return new Weighing(
        row.place(),
        scale,
        row.get(Field.TICKET),
        time,
        body.map(Body::id).orElse(""),
        code,
        net.net(),
        net.shown(),
        unit,
        pieces,
        batch,
        customer,
        filled.boner());
  }

  private static Notice lostId(ExportRow row, Field field) {
    return Notice.of(NoticeCode.SPREADSHEET_DAMAGE)
        .as(Severity.HOLD)
        .advising("EXPORT")
        .with("column", field.id())
        .with("cell", row.quoted(field))
        .with("why", Phrase.of("CELL.LOST_ID"));
  }

  private static Optional<Integer> pieces(ExportRow row) throws Refusal {
    String text = row.get(Field.PIECES);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(DecimalText.of(text).orElseThrow().intValueExact()).filter(n -> n >= 0);
    } catch (ArithmeticException | NoSuchElementException e) {
      throw new Refusal(
          Notice.of(NoticeCode.NUMBER_BAD, "WHOLE").with("cell", row.quoted(Field.PIECES)));
    }
  }

  /**
   * The code with the one of its items that the body's species has, or without a body the only one
   * that some species has. Refuses the row if there are none or several.
   */
  private ScaleCode ofSpecies(ScaleCode code, Optional<Body> body) throws Refusal {
    if (code.items().isEmpty() || !code.step().movesMass()) {
      return code;
    }
    var species = body.map(b -> List.of(b.species())).orElse(List.of(Species.values()));
    var items =
        code.items().stream().filter(i -> species.stream().anyMatch(s -> has(s, i))).toList();
    var unread =
        code.items().stream()
            .flatMap(item -> unread(item, body.map(Body::species)).stream())
            .findFirst();
    if (items.size() == 1 && (body.isEmpty() || unread.isEmpty())) {
      return code.of(items.get(0));
    }
    if (items.size() > 1 && body.isEmpty()) {
      throw new Refusal(Notice.of(NoticeCode.OWNER_MISSING, "BODY").with("step", code.step().id()));
    }
    throw new Refusal(
        unread
            .map(row -> ReferenceLookup.unread(NoticeCode.ITEM_NOT_IN_SPECIES, row.place()))
            .orElseGet(() -> itemNotInSpecies(code, body, items.size()))
            .with("item", String.join(ScaleCode.PARTED, code.items()))
            .with("code", code.pattern()));
  }

  /** Whether a species has an item; one whose row cannot be read counts as unknown. */
  private boolean has(Species species, String item) {
    return shop.cuts().of(species).find(item).isPresent()
        && unread(item, Optional.of(species)).isEmpty();
  }

  private Optional<UnreadRow> unread(String item, Optional<Species> species) {
    for (var row : shop.unread("cuts.csv", "item", item)) {
      if (row.named("species").isEmpty()
          || species.isEmpty()
          || row.named("species").equals(species.map(Species::id))) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }

  private Notice itemNotInSpecies(ScaleCode code, Optional<Body> body, int found) {
    var others =
        Stream.of(Species.values())
            .filter(species -> code.items().stream().anyMatch(item -> has(species, item)))
            .map(WeighingFactory::species)
            .toList();
    String lacking = body.isEmpty() ? "NO_BODY" : others.isEmpty() ? "NONE" : "OTHERS";
    return Notice.of(NoticeCode.ITEM_NOT_IN_SPECIES, found > 1 ? "SEVERAL" : lacking)
        .with("step", code.step().id())
        .with("species", body.<Value>map(b -> species(b.species())).orElse(new Value.Text("")))
        .with("near", body.flatMap(of -> near(code, of.species())).orElse("?"))
        .with("others", new Value.Phrases(others, ", "));
  }

  /**
   * The first item of a species that is called as an item of a code, or whose id begins or ends as
   * that does: shin-shank, breast-and-flap.
   */
  private Optional<String> near(ScaleCode code, Species species) {
    return Stream.<BiPredicate<Item, String>>of(
            (item, id) -> item.name().equalsIgnoreCase(id),
            (item, id) -> item.id().startsWith(id + '-') || item.id().endsWith('-' + id))
        .flatMap(
            isNear ->
                shop.cuts().of(species).items().stream()
                    .filter(item -> code.items().stream().anyMatch(id -> isNear.test(item, id))))
        .map(Item::id)
        .findFirst();
  }

  private static Phrase species(Species species) {
    return Phrase.of("SPECIES." + species);
  }

  private static void checkOwner(Step step, boolean body, boolean batch) throws Refusal {
    String missing =
        switch (step) {
          case HOT, COLD, AGED, BLOCK, BIN -> body ? "" : "BODY";
          case PACK, TUB -> body || batch ? "" : "BODY_OR_BATCH";
          case ADDED -> batch ? "" : "BATCH";
          case TEST, OTHER -> "";
        };
    if (!missing.isEmpty()) {
      throw new Refusal(Notice.of(NoticeCode.OWNER_MISSING, missing).with("step", step.id()));
    }
  }
}
