package gambrel.outside;

import gambrel.files.publish.HastyDisk;
import gambrel.night.AsOf;
import gambrel.night.Inputs;
import gambrel.night.NightOutcome;
import gambrel.night.NightlyRun;
import gambrel.night.PlainDocuments;
import gambrel.night.RefusedException;
import gambrel.scenes.Found;
import gambrel.trade.reckoning.Progress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** The nightly run over a room, as its owner starts it, but without laid-out pages. */
final class RoomNight {
  private final Path folder;

  private RoomNight(Path folder) {
    this.folder = folder;
  }

  /** Writes a room into a folder of its own, and deletes the folder when all is read. */
  static <T> T in(Room room, Function<RoomNight, T> reading) {
    try {
      var folder = Files.createTempDirectory("gambrel-outside");
      try {
        RoomFolder.write(room, folder.resolve("shop"));
        return reading.apply(new RoomNight(folder));
      } finally {
        delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (var files = Files.walk(folder)) {
      for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }

  /** The shop folder. */
  Path shop() {
    return folder.resolve("shop");
  }

  /** What a night leaves in the output folder. */
  Found at(LocalDateTime asOf) {
    try {
      var inputs = Inputs.read(shop(), Progress.NONE);
      var when = AsOf.read(asOf.toString(), inputs.shop().settings().zone());
      var root = folder.resolve("reports");
      var outcome =
          new NightlyRun(inputs, new PlainDocuments(), new HastyDisk(), Progress.NONE)
              .run(root, when, List.of());
      if (outcome instanceof NightOutcome.Done done) {
        return new Found(root, done.exitCode());
      }
      throw new AssertionError(outcome);
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
  }
}
