package yardloom.language.compile;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A compiled script as bytes, with what it asked for while it was compiled.
 *
 * @param asked each included script or data file in the order of asking, with the answer
 */
record StoredScript(
    String className, Map<String, byte[]> classes, List<String> parameters, List<Asked> asked) {
  private static final int MAGIC = 0x594c5331;
  private static final int MOST = 100_000;

  /**
   * A question and its answer.
   *
   * @param script whether it asked for a script, else for a data file
   * @param key the class of the script, or the key of the data
   * @param parameters those of the script
   */
  record Asked(boolean script, String name, String key, List<String> parameters) {}

  byte[] bytes() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeInt(MAGIC);
      out.writeUTF(className);
      write(out, parameters);
      out.writeInt(asked.size());
      for (Asked each : asked) {
        out.writeBoolean(each.script());
        out.writeUTF(each.name());
        out.writeUTF(each.key());
        write(out, each.parameters());
      }
      out.writeInt(classes.size());
      for (Map.Entry<String, byte[]> each : new TreeMap<>(classes).entrySet()) {
        out.writeUTF(each.getKey());
        out.writeInt(each.getValue().length);
        out.write(each.getValue());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void write(DataOutputStream out, List<String> texts) throws IOException {
    out.writeInt(texts.size());
    for (String text : texts) {
      out.writeUTF(text);
    }
  }

  /** Reads what {@link #bytes} wrote; empty for anything else. */
  static Optional<StoredScript> read(byte[] bytes) {
    try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
      if (in.readInt() != MAGIC) {
        return Optional.empty();
      }
      String className = in.readUTF();
      List<String> parameters = texts(in);
      List<Asked> asked = new ArrayList<>();
      for (int i = count(in); i > 0; i--) {
        asked.add(new Asked(in.readBoolean(), in.readUTF(), in.readUTF(), texts(in)));
      }
      Map<String, byte[]> classes = new TreeMap<>();
      for (int i = count(in); i > 0; i--) {
        String name = in.readUTF();
        byte[] code = new byte[Math.min(in.readInt(), bytes.length)];
        in.readFully(code);
        classes.put(name, code);
      }
      return Optional.of(new StoredScript(className, classes, parameters, asked));
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private static List<String> texts(DataInputStream in) throws IOException {
    List<String> texts = new ArrayList<>();
    for (int i = count(in); i > 0; i--) {
      texts.add(in.readUTF());
    }
    return texts;
  }

  private static int count(DataInputStream in) throws IOException {
    int count = in.readInt();
    if (count < 0 || count > MOST) {
      throw new IOException("not a count: " + count);
    }
    return count;
  }
}
