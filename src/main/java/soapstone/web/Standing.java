package soapstone.web;

import java.time.Instant;
import soapstone.page.ClassView.Stands;
import soapstone.school.Assignment;

/** How an assignment stands at a moment. */
final class Standing {

    private Standing() {}

    static Stands of(Assignment a, Instant now) {
        return switch (a.state()) {
            case DRAFT -> Stands.DRAFT;
            case TAKEN -> Stands.TAKEN;
            case GIVEN -> a.opens().isAfter(now) ? Stands.WAITING : a.due().filter(now::isAfter).isPresent() ? Stands.PAST : Stands.OPEN;
        };
    }
}
