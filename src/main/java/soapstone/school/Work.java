package soapstone.school;

import java.util.List;

/**
 * What one student did with one problem.
 *
 * @param attempts in order; empty when nothing was handed in
 * @param remarks  on any of them
 */
public record Work(long person, Problem problem, List<Attempt> attempts, List<Remark> remarks) {

    public Work {
        attempts = List.copyOf(attempts);
        remarks = List.copyOf(remarks);
    }

    /** The marks of an attempt as they count. */
    public List<Counted> marks(Attempt attempt) {
        return Counted.of(attempt, remarks);
    }
}
