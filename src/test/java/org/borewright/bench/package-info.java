/**
 * Benchmarks, never part of the tests: {@code mvn -B test -Dtest='*Benchmark'} runs them all and prints each figure beside its yardstick.
 */
package org.borewright.bench;
