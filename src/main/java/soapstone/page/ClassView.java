package soapstone.page;

import java.util.List;
import soapstone.source.Message;

/**
 * A class as its instructor sees it.
 *
 * @param code        what students type to ask for a place, as it is shown
 * @param join        the address where they type it
 * @param seats       who sit in it
 * @param asking      who wait for a place
 * @param left        who are out of it
 * @param work        its assignments, the newest first
 * @param refused     which of their exercises are not dealt, and why
 */
public record ClassView(long id, String name, String term, boolean archived, String units, String code, String join, String instructors, List<Seat> seats,
        List<Seat> asking, List<Seat> left, List<Work> work, List<Message> refused) {

    /** Somebody's place. */
    public record Seat(long person, String seat, String shown, String login, int extraTime) {}

    /** How an assignment stands at this moment. */
    public enum Stands { DRAFT, WAITING, OPEN, PAST, TAKEN }

    /** @param due empty for none */
    public record Work(long id, String title, Stands stands, String opens, String due, int problems) {}

    public ClassView {
        seats = List.copyOf(seats);
        asking = List.copyOf(asking);
        left = List.copyOf(left);
        work = List.copyOf(work);
        refused = List.copyOf(refused);
    }
}
