/**
 * What makes current or keeps it: batteries, alternators, converters. One file a kind; no other
 * room names one. In: plain SI numbers. Out: parts. Knows no candidate, no solver, no time, no
 * file.
 */
@NullMarked
package stillturning.parts.source;

import org.jspecify.annotations.NullMarked;
