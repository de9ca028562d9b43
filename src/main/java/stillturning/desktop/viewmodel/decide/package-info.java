/**
 * The choice among candidates as a screen shows it: requirements, weights and the ranks that follow
 * them, trade-offs, two candidates beside each other. In: an assessment. Out: properties, lists and
 * values in words. Knows no scene and computes no story; why a slider only ranks again is decided
 * in {@code assess.ranking}.
 */
@NullMarked
package stillturning.desktop.viewmodel.decide;

import org.jspecify.annotations.NullMarked;
