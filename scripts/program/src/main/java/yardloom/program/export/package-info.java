/**
 * Pictures, print files and the report page of finished sheets. The only user of Batik, FOP and
 * PDFBox; no font of the machine is used and nothing is fetched from outside. Start with {@link
 * yardloom.program.export.PngWriter}.
 */
package yardloom.program.export;
