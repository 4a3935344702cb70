package yardloom.program.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * A folder that appears whole or not at all: files are written beside it and moved into place at
 * the end; an earlier folder of the same name is kept until then.
 */
public final class OutputFolder {
  /** Longer than any drawing takes to be written. */
  private static final Duration ABANDONED = Duration.ofHours(1);

  private static final String MARKER = ".yardloom";

  /** Processes that write one folder at one moment are two, not twenty. */
  private static final int MOST_TRIES = 20;

  /** Folders that are being filled; whoever ends the process in between finds none of them. */
  private static final Set<Path> UNFINISHED = ConcurrentHashMap.newKeySet();

  /** Held while a folder takes the place of another, and for good once the process ends. */
  private static final Object PLACES = new Object();

  static {
    Runtime.getRuntime().addShutdownHook(new Thread(OutputFolder::abandon));
  }

  private OutputFolder() {}

  private static void abandon() {
    synchronized (PLACES) {
      // Threads that still fill them find no folder, and no folder of theirs can take its place.
      UNFINISHED.forEach(OutputFolder::deleteQuietly);
    }
  }

  /** Fills the new folder; may throw, then nothing changes on disk. */
  @FunctionalInterface
  public interface Filler {
    void fill(Path folder) throws IOException;
  }

  /**
   * Writes {@code target} anew.
   *
   * @throws PlanException (FILE) if it cannot be written, or stands there and was not made by this
   *     program
   */
  public static void write(Path target, Filler filler) {
    refuseForeign(target);
    Path parent = target.toAbsolutePath().getParent();
    Path fresh = null;
    try {
      Files.createDirectories(parent);
      sweep(parent, "." + target.getFileName() + "-");
      fresh = Files.createTempDirectory(parent, "." + target.getFileName() + "-");
      UNFINISHED.add(fresh);
      Files.createFile(fresh.resolve(MARKER));
      filler.fill(fresh);
      synchronized (PLACES) {
        replace(fresh, target);
      }
    } catch (IOException | UncheckedIOException e) {
      throw new PlanException(
          ProblemCode.FILE, "cannot write " + target + ": " + reason(e) + "; nothing was changed");
    } finally {
      deleteQuietly(fresh);
      if (fresh != null) {
        UNFINISHED.remove(fresh);
      }
    }
  }

  /** Takes away what killed processes left unfinished; one that still writes is younger. */
  private static void sweep(Path parent, String begins) throws IOException {
    FileTime old = FileTime.from(Instant.now().minus(ABANDONED));
    try (DirectoryStream<Path> all =
        Files.newDirectoryStream(
            parent, p -> p.getFileName().toString().matches(Pattern.quote(begins) + "\\d+"))) {
      for (Path left : all) {
        if (isOne(left) && Files.getLastModifiedTime(left.resolve(MARKER)).compareTo(old) < 0) {
          deleteQuietly(left);
        }
      }
    } catch (DirectoryIteratorException | NoSuchFileException e) {
      // Another process takes the same away.
    }
  }

  /** Whether the folder was written by this program. */
  public static boolean isOne(Path folder) {
    return Files.exists(folder.resolve(MARKER));
  }

  private static void refuseForeign(Path target) {
    for (Path up = target; up != null; up = up.getParent()) {
      if (isFile(up)) {
        throw new PlanException(
            ProblemCode.FILE, up + " is a file; name another output folder with --out");
      }
    }
    if (isForeign(target) && isForeign(target)) {
      throw new PlanException(
          ProblemCode.FILE,
          "the folder "
              + target
              + " holds other files and would be replaced; move them or name another folder with"
              + " --out");
    }
  }

  /** Whether something else than a folder stands there, in one look: it may come and go. */
  private static boolean isFile(Path place) {
    try {
      return !Files.readAttributes(place, BasicFileAttributes.class).isDirectory();
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * Whether the folder holds files, and no mark of this program among them. Another process may put
   * one of its own in the place and take it away meanwhile: what seems foreign is looked at twice.
   */
  private static boolean isForeign(Path folder) {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (var files = Files.list(folder)) {
      List<Path> all = files.toList();
      return !all.isEmpty() && !all.contains(folder.resolve(MARKER));
    } catch (NoSuchFileException e) {
      return false;
    } catch (IOException | UncheckedIOException e) {
      return true;
    }
  }

  /**
   * Puts {@code fresh} in the place of {@code target}. Another process may do the same at the same
   * time: then whoever comes last wins, and of the other nothing is left.
   */
  private static void replace(Path fresh, Path target) throws IOException {
    Path old = fresh.resolveSibling(fresh.getFileName() + "-old");
    for (int tries = 1; true; tries++) {
      boolean taken = take(target, old);
      try {
        move(fresh, target);
        deleteQuietly(old);
        return;
      } catch (IOException e) {
        if (taken) {
          putBack(old, target);
        }
        if (tries >= MOST_TRIES || !Files.isDirectory(target) || !Files.isDirectory(fresh)) {
          throw e;
        }
      }
    }
  }

  /** Moves the folder away if it is there; another process may have done so just now. */
  private static boolean take(Path target, Path old) throws IOException {
    if (!Files.exists(target)) {
      return false;
    }
    try {
      Files.move(target, old);
      return true;
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  private static void move(Path fresh, Path target) throws IOException {
    try {
      Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(fresh, target);
    }
  }

  /** The old folder stays what it was, unless another process has put a new one there. */
  private static void putBack(Path old, Path target) throws IOException {
    if (!Files.exists(target)) {
      try {
        move(old, target);
        return;
      } catch (IOException e) {
        if (!Files.exists(target)) {
          throw e;
        }
      }
    }
    deleteQuietly(old);
  }

  private static String reason(Exception e) {
    Throwable cause = e instanceof UncheckedIOException ? e.getCause() : e;
    if (cause instanceof AccessDeniedException denied) {
      return "there is no permission to write " + denied.getFile();
    }
    return cause.getClass().getSimpleName().replace("Exception", "")
        + (cause.getMessage() == null ? "" : " (" + cause.getMessage() + ")");
  }

  private static void deleteQuietly(Path folder) {
    if (folder == null || !Files.exists(folder)) {
      return;
    }
    try {
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
                throws IOException {
              Files.delete(file);
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path dir, IOException failure)
                throws IOException {
              Files.delete(dir);
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException e) {
      // What is left is a hidden folder beside the output; the next run does not read it.
    }
  }
}
