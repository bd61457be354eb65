package gambrel.pages.render.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import gambrel.pages.render.Desk;
import gambrel.pages.render.Desk.Named;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AttachmentTest {

  private static final byte[] FIGURES = "item,kg\nrump,4.125\n".getBytes(StandardCharsets.UTF_8);
  private static final byte[] PICTURE = {0, -1, 10, 13, 37};

  @TempDir Path folder;

  private byte[] withAttachments() {
    return new Desk(folder)
        .render(
            "<p>${name}</p>",
            new Named("rump"),
            Desk.INFO,
            new Attachment("figures.csv", "text/csv", "The figures", FIGURES),
            new Attachment(
                "M\u0101ori (1).bin", "application/octet-stream", "The figures", PICTURE));
  }

  @Test
  void anAttachmentComesBackAsItWasPutIn() {
    var pdf = withAttachments();

    assertArrayEquals(FIGURES, Attachment.read(pdf, "figures.csv").orElseThrow());
    assertArrayEquals(PICTURE, Attachment.read(pdf, "M\u0101ori (1).bin").orElseThrow());
  }

  @Test
  void anotherNameOrAPdfWithoutAttachmentsGivesNothing() {
    var plain = new Desk(folder).render("<p>${name}</p>", new Named("rump"));

    assertTrue(Attachment.read(withAttachments(), "other.csv").isEmpty());
    assertTrue(Attachment.read(plain, "figures.csv").isEmpty());
  }

  @Test
  void whatIsNoPdfGivesNothing() {
    assertTrue(Attachment.read(new byte[0], "figures.csv").isEmpty());
    assertTrue(Attachment.read(FIGURES, "figures.csv").isEmpty());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aDamagedFileGivesTheContentOrNothing(long seed) {
    var random = new SplittableRandom(seed);
    var pdf = withAttachments();
    for (var round = 0; round < 50; round++) {
      var damaged = Arrays.copyOf(pdf, 1 + random.nextInt(pdf.length));
      for (var i = 0; i < 20; i++) {
        damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
      }
      Optional<byte[]> found = Attachment.read(damaged, "figures.csv");
      found.ifPresent(content -> assertTrue(content.length <= 4096, "grew from nowhere"));
    }
  }
}
