/**
 * Turns a template and one view record into the bytes of a PDF.
 *
 * <p>The only package that knows the template language, the XHTML layout engine and the PDF
 * library. It knows nothing of meat: what a page says is decided by the view it is given, how it
 * looks by the templates.
 */
package gambrel.render;
