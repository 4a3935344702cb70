package yardloom.facts;

import yardloom.kernel.source.Source;

/**
 * Whom to ask for marks of buried lines where the yard lies.
 *
 * @param call what to do, such as {@code call 811 some working days before}
 */
public record DigCall(String call, Source source) {}
