package hushmaze.drawing.page;

import hushmaze.drawing.Sketch;
import hushmaze.drawing.draft.Scale;
import hushmaze.drawing.draft.SheetFrame;

/**
 * A page that still lacks its frame and title block, because the number of pages is not known yet.
 *
 * @param title of the page
 * @param type of document
 * @param scale of all views on it; null if nothing is to scale
 * @param sheet it is on
 * @param content in page coordinates
 */
record Draft(String title, String type, Scale scale, SheetFrame sheet, Sketch content) {}
