package soapstone.school;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soapstone.school.Evidence.HandedIn;

/**
 * How one student stands with one competency: what the records say, and beside it what people signed. Evidence signs nothing,
 * and a signature needs no evidence; whoever reads the record sees both.
 *
 * @param evidence for each skill that trains it
 * @param entries  signatures and withdrawals, in order
 */
public record CompetencyStanding(TradeCode code, List<Evidence> evidence, List<Signoff> entries) {

    public CompetencyStanding {
        evidence = List.copyOf(evidence);
        entries = List.copyOf(entries);
    }

    /**
     * One student's standing with everything that is on the class's list, and then with what was signed and is on it no more.
     *
     * @param entries of that student in that class
     * @param works   of that student in that class
     * @param zone    of the school: its midnight parts the days
     */
    public static List<CompetencyStanding> of(List<Competency> listed, List<Signoff> entries, List<HandedIn> works, ZoneId zone) {
        Map<String, Evidence> bySkill = new HashMap<>();
        List<CompetencyStanding> all = new ArrayList<>();
        for (Competency c : listed) {
            List<Evidence> evidence = c.skills().stream().map(s -> bySkill.computeIfAbsent(s, k -> Evidence.of(k, works, zone))).toList();
            all.add(new CompetencyStanding(c.code(), evidence, entriesOf(c.code(), entries)));
        }
        for (Signoff entry : entries) {
            if (all.stream().noneMatch(s -> s.code().isSame(entry.code()))) {
                all.add(new CompetencyStanding(entry.code(), List.of(), entriesOf(entry.code(), entries)));
            }
        }
        return List.copyOf(all);
    }

    private static List<Signoff> entriesOf(TradeCode code, List<Signoff> entries) {
        return entries.stream().filter(e -> e.code().isSame(code)).toList();
    }

    /** The signature that stands; empty when there is none or when it was withdrawn. */
    public Optional<Signoff> signature() {
        return entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(entries.size() - 1)).filter(e -> e.act() == Signoff.Act.SIGNED);
    }

    public boolean isWithdrawn() {
        return !entries.isEmpty() && signature().isEmpty();
    }

    /** How many of its skills have evidence that stands. */
    public int standing() {
        return (int) evidence.stream().filter(Evidence::stands).count();
    }

    /** Whether every skill has its evidence. */
    public boolean isReady() {
        return !evidence.isEmpty() && standing() == evidence.size();
    }
}
