/** The Explain area: what goes onto the page, the builder's words, and the page as it prints. */
@NullMarked
package stillturning.desktop.view.explain;

import org.jspecify.annotations.NullMarked;
