/** How even is what was measured, and how much longer must it run? Start with {@link CatchWords}. */
package yardloom.water.catchtest;
