package gambrel.files.mail;

import gambrel.trade.sending.MailSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.function.UnaryOperator;

/** The password of the shop's account at the mail server. */
public final class MailPassword {
  /** The environment variable that may hold it. */
  public static final String VARIABLE = "GAMBREL_MAIL_PASSWORD";

  private MailPassword() {}

  /**
   * The password from the environment or, if that has none, the first line of the file; empty if
   * the settings name no account.
   *
   * @param folder the shop folder
   * @param environment the value of a variable, or null
   * @throws IOException if there is none, or others than its owner may read the file; the message
   *     says so in a sentence without a full stop
   */
  public static String read(Path folder, MailSettings settings, UnaryOperator<String> environment)
      throws IOException {
    if (settings.user().isEmpty()) {
      return "";
    }
    String given = environment.apply(VARIABLE);
    if (given != null && !given.isEmpty()) {
      return given;
    }
    if (settings.passwordFile().isEmpty()) {
      throw new IOException(
          "mail.properties names a user, and there is no password: name a file in password_file, or"
              + " set the environment variable "
              + VARIABLE);
    }
    var file = folder.resolve(settings.passwordFile());
    if (!Files.isRegularFile(file)) {
      throw new IOException("the password_file of mail.properties is missing");
    }
    if (!isPrivate(file)) {
      throw new IOException(
          "others may read the password_file of mail.properties: make it readable for its owner"
              + " alone (chmod 600)");
    }
    return Files.readString(file).lines().findFirst().orElse("").strip();
  }

  /** Whether only the owner may read a file. Where there are no such rights, the folder's count. */
  private static boolean isPrivate(Path file) throws IOException {
    var view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    return view == null
        || EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE)
            .containsAll(view.readAttributes().permissions());
  }
}
