/**
 * How much head does water lose on its way, and what comes out of each outlet? Heads in metres,
 * flows in cubic metres a second, diameters in metres. Start with {@link
 * yardloom.water.pipe.formula.Lateral} for one row and {@link
 * yardloom.water.pipe.formula.PipeNetwork} for trees and loops.
 */
package yardloom.water.pipe.formula;
