package soapstone.web;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soapstone.school.ClassSettings;
import soapstone.school.Problem;
import soapstone.school.Regrading;
import soapstone.school.School;
import soapstone.school.Sheets;
import soapstone.school.Work;

/** What the sample desk says of marks: titles are names, and nothing was mended. */
final class SampleMarks implements MarksDesk {

    @Override
    public MarksDesk in(String language) {
        return this;
    }

    @Override
    public Named exercise(String id) {
        return new Named(id, id, "equal-spacing", "Equal spacing");
    }

    @Override
    public List<Skill> skills() {
        return List.of(new Skill("equal-spacing", "Equal spacing"));
    }

    @Override
    public Set<String> ofSkill(String skill) {
        return Set.of("spacing/bolt-holes");
    }

    @Override
    public Family family(String name) {
        return new Family(name, "", Optional.empty());
    }

    @Override
    public Optional<Board> board(Problem problem, String ask, String slip, String name) {
        return Optional.empty();
    }

    @Override
    public boolean isMended(String exercise, String fingerprint) {
        return false;
    }

    @Override
    public Regrading.Result regrade(School school, List<Work> works, ClassSettings settings, Instant at) {
        return new Regrading.Result(List.of(), List.of());
    }

    @Override
    public List<String> drill(String exercise, String family) {
        return List.of();
    }

    @Override
    public List<Optional<Asked>> asked(Sheets kept, List<Problem> problems) {
        return problems.stream().map(p -> Optional.of(new Asked("Holes on a line, numbers " + p.seed() + ".", Map.of("pitch", "Centre-to-centre spacing")))).toList();
    }
}
