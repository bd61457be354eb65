/** Pages as PDF: layout by Flying Saucer and OpenPDF. */
package gambrel.pages.render;
