package soapstone.record;

import java.util.Optional;
import soapstone.school.Charter;
import soapstone.school.Charters;

/** The one row about the school. */
final class SqlCharters implements Charters {

    private final Database database;

    SqlCharters(Database database) {
        this.database = database;
    }

    @Override
    public Optional<Charter> find() {
        return database.read(h -> h.createQuery("select name, demo, created from school where id = 1")
                .map((row, c) -> new Charter(row.getString("name"), row.getBoolean("demo"), Times.get(row, "created"))).findOne());
    }

    @Override
    public void write(Charter charter) {
        database.run(h -> {
            // The row is there before it is written, so that two who write at once do not both add it.
            h.createUpdate("insert into school (id, name, demo, created) values (1, :name, :demo, :since) on conflict do nothing").bind("name", charter.name())
                    .bind("demo", charter.demo()).bind("since", charter.since()).execute();
            h.createUpdate("update school set name = :name, demo = :demo where id = 1").bind("name", charter.name()).bind("demo", charter.demo()).execute();
        });
    }
}
