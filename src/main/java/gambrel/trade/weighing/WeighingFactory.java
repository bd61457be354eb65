package gambrel.trade.weighing;

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
import java.util.NoSuchElementException;
import java.util.Optional;
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
    var code = references.code(row.get(Field.CODE));
    String customer = references.customer(filled.row().get(Field.CUSTOMER));
    String batch = references.batch(filled.row().get(Field.BATCH));
    checkItem(code, body);
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

  /** Refuses an item that the body's species, or without a body every species, does not have. */
  private void checkItem(ScaleCode code, Optional<Body> body) throws Refusal {
    if (code.item().isEmpty() || !code.step().movesMass()) {
      return;
    }
    boolean known =
        body.isPresent()
            ? has(body.get().species(), code)
            : Stream.of(Species.values()).anyMatch(species -> has(species, code));
    if (!known) {
      throw new Refusal(
          unread(code, body.map(Body::species))
              .map(row -> ReferenceLookup.unread(NoticeCode.ITEM_NOT_IN_SPECIES, row.place()))
              .map(notice -> notice.with("item", code.item()).with("code", code.pattern()))
              .orElseGet(() -> itemNotInSpecies(code, body)));
    }
  }

  /** Whether a species has an item; one whose row cannot be read counts as unknown. */
  private boolean has(Species species, ScaleCode code) {
    return shop.cuts().of(species).find(code.item()).isPresent()
        && unread(code, Optional.of(species)).isEmpty();
  }

  private Optional<UnreadRow> unread(ScaleCode code, Optional<Species> species) {
    for (var row : shop.unread("cuts.csv", "item", code.item())) {
      if (row.named("species").isEmpty()
          || species.isEmpty()
          || row.named("species").equals(species.map(Species::id))) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }

  private Notice itemNotInSpecies(ScaleCode code, Optional<Body> body) {
    var others =
        Stream.of(Species.values())
            .filter(species -> has(species, code))
            .map(WeighingFactory::species)
            .toList();
    String variant = body.isEmpty() ? "NO_BODY" : others.isEmpty() ? "NONE" : "OTHERS";
    return Notice.of(NoticeCode.ITEM_NOT_IN_SPECIES, variant)
        .with("item", code.item())
        .with("code", code.pattern())
        .with("named", body.map(Body::id).orElse(""))
        .with("species", body.<Value>map(b -> species(b.species())).orElse(new Value.Text("")))
        .with("others", new Value.Phrases(others, ", "));
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
