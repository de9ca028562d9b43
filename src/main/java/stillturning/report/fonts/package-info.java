/**
 * The fonts that are shipped. In: nothing. Out: their files. Knows no paper and no screen.
 *
 * <p>Decision: <b>DejaVu in TrueType</b>, since it has the signs that electrical papers use
 * (&Omega;, &micro;, &le;, &rarr;), may be embedded, and is read by the screen's toolkit and by the
 * setter of PDF alike; the latter refuses OpenType with CFF outlines. Its terms lie beside it.
 */
@NullMarked
package stillturning.report.fonts;

import org.jspecify.annotations.NullMarked;
