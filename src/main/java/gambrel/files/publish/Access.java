package gambrel.files.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * The rights of new files and folders. Only the account of the run may read them, since they are
 * about customers. In a folder that its group may read and others may not, the group may read them
 * too. On a file system without such rights the rights of the folder apply.
 */
final class Access {
  private static final FileAttribute<?>[] NONE = {};

  private Access() {}

  /** For a new output folder. */
  static FileAttribute<?>[] ofOutput(Path folder) {
    boolean known = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    return known ? attributes("rwx------") : NONE;
  }

  /** For a new folder in {@code parent}. */
  static FileAttribute<?>[] ofFolderIn(Path parent) throws IOException {
    return in(parent, "rwx------", "rwxr-x---");
  }

  /** For a new file in {@code parent}. */
  static FileAttribute<?>[] ofFileIn(Path parent) throws IOException {
    return in(parent, "rw-------", "rw-r-----");
  }

  private static FileAttribute<?>[] in(Path parent, String ofOwner, String ofGroup)
      throws IOException {
    var view = Files.getFileAttributeView(parent, PosixFileAttributeView.class);
    if (view == null) {
      return NONE;
    }
    var granted = view.readAttributes().permissions();
    boolean closed =
        !granted.contains(PosixFilePermission.OTHERS_READ)
            && !granted.contains(PosixFilePermission.OTHERS_EXECUTE);
    boolean shared = closed && granted.contains(PosixFilePermission.GROUP_READ);
    return attributes(shared ? ofGroup : ofOwner);
  }

  private static FileAttribute<?>[] attributes(String rights) {
    return new FileAttribute<?>[] {
      PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
    };
  }
}
