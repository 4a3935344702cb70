package yardloom.program.batch;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/**
 * What is done, one small file a lot, written after the lot's own folder is complete. A lot whose
 * parameters, plan or files have changed since then is not done.
 */
final class DoneLots {
  private final Path out;
  private final Path folder;

  DoneLots(Path out) {
    this.out = out;
    this.folder = out.resolve(".batch");
  }

  /** The result of a lot that was drawn from the same things before. */
  Optional<LotResult> find(LotRow lot, String fingerprint) {
    Path file = file(lot);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try {
      JsonNode kept = new ObjectMapper().readTree(Files.readString(file, StandardCharsets.UTF_8));
      LotResult result = result(kept);
      boolean same = kept.path("fingerprint").asText().equals(fingerprint);
      // What failed is tried again: the machine may have been the reason.
      boolean stands = Files.isDirectory(out.resolve(lot.name()));
      return same && stands && !result.result().equals(LotResult.FAILED)
          ? Optional.of(result)
          : Optional.empty();
    } catch (IOException e) {
      // A file that cannot be read proves nothing; the lot is drawn again.
      return Optional.empty();
    }
  }

  private static LotResult result(JsonNode kept) {
    return new LotResult(
        kept.path("lot").asText(),
        kept.path("result").asText(LotResult.FAILED),
        kept.path("errors").asInt(),
        kept.path("warnings").asInt(),
        kept.path("area").asText(),
        kept.path("hours").asText(),
        kept.path("cost").asText(),
        kept.path("message").asText());
  }

  /**
   * Forgets what is done of a lot; its drawings stay until it is drawn again.
   *
   * @throws UncheckedIOException if the file of it cannot be removed
   */
  void forget(LotRow lot) {
    try {
      Files.deleteIfExists(file(lot));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  void keep(LotRow lot, String fingerprint, LotResult result) throws IOException {
    ObjectNode node =
        new ObjectMapper()
            .createObjectNode()
            .put("fingerprint", fingerprint)
            .put("lot", result.lot())
            .put("result", result.result())
            .put("errors", result.errors())
            .put("warnings", result.warnings())
            .put("area", result.area())
            .put("hours", result.hours())
            .put("cost", result.cost())
            .put("message", result.message());
    Files.createDirectories(folder);
    whole(file(lot), node.toString());
  }

  private Path file(LotRow lot) {
    return folder.resolve(lot.name() + ".json");
  }

  /** Writes a file beside its place and moves it there. */
  static void whole(Path file, String text) throws IOException {
    Path part = file.resolveSibling("." + file.getFileName() + ".part");
    Files.writeString(part, text, StandardCharsets.UTF_8);
    Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
  }
}
