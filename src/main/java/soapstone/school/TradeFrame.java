package soapstone.school;

import java.util.List;

/**
 * A trade's list of competencies, as far as its facts go: codes and short titles. The criteria belong to its owner.
 *
 * @param edition stands beside every code, because editions give codes anew
 */
public record TradeFrame(String name, String owner, String edition, List<Code> codes) {

    public TradeFrame {
        codes = List.copyOf(codes);
    }

    /**
     * One of its codes.
     *
     * @param skills of our course that train it
     * @param read   whether it was read in the owner's own pages; otherwise it is from memory
     */
    public record Code(TradeCode name, List<String> skills, boolean read) {

        public Code {
            skills = List.copyOf(skills);
        }
    }
}
