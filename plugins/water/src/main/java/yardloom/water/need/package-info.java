/**
 * What must be given to each bed and tree, month by month, once its plants are grown, and how often
 * while a tree is young? Crop use less the rain that roots can use. Volumes and depths of whole
 * months, January first. Start with {@link yardloom.water.need.DemandCalculator}.
 */
package yardloom.water.need;
