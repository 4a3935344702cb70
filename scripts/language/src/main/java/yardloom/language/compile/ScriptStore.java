package yardloom.language.compile;

import java.util.Optional;

/** Keeps compiled scripts from run to run; what it gives back is never trusted. */
public interface ScriptStore {
  /** Keeps nothing. */
  ScriptStore NONE =
      new ScriptStore() {
        @Override
        public Optional<byte[]> get(String key) {
          return Optional.empty();
        }

        @Override
        public void put(String key, byte[] bytes) {}
      };

  /** What was kept under {@code key}, if it is still there. */
  Optional<byte[]> get(String key);

  /** Keeps {@code bytes}, or lets it be where that is not possible. */
  void put(String key, byte[] bytes);
}
