package gambrel.trade.weighing;

import gambrel.trade.cuts.Species;
import gambrel.trade.measure.WeightUnit;
import gambrel.trade.notice.Notice;
import gambrel.trade.notice.NoticeCode;
import gambrel.trade.notice.Phrase;
import gambrel.trade.notice.Place;
import gambrel.trade.notice.Value;
import gambrel.trade.rows.DecimalText;
import gambrel.trade.rows.ExportRow;
import gambrel.trade.rows.Field;
import gambrel.trade.rows.ReadRow;
import gambrel.trade.rows.RowReader;
import gambrel.trade.rows.Status;
import gambrel.trade.shop.Body;
import gambrel.trade.shop.ScaleCode;
import gambrel.trade.shop.Shop;
import gambrel.trade.shop.Step;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns one row that stands into a weighing, or says why it cannot be one. */
final class WeighingFactory {
  private final Shop shop;
  private final ReferenceLookup directory;
  private final BenchLookup bench;
  private final RowReader rows;

  WeighingFactory(Shop shop, ReferenceLookup directory, BenchLookup bench, RowReader rows) {
    this.shop = shop;
    this.directory = directory;
    this.bench = bench;
    this.rows = rows;
  }

  Weighing accept(ReadRow read) throws Refusal {
    var row = read.row();
    if (row.broken().isPresent()) {
      throw new Refusal(
          Notice.of(NoticeCode.ROW_BROKEN, row.place()).with("fault", row.broken().get()));
    }
    if (read.status() instanceof Status.Unknown unknown) {
      throw new Refusal(
          Notice.of(NoticeCode.STATUS_BAD, row.place()).with("status", unknown.text()));
    }
    var time = read.time().orElseThrow(() -> badTime(row));
    var scale = directory.scale(row.get(Field.SCALE));
    var filled = bench.fill(row, scale.id(), time);
    var body = directory.body(filled.row().get(Field.BODY), time.toLocalDate());
    var code = directory.code(row.get(Field.CODE));
    String customer = directory.customer(filled.row().get(Field.CUSTOMER));
    String batch = directory.batch(filled.row().get(Field.BATCH));
    checkItem(code, body);
    checkOwner(code.step(), body.isPresent(), !batch.isEmpty());
    var pieces = pieces(row);
    var net = NetWeight.of(row, unit(row), scale, code, pieces, shop.settings().unit());
    return new Weighing(
        row.place(),
        scale,
        row.get(Field.TICKET),
        time,
        body.map(Body::id).orElse(""),
        code,
        net.net(),
        net.shown(),
        net.unit(),
        pieces,
        batch,
        customer,
        filled.boner());
  }

  private static Refusal badTime(ExportRow row) {
    return new Refusal(
        Notice.of(NoticeCode.TIME_BAD, row.place()).with("time", row.quoted(Field.TIME)));
  }

  private WeightUnit unit(ExportRow row) throws Refusal {
    return rows.unit(row)
        .orElseThrow(
            () ->
                new Refusal(
                    Notice.of(NoticeCode.UNIT_BAD, row.place()).with("unit", row.get(Field.UNIT))));
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
          Notice.of(NoticeCode.NUMBER_BAD, "WHOLE", row.place())
              .with("cell", row.quoted(Field.PIECES)));
    }
  }

  /** The item must be the body's species' own; without a body any species will do. */
  private void checkItem(ScaleCode code, Optional<Body> body) throws Refusal {
    if (code.item().isEmpty() || !code.step().movesMass()) {
      return;
    }
    boolean known =
        body.isPresent()
            ? has(body.get().species(), code)
            : Stream.of(Species.values()).anyMatch(species -> has(species, code));
    if (!known) {
      throw new Refusal(misfit(code, body));
    }
  }

  private boolean has(Species species, ScaleCode code) {
    return shop.cuts().of(species).find(code.item()).isPresent();
  }

  private Notice misfit(ScaleCode code, Optional<Body> body) {
    var others =
        Stream.of(Species.values())
            .filter(species -> has(species, code))
            .map(WeighingFactory::species)
            .toList();
    String variant = body.isEmpty() ? "NO_BODY" : others.isEmpty() ? "NONE" : "OTHERS";
    return Notice.of(NoticeCode.ITEM_NOT_IN_SPECIES, variant, Place.NONE)
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
    boolean owned =
        switch (step) {
          case HOT, COLD, AGED, BLOCK, BIN -> body;
          case PACK, TUB -> body || batch;
          case ADDED -> batch;
          case TEST, OTHER -> true;
        };
    if (!owned) {
      throw new Refusal(
          Notice.of(NoticeCode.OWNER_MISSING, need(step), Place.NONE).with("step", step.id()));
    }
  }

  private static String need(Step step) {
    return switch (step) {
      case PACK, TUB -> "BODY_OR_BATCH";
      case ADDED -> "BATCH";
      default -> "BODY";
    };
  }
}
