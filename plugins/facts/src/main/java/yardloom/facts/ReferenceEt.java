package yardloom.facts;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Length;

/**
 * What the air takes from short grass that lacks no water, January to December.
 *
 * @param months the depth of a whole month, never negative
 * @param tall the same for tall alfalfa; empty where the method gives short grass only
 * @param method how it was found, for notes
 */
public record ReferenceEt(List<Derived<Length>> months, List<Derived<Length>> tall, String method) {
  public ReferenceEt {
    months = List.copyOf(months);
    tall = List.copyOf(tall);
  }
}
