/**
 * What the page's explorer asks: every failure of every candidate, with what the drawing shows at
 * each moment, as compact JSON, and the script that reads it. In: an assessment. Out: texts for the
 * page. Knows no layout of a page, no file, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>States, not pictures.</b> The page holds the drawing of a candidate once; a moment of a
 *       story is the list of symbols and lines that change there. One picture of each story took
 *       two thirds of the page and told only the stories that had one. Held by {@code
 *       ExplorerTest}.
 *   <li><b>Every text once.</b> Sentences, changes and samples that come back are numbers into one
 *       list ({@code NumberedTexts}). Turned down: packing, which a browser can undo only where it
 *       has the means for it, and which nobody can read or search.
 *   <li><b>A script of our own, named by its hash</b>; everything else that could run or be fetched
 *       is refused by the page's policy. What comes from a study is put into the page as text only.
 *       Turned down: a library, which is larger than the script. Held by {@code ExplorerPageTest}
 *       in the web view.
 *   <li><b>Of every pair what it comes to, of few the story.</b> Where pairs were searched, the
 *       page says of any two events whether the engine lasts until a landing, as the search found
 *       it; the story is there for the likeliest pairs that end it, no event in more than two of
 *       them, and the page says where it is not. All stories would be hundreds of megabytes. Held
 *       by {@code ExplorerPairsPageTest}, pair by pair.
 *   <li><b>The script adds up points, and decides nothing else.</b> Values are turned into worths
 *       here; weights times worths, missed requirements first and level sums are as in {@code
 *       assess.ranking}. Held by {@code ExplorerPageTest}.
 * </ul>
 */
@NullMarked
package stillturning.report.explorer;

import org.jspecify.annotations.NullMarked;
