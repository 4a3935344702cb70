package yardloom.kernel.spi;

import java.util.List;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.vocab.Lexicon;

/** Plugins that work together, sorted by id, with all their words and calculators. */
public record Plugins(List<YardPlugin> all, Lexicon lexicon, FactGraph graph) {
  public Plugins {
    all = List.copyOf(all);
  }
}
