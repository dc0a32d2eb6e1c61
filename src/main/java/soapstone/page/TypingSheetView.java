package soapstone.page;

import java.util.List;
import java.util.Optional;
import soapstone.source.Message;

/**
 * A sheet whose answers are typed in.
 *
 * @param sheet  names it in addresses
 * @param looked whether what is typed was looked at: the verdicts stand at the boxes and nothing is kept yet
 * @param good   whether it can be kept as it is
 * @param fault  what is wrong with the whole of it
 * @param late   whether the paper came late
 * @param next   number of the sheet to go on to
 * @param fixing the place whose answers are put right; 0 for a sheet that is typed in
 */
public record TypingSheetView(long sheet, String number, String who, long assignment, String title, String className, List<Part> parts, boolean looked, boolean good,
        Optional<Message> fault, boolean late, String next, int fixing) {

    /**
     * A problem.
     *
     * @param story   as it stands on the paper
     * @param boxes   to be filled in; empty where nothing is taken
     * @param refusal why not
     * @param kept    what is there already
     */
    public record Part(int place, String title, String story, List<AnswerBox> boxes, Optional<Message> refusal, List<Kept> kept) {

        public Part {
            boxes = List.copyOf(boxes);
            kept = List.copyOf(kept);
        }
    }

    /** @param says the verdict in words */
    public record Kept(String letter, String typed, String says) {}

    public TypingSheetView {
        parts = List.copyOf(parts);
    }
}
