package yardloom.program.cache;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import yardloom.language.compile.SourceFile;

/**
 * A plan as it was drawn: its files and what was said about it.
 *
 * @param id the name of its folder
 * @param told what the console said after the name of the folder
 * @param errors whether some finding was an error
 * @param sources the files that the plan was read from
 * @param files the files written, by name in the folder
 */
public record KeptDrawing(
    String id,
    List<String> told,
    boolean errors,
    List<SourceFile> sources,
    SortedMap<String, byte[]> files) {
  private static final int MAGIC = 0x594c4431;

  /** What is written beyond this is not kept: pictures of many sheets fill a cache in no time. */
  private static final long LARGEST = 48 << 20;

  /** What {@code folder} holds now; empty if that is too much to keep. */
  public static Optional<SortedMap<String, byte[]>> filesOf(Path folder) throws IOException {
    List<Path> all;
    try (Stream<Path> tree = Files.walk(folder)) {
      all = tree.filter(Files::isRegularFile).filter(f -> !isHidden(f)).toList();
    }
    SortedMap<String, byte[]> files = new TreeMap<>();
    long size = 0;
    for (Path file : all) {
      size += Files.size(file);
      if (size > LARGEST) {
        return Optional.empty();
      }
      files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
    }
    return Optional.of(files);
  }

  private static boolean isHidden(Path file) {
    return file.getFileName().toString().startsWith(".");
  }

  /** The same with these files. */
  public KeptDrawing with(SortedMap<String, byte[]> written) {
    return new KeptDrawing(id, told, errors, sources, written);
  }

  /** Writes the files into {@code folder}, which must exist. */
  public void write(Path folder) throws IOException {
    Path last = folder;
    for (var file : files.entrySet()) {
      Path place = folder.resolve(file.getKey());
      if (!place.getParent().equals(last)) {
        last = Files.createDirectories(place.getParent());
      }
      Files.write(place, file.getValue());
    }
  }

  /** Whether the plan would be read from the very same texts. */
  public boolean stands() {
    return sources.stream().allMatch(SourceFile::isUnchanged);
  }

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    Deflater fast = new Deflater(Deflater.BEST_SPEED);
    try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(bytes, fast))) {
      out.writeInt(MAGIC);
      write(out, id);
      out.writeBoolean(errors);
      out.writeInt(told.size());
      for (String line : told) {
        write(out, line);
      }
      out.writeInt(sources.size());
      for (SourceFile source : sources) {
        write(out, source.asked());
        write(out, source.real());
        write(out, source.sum());
      }
      out.writeInt(files.size());
      for (var file : files.entrySet()) {
        write(out, file.getKey());
        write(out, file.getValue());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      fast.end();
    }
    return bytes.toByteArray();
  }

  private static void write(DataOutputStream out, String text) throws IOException {
    write(out, text.getBytes(StandardCharsets.UTF_8));
  }

  private static void write(DataOutputStream out, byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  /** Reads what {@link #bytes} wrote; empty for anything else. */
  static Optional<KeptDrawing> read(byte[] bytes) {
    try (DataInputStream in =
        new DataInputStream(new InflaterInputStream(new ByteArrayInputStream(bytes)))) {
      if (in.readInt() != MAGIC) {
        return Optional.empty();
      }
      String id = text(in);
      boolean errors = in.readBoolean();
      List<String> told = new ArrayList<>();
      for (int i = in.readInt(); i > 0; i--) {
        told.add(text(in));
      }
      List<SourceFile> sources = new ArrayList<>();
      for (int i = in.readInt(); i > 0; i--) {
        sources.add(new SourceFile(text(in), text(in), text(in)));
      }
      SortedMap<String, byte[]> files = new TreeMap<>();
      for (int i = in.readInt(); i > 0; i--) {
        files.put(inside(text(in)), array(in));
      }
      return Optional.of(new KeptDrawing(id, told, errors, sources, files));
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  /** A name that leads nowhere but into the folder, whatever somebody wrote into the cache. */
  private static String inside(String name) throws IOException {
    for (String part : name.split("/", -1)) {
      if (part.isEmpty() || part.startsWith(".") || part.contains("\\") || part.contains(":")) {
        throw new IOException("not the name of a file in a folder: " + name);
      }
    }
    return name;
  }

  private static String text(DataInputStream in) throws IOException {
    return new String(array(in), StandardCharsets.UTF_8);
  }

  private static byte[] array(DataInputStream in) throws IOException {
    int length = in.readInt();
    byte[] bytes = length < 0 || length > LARGEST ? null : in.readNBytes(length);
    if (bytes == null || bytes.length < length) {
      throw new IOException("not a length: " + length);
    }
    return bytes;
  }
}
