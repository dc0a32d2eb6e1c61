package soapstone.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import soapstone.school.Attempt;
import soapstone.school.Problem;
import soapstone.school.Remark;
import soapstone.school.School;
import soapstone.school.Sheet;
import soapstone.school.Terms;

/** All sheets of a student with all that was done on them, read at once: a year has some hundred. */
record OwnSheets(List<Sheet> all, Map<Long, List<Problem>> rounds, Map<Long, List<Attempt>> attempts, List<Remark> remarks) {

    static OwnSheets of(School school, long person) {
        return new OwnSheets(school.sheets().ofPerson(person), school.sheets().roundsOfPerson(person).stream().collect(Collectors.groupingBy(Problem::sheet)),
                school.attempts().ofPerson(person).stream().collect(Collectors.groupingBy(Attempt::problem)), school.attempts().remarksOfPerson(person));
    }

    Optional<Sheet> of(long assignment) {
        return all.stream().filter(s -> s.assignment() == assignment).findFirst();
    }

    OwnSheet own(Sheet sheet, Terms terms) {
        List<Problem> own = rounds.getOrDefault(sheet.id(), List.of());
        List<Attempt> tried = own.stream().flatMap(p -> attempts.getOrDefault(p.id(), List.of()).stream()).toList();
        return new OwnSheet(sheet, terms, own, tried, remarks);
    }
}
