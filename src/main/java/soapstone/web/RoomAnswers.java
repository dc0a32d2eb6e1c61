package soapstone.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import soapstone.school.Member;
import soapstone.school.RoomAnswer;
import soapstone.school.Work;

/** Works as answers of a room, with the skill that each trains. */
final class RoomAnswers {

    private RoomAnswers() {}

    static List<RoomAnswer> of(Map<Long, List<Work>> works, MarksDesk desk) {
        List<RoomAnswer> answers = new ArrayList<>();
        Map<String, String> skills = new HashMap<>();
        works.forEach((assignment, all) -> {
            for (Work work : all) {
                String skill = skills.computeIfAbsent(work.problem().exercise(), e -> desk.exercise(e).skill());
                answers.addAll(RoomAnswer.of(work, assignment, skill));
            }
        });
        return answers;
    }

    /** The students of a class by seat; those who left are no longer in the room. */
    static Map<Long, String> names(List<Member> members) {
        Map<Long, String> names = new LinkedHashMap<>();
        members.stream().filter(m -> m.state() == Member.State.IN).forEach(m -> names.put(m.person().id(), m.person().shown()));
        return names;
    }
}
