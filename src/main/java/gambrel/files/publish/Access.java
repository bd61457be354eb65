package gambrel.files.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;

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
    return known ? attributes(folderOf(EnumSet.noneOf(PosixFilePermission.class))) : NONE;
  }

  /** For a new folder in {@code parent}. */
  static FileAttribute<?>[] ofFolderIn(Path parent) throws IOException {
    var view = view(parent);
    return view == null ? NONE : attributes(folderOf(view.readAttributes().permissions()));
  }

  /** For a new file in {@code parent}. */
  static FileAttribute<?>[] ofFileIn(Path parent) throws IOException {
    var view = view(parent);
    if (view == null) {
      return NONE;
    }
    var granted = folderOf(view.readAttributes().permissions());
    granted.remove(PosixFilePermission.OWNER_EXECUTE);
    granted.remove(PosixFilePermission.GROUP_EXECUTE);
    return attributes(granted);
  }

  private static PosixFileAttributeView view(Path path) {
    return Files.getFileAttributeView(path, PosixFileAttributeView.class);
  }

  private static Set<PosixFilePermission> folderOf(Set<PosixFilePermission> parent) {
    var granted =
        EnumSet.of(
            PosixFilePermission.OWNER_READ,
            PosixFilePermission.OWNER_WRITE,
            PosixFilePermission.OWNER_EXECUTE);
    boolean closed =
        !parent.contains(PosixFilePermission.OTHERS_READ)
            && !parent.contains(PosixFilePermission.OTHERS_EXECUTE);
    if (closed && parent.contains(PosixFilePermission.GROUP_READ)) {
      granted.add(PosixFilePermission.GROUP_READ);
      granted.add(PosixFilePermission.GROUP_EXECUTE);
    }
    return granted;
  }

  private static FileAttribute<?>[] attributes(Set<PosixFilePermission> granted) {
    return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(granted)};
  }
}
