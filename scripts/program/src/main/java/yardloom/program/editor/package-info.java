/**
 * Help for editors while a plan is written: what may stand at a place, what stands there, what is
 * wrong. Start with {@link yardloom.program.editor.PlanHelp}; {@link
 * yardloom.program.editor.PlanServer} speaks the Language Server Protocol.
 */
package yardloom.program.editor;
