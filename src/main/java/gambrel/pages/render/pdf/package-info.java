/** PDF A-3a and PDF UA-1: tags, fonts, metadata and attachments. */
package gambrel.pages.render.pdf;
