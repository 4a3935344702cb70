/**
 * The guide, made from the vocabulary: a page for each word with an example that runs. Start with
 * {@link yardloom.program.guide.GuidePages}.
 */
package yardloom.program.guide;
