package soapstone.page;

import java.util.List;

/**
 * The answers as they read, to be looked over before they are handed in.
 *
 * @param sheet    with every answer read back
 * @param empty    letters of the boxes that nothing stands in
 * @param doubtful whether some must be written again
 * @param nothing  whether all boxes are empty
 * @param receipt  made for this page: sent twice it counts once
 */
public record WorkReviewView(WorkPlace at, SheetView sheet, List<String> empty, boolean doubtful, boolean nothing, String receipt) {

    public WorkReviewView {
        empty = List.copyOf(empty);
    }
}
