package gambrel.intake;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.apache.commons.io.input.TeeInputStream;

/**
 * The bytes of a file as they were when it was first read, compressed: reading them again gives the
 * same rows, whatever has become of the file.
 */
final class Snapshot {
  private final byte[] packed;

  private Snapshot(byte[] packed) {
    this.packed = packed;
  }

  /**
   * Something read from a file, with the file's bytes.
   *
   * @param content what was read
   * @param snapshot the bytes from which the same can be read again
   */
  record Taken<T>(T content, Snapshot snapshot) {}

  /** Reads a file, and keeps what passes. */
  static <T> Taken<T> take(InputStream in, SteadyFile.Reading<T> reading) throws IOException {
    var deflater = new Deflater(Deflater.BEST_SPEED);
    try {
      var packed = new ByteArrayOutputStream();
      T content;
      try (var out = new DeflaterOutputStream(packed, deflater)) {
        content = reading.of(new TeeInputStream(in, out));
      }
      return new Taken<>(content, new Snapshot(packed.toByteArray()));
    } finally {
      deflater.end();
    }
  }

  /** The bytes from the beginning. */
  InputStream open() {
    return new InflaterInputStream(new ByteArrayInputStream(packed));
  }
}
