package yardloom.planting.care;

import yardloom.kernel.source.Source;

/**
 * What is done, and how.
 *
 * @param what names it for the household
 */
public record CareTask(Act act, String what, String how, Source source) {}
