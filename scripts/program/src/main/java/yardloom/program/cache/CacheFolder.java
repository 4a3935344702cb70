package yardloom.program.cache;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.language.compile.ScriptStore;
import yardloom.language.compile.Sha256;

/**
 * Keeps files in a folder that only its user may write, at most so many and so large together, the
 * oldest thrown away first. A folder or file of somebody else, a folder that others can read or
 * write, and links are not used; nothing here ever fails a command.
 */
public final class CacheFolder implements ScriptStore {
  private static final int MOST = 200;
  private static final int SUM = 32;
  private static final long LARGEST = 32 << 20;
  private static final Set<PosixFilePermission> OWN = PosixFilePermissions.fromString("rwx------");

  private final Path folder;
  private final int most;
  private final long mostBytes;

  /** A folder of small files. */
  public CacheFolder(Path folder) {
    this(folder, MOST, MOST * LARGEST);
  }

  /**
   * A folder.
   *
   * @param most how many files are kept
   * @param mostBytes how large they may be together
   */
  public CacheFolder(Path folder, int most, long mostBytes) {
    this.folder = folder;
    this.most = most;
    this.mostBytes = mostBytes;
  }

  @Override
  public Optional<byte[]> get(String key) {
    Path file = folder.resolve(key);
    try {
      if (!isOwn()
          || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          || !isMine(file)
          || Files.size(file) > LARGEST) {
        return Optional.empty();
      }
      byte[] all = Files.readAllBytes(file);
      byte[] bytes = Arrays.copyOfRange(all, Math.min(SUM, all.length), all.length);
      boolean whole = all.length >= SUM && Arrays.equals(sum(bytes), Arrays.copyOf(all, SUM));
      return whole ? Optional.of(bytes) : Optional.empty();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  @Override
  public void put(String key, byte[] bytes) {
    try {
      create();
      if (!isOwn() || bytes.length > LARGEST - SUM) {
        return;
      }
      // Written beside and moved into place: another run never reads half a file.
      Path part = Files.createTempFile(folder, "part", "");
      try {
        byte[] all = Arrays.copyOf(sum(bytes), SUM + bytes.length);
        System.arraycopy(bytes, 0, all, SUM, bytes.length);
        Files.write(part, all);
        Files.move(part, folder.resolve(key), StandardCopyOption.ATOMIC_MOVE);
      } finally {
        Files.deleteIfExists(part);
      }
      forgetOldest();
    } catch (IOException | RuntimeException e) {
      // A cache that cannot be written saves nothing; the plan is drawn all the same.
    }
  }

  /** Told apart from what a full disk left; whoever may write here may also write the sum. */
  private static byte[] sum(byte[] bytes) {
    return Sha256.begin().digest(bytes);
  }

  /**
   * Makes the folder if nothing stands there. One that does stays as it is: what others could put
   * there is not to be trusted only because they no longer can, and a link may lead to a folder
   * that others are meant to read.
   */
  private void create() throws IOException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    Files.createDirectories(folder.toAbsolutePath().getParent());
    try {
      if (posix()) {
        Files.createDirectory(folder, PosixFilePermissions.asFileAttribute(OWN));
      } else {
        Files.createDirectory(folder);
      }
    } catch (FileAlreadyExistsException e) {
      // Another run was faster; whether it is of use is seen next.
    }
  }

  private boolean isOwn() throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    return !posix() || isMine(folder) && OWN.containsAll(Files.getPosixFilePermissions(folder));
  }

  private boolean isMine(Path path) throws IOException {
    return !posix()
        || Files.getOwner(path, LinkOption.NOFOLLOW_LINKS)
            .getName()
            .equals(System.getProperty("user.name"));
  }

  private boolean posix() {
    return folder.getFileSystem().supportedFileAttributeViews().contains("posix");
  }

  private void forgetOldest() throws IOException {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder)) {
      all.forEach(files::add);
    }
    files.sort(Comparator.comparing(CacheFolder::age).reversed());
    long bytes = 0;
    for (int i = 0; i < files.size(); i++) {
      bytes += Files.size(files.get(i));
      if (i >= most || bytes > mostBytes) {
        Files.deleteIfExists(files.get(i));
      }
    }
  }

  private static FileTime age(Path file) {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException e) {
      return FileTime.fromMillis(0);
    }
  }
}
