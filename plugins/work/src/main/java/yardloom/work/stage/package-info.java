/**
 * What is made when, where a yard is made in stages: the stages with their days, and the table of
 * them. Start at {@link yardloom.work.stage.Stages}.
 */
package yardloom.work.stage;
