/**
 * Command break: one class a question. {@code BreakQuestion} says which options ask which question
 * and refuses what no question takes; each question turns a request into an answer.
 */
@NullMarked
package stillturning.cli.breaking;

import org.jspecify.annotations.NullMarked;
