/** Pressure by flow at a tap and behind its parts. */
package yardloom.water.head.formula;
