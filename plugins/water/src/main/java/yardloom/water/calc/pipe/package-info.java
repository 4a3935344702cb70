/**
 * Water in pipes: friction, fittings, laterals and small networks, in metres of water and cubic
 * metres per second. Start with {@link yardloom.water.calc.pipe.Lateral} or {@link
 * yardloom.water.calc.pipe.PipeNetwork}.
 */
package yardloom.water.calc.pipe;
