package gambrel.files.publish;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Arrays;

/** Compares what is written to it with what a stream reads. */
final class ComparingStream extends OutputStream {
  private final InputStream other;

  ComparingStream(InputStream other) {
    this.other = new BufferedInputStream(other);
  }

  /** Ends the writing of something that differs already. */
  static final class Different extends IOException {
    private static final long serialVersionUID = 1L;
  }

  @Override
  public void write(int one) throws IOException {
    if (other.read() != (one & 0xFF)) {
      throw new Different();
    }
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    byte[] read = other.readNBytes(length);
    if (!Arrays.equals(read, 0, read.length, bytes, from, from + length)) {
      throw new Different();
    }
  }

  /** Whether nothing is left of the other. */
  boolean isAtEnd() throws IOException {
    return other.read() < 0;
  }
}
