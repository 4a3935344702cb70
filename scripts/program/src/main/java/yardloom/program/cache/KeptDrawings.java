package yardloom.program.cache;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import yardloom.language.compile.ScriptStore;
import yardloom.language.compile.Sha256;

/**
 * Plans as they were drawn last, so that one of which nothing changed is only written again.
 *
 * @param stamp changes with every build of the program
 */
public record KeptDrawings(ScriptStore store, String stamp) {
  public static final KeptDrawings OFF = new KeptDrawings(ScriptStore.NONE, "");

  /** Whether anything is kept at all. */
  public boolean isOn() {
    return store != ScriptStore.NONE;
  }

  /**
   * The drawing that was made when all of {@code asked} was as it is, if all files that the plan
   * was read from still say the same.
   */
  public Optional<KeptDrawing> find(List<String> asked) {
    return isOn()
        ? store.get(key(asked)).flatMap(KeptDrawing::read).filter(KeptDrawing::stands)
        : Optional.empty();
  }

  /** Keeps a drawing for the next time that the same is asked. */
  public void keep(List<String> asked, KeptDrawing drawing) {
    if (isOn()) {
      store.put(key(asked), drawing.bytes());
    }
  }

  private String key(List<String> asked) {
    MessageDigest digest = Sha256.begin();
    digest.update(stamp.getBytes(StandardCharsets.UTF_8));
    for (String part : asked) {
      byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
      digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
      digest.update(bytes);
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
