package yardloom.program.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.SortedMap;
import java.util.TreeMap;
import yardloom.language.compile.ScriptFiles;
import yardloom.language.compile.Sha256;
import yardloom.program.output.OutputFolder;

/**
 * Tells whether a lot would be drawn from the same things: the plan and the scripts and data files
 * in its folder, which it may include, the lot's values, and what else is named.
 */
public final class Fingerprint {
  private static final int DEPTH = 3;

  private final String base;

  private Fingerprint(String base) {
    this.base = base;
  }

  /**
   * That of a plan.
   *
   * @param out the folder of the output, which is not read
   * @param list the list of lots, whose rows count one by one
   */
  public static Fingerprint of(Path plan, Path out, Path list) {
    SortedMap<String, String> files = new TreeMap<>();
    Path folder = plan.toAbsolutePath().normalize().getParent();
    try {
      Files.walkFileTree(
          folder,
          EnumSet.noneOf(FileVisitOption.class),
          DEPTH,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes) {
              boolean ours =
                  dir.equals(out.toAbsolutePath().normalize())
                      || OutputFolder.isOne(dir)
                      || dir.getFileName() != null && dir.getFileName().toString().startsWith(".");
              return ours && !dir.equals(folder)
                  ? FileVisitResult.SKIP_SUBTREE
                  : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
                throws IOException {
              if (attributes.isRegularFile()
                  && ScriptFiles.mayRead(file.getFileName().toString())
                  && !file.equals(list.toAbsolutePath().normalize())) {
                files.put(folder.relativize(file).toString(), digest(Files.readAllBytes(file)));
              }
              return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException e) {
      // What cannot be read here cannot be read by the plan either.
    }
    return new Fingerprint(plan.getFileName() + files.toString());
  }

  /** The same with more that matters. */
  public Fingerprint with(String more) {
    return new Fingerprint(base + "\n" + more);
  }

  /** That of a lot. */
  public String of(LotRow lot) {
    return digest((base + "\n" + lot.settings()).getBytes(StandardCharsets.UTF_8));
  }

  private static String digest(byte[] bytes) {
    return HexFormat.of().formatHex(Sha256.begin().digest(bytes));
  }
}
