package gambrel.publish;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;

/**
 * Documents that wait on the disk to be published, since a night that makes ten years of statements
 * anew has more than fit in memory. The system forgets the file with the process, however that ends.
 */
final class Scratch implements AutoCloseable {
  private static final String FILE = ".scratch";
  private static final int AT_ONCE = 1 << 16;

  private final FileChannel channel;
  private long end;

  private Scratch(FileChannel channel) {
    this.channel = channel;
  }

  /** A new one in a folder that exists. */
  static Scratch in(Path folder) throws IOException {
    var file = folder.resolve(FILE);
    Files.deleteIfExists(file);
    var channel =
        FileChannel.open(
            file,
            Set.of(
                StandardOpenOption.CREATE_NEW,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE,
                StandardOpenOption.DELETE_ON_CLOSE),
            Access.ofFileIn(folder));
    return new Scratch(channel);
  }

  /** Writes bytes to the disk; what comes back reads them from there. */
  Content add(byte[] bytes) throws IOException {
    long start = end;
    int length = bytes.length; // what is returned must not hold the bytes
    var buffer = ByteBuffer.wrap(bytes);
    while (buffer.hasRemaining()) {
      end += channel.write(buffer, end);
    }
    return out -> copy(start, length, out);
  }

  private void copy(long start, int length, OutputStream out) throws IOException {
    var buffer = ByteBuffer.allocate(Math.min(length, AT_ONCE));
    for (long at = start; at < start + length; at += buffer.position()) {
      buffer.clear().limit((int) Math.min(buffer.capacity(), start + length - at));
      if (channel.read(buffer, at) < 0) {
        throw new IOException("the file of waiting documents ends too early");
      }
      out.write(buffer.array(), 0, buffer.position());
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
