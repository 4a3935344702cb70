package yardloom.language.compile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/** Reads scripts and data files, and keeps what a script names below the folder of the plan. */
public final class ScriptFiles {
  private static final long MAX_BYTES = 1 << 20;
  private static final long MAX_FORM_BYTES = 12 << 20;
  private static final String SCRIPT_ENDING = ".groovy";
  private static final List<String> DATA_ENDINGS =
      List.of(".geojson", ".json", ".csv", ".wkt", ".txt", ".svg");

  private final Path root;

  private ScriptFiles(Path root) {
    this.root = root;
  }

  /** The folder tree that {@code plan} may include from. */
  static ScriptFiles around(Path plan) {
    try {
      return new ScriptFiles(plan.toRealPath().getParent());
    } catch (IOException e) {
      throw new PlanException(
          ProblemCode.FILE,
          new SourceRef(plan.toString(), 0, 0),
          "there is no such file, or it cannot be read");
    }
  }

  /** Whether a plan may read a file of this name, as a script or as data. */
  public static boolean mayRead(String file) {
    return file.endsWith(SCRIPT_ENDING) || isData(file);
  }

  private static boolean isData(String file) {
    return DATA_ENDINGS.stream().anyMatch(file::endsWith);
  }

  /** The real path of an included script, links followed. */
  Path included(String name, Path from) {
    String file = name.endsWith(SCRIPT_ENDING) ? name : name + SCRIPT_ENDING;
    Path real = below("include", name, file, from);
    if (!real.getFileName().toString().endsWith(SCRIPT_ENDING)) {
      throw new PlanException(ProblemCode.FORBIDDEN, "'" + name + "' is not a script file");
    }
    return real;
  }

  /** The real path of a data file, links followed. */
  Path data(String name, Path from) {
    requireData(name, name);
    Path real = below("fileText", name, name, from);
    requireData(name, real.getFileName().toString());
    return real;
  }

  private static void requireData(String name, String file) {
    if (!isData(file)) {
      throw new PlanException(
          ProblemCode.FORBIDDEN,
          "'" + name + "' is no data file; `fileText` reads " + String.join(" ", DATA_ENDINGS));
    }
  }

  private Path below(String word, String name, String file, Path from) {
    if (!file.matches("[\\p{L}0-9_./-]+") || file.startsWith("/")) {
      throw new PlanException(
          ProblemCode.FORBIDDEN,
          "`"
              + word
              + "` takes the plain name of a file below the plan's folder; got '"
              + name
              + "'");
    }
    try {
      Path real = from.resolveSibling(file).toRealPath();
      if (!real.startsWith(root)) {
        throw new PlanException(
            ProblemCode.FORBIDDEN, "'" + name + "' lies outside the plan's own folder");
      }
      if (!Files.isRegularFile(real)) {
        throw new PlanException(ProblemCode.FORBIDDEN, "'" + name + "' is not a plain file");
      }
      return real;
    } catch (IOException | InvalidPathException e) {
      throw new PlanException(
          ProblemCode.FILE, "there is no file '" + file + "' in the plan's folder");
    }
  }

  /**
   * The text with lines that end in line feeds, whatever editor wrote it, and no byte order mark.
   */
  static String read(Path real, String shown) {
    return read(real, shown, MAX_BYTES);
  }

  /** A text as a file with it would be read: no byte order mark, lines that end in line feeds. */
  static String plain(String text) {
    return text.replaceFirst("^\uFEFF", "").replace("\r\n", "\n").replace('\r', '\n');
  }

  /** The text of a plan in its JSON form, which is longer than a script. */
  public static String readForm(Path form) {
    return read(form, form.toString(), MAX_FORM_BYTES);
  }

  /** The text of whatever a plan may be read from. */
  static String readAny(Path real) {
    return read(real, real.toString(), MAX_FORM_BYTES);
  }

  private static String read(Path real, String shown, long maxBytes) {
    SourceRef place = new SourceRef(shown, 0, 0);
    if (Files.isDirectory(real)) {
      throw new PlanException(
          ProblemCode.FILE, place, "this is a folder; name the script in it, such as plan.groovy");
    }
    try {
      if (Files.size(real) > maxBytes) {
        throw new PlanException(
            ProblemCode.LIMIT,
            place,
            "the file is larger than " + (maxBytes >> 20) + " MB, the most that is read");
      }
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(Files.readAllBytes(real)))
              .toString();
      return plain(text);
    } catch (CharacterCodingException e) {
      throw new PlanException(
          ProblemCode.FILE, place, "the file is not UTF-8 text; save it with the encoding UTF-8");
    } catch (IOException e) {
      throw new PlanException(ProblemCode.FILE, place, "the file cannot be read");
    }
  }
}
