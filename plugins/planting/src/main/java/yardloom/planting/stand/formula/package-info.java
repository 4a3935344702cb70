/**
 * The growing season of a climate and the four-stage curve of crop coefficients over it. Start with
 * {@link yardloom.planting.stand.formula.CropCurve}.
 */
package yardloom.planting.stand.formula;
