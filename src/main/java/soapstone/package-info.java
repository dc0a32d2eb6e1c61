/**
 * Soapstone: shop math for sheet metal, with everyone's own numbers and marking that says why.
 *
 * <p>The way of the data, a sentence a package, in import order: a package imports only those above it, and a test holds
 * this list.
 *
 * <ul>
 * <li>{@link soapstone.source}: texts in, places and issues out; entry {@link soapstone.source.Issue}.
 * <li>{@link soapstone.quantity}: shop notation in, quantities out, and back; entry {@link soapstone.quantity.ShopReader}.
 * <li>{@link soapstone.expression}: lines of the working in, a planned program out, which runs and runs again with something
 *     else put in; entry {@link soapstone.expression.ProgramBuilder}.
 * <li>{@link soapstone.exercise}: what an exercise, a formula, a table is; data only.
 * <li>{@link soapstone.bank}: bank files in, a checked bank or every issue out; entry {@link soapstone.bank.BankReader}.
 * <li>{@link soapstone.variant}: an exercise and a seed in, fair numbers with the working done out; entry
 *     {@link soapstone.variant.Drawer}.
 * <li>{@link soapstone.figure}: a kind of drawing and values in, SVG out; entry {@link soapstone.figure.FigureKinds}.
 * <li>{@link soapstone.mark}: a variant and typed answers in, verdicts and what would give each answer out; entry
 *     {@link soapstone.mark.Marker}.
 * <li>{@link soapstone.proof}: a bank in, its published checks run and its fairness studied; entry
 *     {@link soapstone.proof.Proof}.
 * <li>{@link soapstone.lesson}: Markdown and a bank in, lessons in order out; entry {@link soapstone.lesson.CourseReader}.
 * <li>{@link soapstone.files}: a folder or the program's jar in, texts by path out.
 * <li>{@link soapstone.school}: people, classes and answers in, marks and what a room misses out; the rules, no database; entry
 *     {@link soapstone.school.School}.
 * <li>{@link soapstone.record}: what the school keeps, in a database and out again; entry {@link soapstone.record.SqlSchool}.
 * <li>{@link soapstone.page}: view models in, HTML out; entry {@link soapstone.page.Pages}.
 * <li>{@link soapstone.paper}: view models in, PDF out: sheets, keys, strips; entry {@link soapstone.paper.Press}.
 * <li>{@link soapstone.web}: HTTP in, pages out; the only package with servlets; entry {@link soapstone.web.SiteServer}.
 * <li>{@link soapstone.desk}: what the web asks for in, view models out of bank and course; entry
 *     {@link soapstone.desk.EngineDesk}.
 * <li>{@link soapstone.demo}: an empty school and a bank in, an invented school with four weeks of work out.
 * <li>{@link soapstone.speed}: a bank in, how fast it is marked and served out, in ratios to plain Java and to a bare web server.
 * <li>{@link soapstone.command}: the command line.
 * </ul>
 *
 * <p>{@code source} to {@code mark} use no file, clock, thread, reflection or global state, so that they could run anywhere.
 */
package soapstone;
