package yardloom.facts.mulch;

import yardloom.kernel.source.Source;

/**
 * One way to come by an item of the bill.
 *
 * @param item as the bill has it
 * @param cost in words, such as {@code free or small fee}
 * @param ask what to ask for
 * @param leadDays how long ahead to ask
 */
public record ItemSource(
    String item,
    String from,
    String cost,
    String ask,
    String refuse,
    int leadDays,
    Source source) {}
