/**
 * Benchmarks for whoever changes the engine. They are run by hand, never asserted:
 *
 * <pre>
 * mvn -q test-compile exec:exec -Dexec.executable=java -Dexec.classpathScope=test \
 *     -Dexec.args="-cp %classpath org.openjdk.jmh.Main soapstone.bench -f 1 -wi 5 -i 5"
 * </pre>
 */
package soapstone.bench;
