package gambrel.files.mail;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import gambrel.trade.sending.MailSettings;
import gambrel.trade.sending.MailSettings.Security;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MailPasswordTest {
  @TempDir private Path folder;

  private static MailSettings settings(String user, String file) {
    return new MailSettings(
        "o@s.example", "h", 1, Security.TLS, user, file, "", "", "", LocalDate.MIN, 1);
  }

  private void write(String rights) throws IOException {
    Files.writeString(folder.resolve("secret"), "from the file\n");
    assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Files.setPosixFilePermissions(
        folder.resolve("secret"), PosixFilePermissions.fromString(rights));
  }

  @Test
  void withoutAUserThereIsNone() throws IOException {
    assertEquals("", MailPassword.read(folder, settings("", ""), name -> "unused"));
  }

  @Test
  void theEnvironmentComesFirst() throws IOException {
    write("rw-------");
    var settings = settings("office", "secret");

    assertEquals("given", MailPassword.read(folder, settings, name -> "given"));
    assertEquals("from the file", MailPassword.read(folder, settings, name -> null));
  }

  @ParameterizedTest
  @ValueSource(strings = {"rw-r-----", "rw----r--", "rw--w----"})
  void aFileThatOthersMayReadOrWriteIsRefused(String rights) throws IOException {
    write(rights);

    var refused =
        assertThrows(
            IOException.class,
            () -> MailPassword.read(folder, settings("office", "secret"), name -> ""));

    assertFalse(refused.getMessage().contains("from the file"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "missing"})
  void aUserWithoutAPasswordIsRefused(String file) {
    assertThrows(
        IOException.class, () -> MailPassword.read(folder, settings("office", file), name -> null));
  }
}
