package gambrel.weighing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.measure.Weight;
import gambrel.measure.WeightUnit;
import gambrel.notice.Place;
import gambrel.shop.Scale;
import gambrel.shop.ScaleCode;
import gambrel.shop.Step;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Weighings that are packed because there are too many of them. */
class WeighingPackerTest {
  private static final Scale SCALE =
      new Scale(
          "S1",
          "bench",
          "",
          WeightUnit.KG,
          new BigDecimal("0.005"),
          Optional.empty(),
          Optional.empty());
  private static final ScaleCode CODE =
      new ScaleCode("71", "mince", Step.PACK, "", Weight.ZERO, false, Optional.empty());

  private static Weighing weighing(String ticket, String time, String shown, Integer pieces) {
    return new Weighing(
        new Place("exports/S1/a.csv", 7),
        SCALE,
        ticket,
        OffsetDateTime.parse(time),
        "B1",
        CODE,
        Weight.of(new BigDecimal("1.23456")),
        new BigDecimal(shown),
        WeightUnit.LB,
        Optional.ofNullable(pieces),
        "",
        "ann",
        "Jo");
  }

  private static List<Weighing> unpacked(List<Weighing> weighings) {
    var packer = new WeighingPacker();
    var list = new ArrayList<Weighing>();
    packer.unpack(packer.pack(weighings), list);
    return list;
  }

  @Test
  void everyPartComesBackAsItWas() {
    var weighings =
        List.of(
            weighing("12", "2026-07-01T09:00:00.000000001+10:00", "1.250", 3),
            weighing("", "1900-01-01T00:00-11:30", "1E+3", null),
            weighing("Ä\uD800€", "2199-12-31T23:59:59+14:00", "123456789012345678901.5", 0));
    assertEquals(weighings, unpacked(weighings));
  }

  @Test
  void nothingPacksToNothing() {
    assertEquals(List.of(), unpacked(List.of()));
  }

  @Test
  void aDaysPacksTakeAFewBytesEach() {
    var day =
        IntStream.range(0, 165)
            .mapToObj(
                i ->
                    weighing(
                        String.valueOf(4000 + i),
                        String.format("2026-07-01T09:%02d:%02d+10:00", i / 60, i % 60),
                        "1." + (i * 37 % 1000),
                        null))
            .toList();
    int bytes = new WeighingPacker().pack(day).length;
    assertTrue(bytes < 10 * day.size(), bytes + " bytes");
  }

  @Test
  void aTextThatCannotBeDeflatedIsPackedAllTheSame() {
    var random = new SplittableRandom(5);
    var text = new StringBuilder();
    random.ints(5000, Character.MIN_VALUE, Character.MAX_VALUE).forEach(c -> text.append((char) c));
    var weighings = List.of(weighing(text.toString(), "2026-07-01T09:00+10:00", "1", 1));
    assertEquals(weighings, unpacked(weighings));
  }
}
