package yardloom.facts;

import yardloom.kernel.source.Source;

/**
 * Whom to ask for marks of buried lines where the yard lies.
 *
 * @param country by ISO 3166, two letters
 * @param call what to do, such as {@code call 811 some working days before}
 */
public record DigCall(String country, String call, Source source) {}
