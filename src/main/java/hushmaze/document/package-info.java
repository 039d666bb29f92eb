/** Drawings and lists as files: PDF, SVG and CSV, and the whole set of a project. The only package that knows PDF. */
package hushmaze.document;
