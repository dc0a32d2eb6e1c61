package soapstone.web;

import soapstone.school.Problem;
import soapstone.school.School;

/** The newest round at a place of a student's own sheet. */
record OwnProblem(OwnSheet own, Problem problem) {

    private static final int MOST_DIGITS = 4;

    /** @throws Trouble 404 when the sheet is not theirs or has no such place */
    static OwnProblem of(School school, Visit v) {
        OwnSheet own = OwnSheet.of(school, v);
        long place = v.part("place").length() > MOST_DIGITS ? 0 : v.id("place");
        return own.sheet().problems().stream().filter(p -> p.place() == place).findFirst().map(p -> new OwnProblem(own, p)).orElseThrow(() -> Trouble.of(404));
    }

    int place() {
        return problem.place();
    }

    String path() {
        return "/sheets/" + own.sheet().id() + "/" + place();
    }

    WorkDesk.Piece piece(School school) {
        return piece(school, problem);
    }

    /** Another round of the same place. */
    WorkDesk.Piece piece(School school, Problem round) {
        return new WorkDesk.Piece(round, own.terms().schoolClass().settings(), school.sheets());
    }
}
