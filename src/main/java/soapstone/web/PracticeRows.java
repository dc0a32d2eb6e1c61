package soapstone.web;

import java.util.List;
import java.util.function.UnaryOperator;
import soapstone.page.Address;
import soapstone.page.PracticeRow;
import soapstone.page.SchoolTimes;
import soapstone.page.SheetKey;
import soapstone.page.Words;
import soapstone.school.AnswerMark;
import soapstone.school.Practice;

/** Shows practice that was kept. */
final class PracticeRows {

    private PracticeRows() {}

    /** @param title of an exercise, by its id */
    static List<PracticeRow> of(List<Practice> kept, UnaryOperator<String> title, Words words) {
        return kept.stream().map(p -> of(p, title, words)).toList();
    }

    static PracticeRow of(Practice p, UnaryOperator<String> title, Words words) {
        int slash = p.exercise().indexOf('/');
        String path = Address.sheet(p.exercise().substring(0, slash), p.exercise().substring(slash + 1), new SheetKey(p.seed(), p.units(), p.fingerprint()));
        return new PracticeRow(SchoolTimes.moment(p.at(), words.language()), title.apply(p.exercise()), path, p.right(), p.marks().size(),
                p.marks().stream().map(m -> answer(m, words)).toList());
    }

    private static PracticeRow.Answer answer(AnswerMark m, Words words) {
        return new PracticeRow.Answer(m.letter(), m.typed(), m.readAs(), words.say("school.verdict-" + m.verdict().word(), List.of()), m.says());
    }
}
