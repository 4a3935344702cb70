package yardloom.kernel.vocab;

import java.util.List;

/**
 * The words that one plugin, or the kernel, brings.
 *
 * @param plugin the id of who brings them; {@code kernel} for the kernel's own
 * @param wordClasses classes with {@link Verb} methods
 */
public record Vocabulary(String plugin, List<Class<?>> wordClasses) {
  public Vocabulary {
    wordClasses = List.copyOf(wordClasses);
  }
}
