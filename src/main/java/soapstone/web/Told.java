package soapstone.web;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.page.OwnRecordView;
import soapstone.page.SchoolTimes;
import soapstone.page.Words;
import soapstone.school.Audit;
import soapstone.school.Note;
import soapstone.school.Person;
import soapstone.school.School;

/** Says what is kept in the words of a page: people by name, acts and times as one reads them. For one page. */
final class Told {

    private final School school;
    private final Words words;
    private final Map<Long, String> names = new HashMap<>();

    Told(School school, Words words) {
        this.school = school;
        this.words = words;
    }

    /** How somebody is called now; the number of somebody who is not there any more. */
    String name(long person) {
        return names.computeIfAbsent(person, p -> school.people().find(p).map(Person::shown).orElse(String.valueOf(p)));
    }

    String name(Optional<Long> person) {
        return person.map(this::name).orElse("");
    }

    String time(Instant at) {
        return SchoolTimes.moment(at, words.language());
    }

    /** An act that no sentence was written for says its key. */
    String act(Audit.Entry e) {
        return words.say("audit." + e.act(), List.of()).replaceFirst("^audit\\.", "");
    }

    OwnRecordView.Correction correction(Note n, String in) {
        return new OwnRecordView.Correction(n.id(), in, time(n.at()), n.asks(), Words.key(n.outcome()), n.answer(), n.answered().map(this::time).orElse(""), n.byName());
    }
}
