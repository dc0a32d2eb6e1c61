package soapstone.school;

import java.util.List;

/** Where competency lists and signatures are kept. */
public interface Signoffs {

    /** What may be signed off in a class: frames by name and code, then the class's own, each by code. */
    List<Competency> listed(long schoolClass);

    /** Takes exactly these codes of frames on the class's list; its own codes stay. Signatures are not touched. */
    void list(long schoolClass, List<NewCompetency> ofFrames);

    /** A competency before it is kept. */
    record NewCompetency(TradeCode code, List<String> skills) {

        public NewCompetency {
            skills = List.copyOf(skills);
        }
    }

    /** Adds one of the class's own; false when the class has that code already. */
    boolean add(long schoolClass, NewCompetency own);

    /** Takes one of the class's own off its list. Signatures are not touched. */
    void remove(long schoolClass, long competency);

    /** Everything that was signed for a student and withdrawn, in order. */
    List<Signoff> of(long person);

    /** The same for everybody in a class, as far as it was signed there. */
    List<Signoff> ofClass(long schoolClass);

    /**
     * Appends an entry; its id is given here. Nothing is kept when its act is what the newest entry of that student, class and
     * code says already, nor a withdrawal of what was never signed: so a form that is sent twice is one entry.
     *
     * @return whether it was kept
     */
    boolean append(Signoff entry);
}
