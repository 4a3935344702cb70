/**
 * One plan over many lots: the lots of a list are drawn on all cores, each into a folder of its
 * own; what is done is kept, so that a run that was stopped goes on where it was. Start with {@link
 * yardloom.program.batch.Batch}.
 */
package yardloom.program.batch;
